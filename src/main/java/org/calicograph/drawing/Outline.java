package org.calicograph.drawing;

import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** A path as the four steps that most surfaces know; arcs become cubics within 1e-5 of their radius. */
public interface Outline {

    /** Sets the pen down at a point, in inches. */
    void moveTo(Point to);

    /** Straight on to a point. */
    void lineTo(Point to);

    /** On by a cubic curve, which leaves towards the first point and arrives from the second. */
    void curveTo(Point lead, Point trail, Point to);

    /** Back to where the pen was set down. */
    void close();

    /** Draws a path, its arcs as cubic curves. */
    static void trace(Path path, Outline outline) {
        outline.moveTo(path.start());
        int last = path.segments().size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment s = path.segments().get(i);
            if (s instanceof Line line) {
                // Closing draws the last line of a closed path.
                if (i < last || i == 0 || !path.isClosed()) {
                    outline.lineTo(line.to());
                }
            } else if (s instanceof Cubic cubic) {
                outline.curveTo(cubic.lead(), cubic.trail(), cubic.to());
            } else {
                for (Cubic part : ((Arc) s).asCubics()) {
                    outline.curveTo(part.lead(), part.trail(), part.to());
                }
            }
        }
        if (path.isClosed()) {
            outline.close();
        }
    }
}
