package org.calicograph.drawing;

import org.calicograph.fabric.Cloth;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/**
 * A photograph beneath a drawing, to draft or trace over.
 *
 * @param at       where its top left corner lies, in inches
 * @param width    how wide it lies; its height follows
 * @param strength from 0, so faint that it can't be seen, to 1 as it is
 */
public record Underlay(Photo photo, Point at, Length width, double strength) implements Drawable {

    public Underlay {
        if (!width.isPositive() || !(strength >= 0 && strength <= 1)) {
            throw new IllegalArgumentException("an underlay " + width + " wide at a strength of " + strength
                    + " can't be laid; use a width above 0 and a strength from 0 to 1");
        }
    }

    /** At the origin, at four tenths of its strength. */
    public static Underlay of(Photo photo, Length width) {
        return new Underlay(photo, Point.ORIGIN, width, 0.4);
    }

    /** The same with another strength. */
    public Underlay at(double other) {
        return new Underlay(photo, at, width, other);
    }

    /** The same elsewhere. */
    public Underlay at(Point corner) {
        return new Underlay(photo, corner, width, strength);
    }

    /** How high it lies, its proportions kept. */
    public Length height() {
        return width.times((double) photo.height() / photo.width());
    }

    /** The picture, at its size. */
    public Picture picture() {
        Photo faint = Photo.drawn(photo.width(), photo.height(), (x, y) -> {
            int pixel = photo.pixel(x, y);
            double share = strength * (pixel >>> 24) / 255;
            return faded(pixel >> 16 & 255, share) << 16 | faded(pixel >> 8 & 255, share) << 8 | faded(pixel & 255, share);
        });
        Picture.Shape sheet = Picture.of(Path.rectangle(new Box(0, 0, width.inInches(), height().inInches())));
        return sheet.filled(Paint.of(new Cloth(faint, width))).outlined(Pen.NONE).moved(at.x(), at.y());
    }

    private static int faded(int part, double share) {
        return (int) Math.round(255 - (255 - part) * share);
    }

    /** The drawing with the photograph beneath it. */
    public Picture under(Picture drawing) {
        return drawing.over(picture());
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(picture(), photo + ", laid " + width + " x " + height());
    }
}
