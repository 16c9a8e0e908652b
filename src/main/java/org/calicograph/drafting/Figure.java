package org.calicograph.drafting;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/** Something on the drafting sheet that has a name. */
public sealed interface Figure {

    /** A point that was marked. */
    record Dot(Point at) implements Figure { }

    /** A line drawn with the straightedge. */
    record Rule(Point from, Point to) implements Figure {
        /** The line that it draws. */
        public Path path() {
            return Path.through(from, to);
        }
    }

    /** A full circle drawn with the compass; radius in inches. */
    record Round(Point centre, double radius) implements Figure {
        /** The line that it draws. */
        public Path path() {
            return Path.circle(centre, radius);
        }
    }

    /** Part of a circle. */
    record Bow(Path path) implements Figure { }

    /** A pattern line: what will be a seam. */
    record Ink(Path path) implements Figure { }
}
