package org.calicograph.drawing;

import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/**
 * How a picture lies in its frame on a screen.
 *
 * @param scale pixels an inch
 * @param x     where the picture's origin lies, in pixels from the frame's left edge
 * @param y     the same from its top edge
 */
public record View(double scale, double x, double y) {

    private static final double MARGIN = 12;

    /** The whole picture in the middle of the frame, a small margin around. */
    public static View fitting(Box box, double width, double height) {
        double across = (width - 2 * MARGIN) / Math.max(1e-6, box.width());
        double down = (height - 2 * MARGIN) / Math.max(1e-6, box.height());
        double scale = Math.max(1e-6, Math.min(across, down));
        return new View(scale, width / 2 - scale * box.centre().x(), height / 2 - scale * box.centre().y());
    }

    /** Larger by a factor, the point of the frame staying where it is. */
    public View zoomed(double factor, double px, double py) {
        double next = Math.max(1e-3, Math.min(20_000, scale * factor));
        double real = next / scale;
        return new View(next, px - (px - x) * real, py - (py - y) * real);
    }

    /** The view moved by pixels. */
    public View moved(double dx, double dy) {
        return new View(scale, x + dx, y + dy);
    }

    /** Where a pixel lies on the picture, in inches. */
    public Point toInches(double px, double py) {
        return new Point((px - x) / scale, (py - y) / scale);
    }

    /** From inches to pixels of a screen on which each pixel of the frame is so many. */
    public Transform onto(double density) {
        return Transform.scale(scale * density).then(Transform.move(x * density, y * density));
    }
}
