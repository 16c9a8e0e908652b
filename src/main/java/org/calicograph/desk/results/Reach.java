package org.calicograph.desk.results;

import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;

/**
 * What a frame has to show at least, in inches; nothing for no more than its picture.
 *
 * @param across from left to right
 * @param down   from top to bottom
 */
record Reach(double across, double down) {

    boolean isNone() {
        return across == 0 && down == 0;
    }

    /** A picture's box with as much room around it as is wanting, the picture in the middle. */
    Box of(Box box) {
        Point middle = box.centre();
        double w = Math.max(box.width(), across) / 2;
        double h = Math.max(box.height(), down) / 2;
        return new Box(middle.x() - w, middle.y() - h, middle.x() + w, middle.y() + h);
    }
}
