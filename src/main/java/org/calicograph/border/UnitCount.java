package org.calicograph.border;

import org.calicograph.covering.DesignException;
import org.calicograph.measure.Length;

/**
 * How many units a pieced border has along its sides, corners apart.
 *
 * @param across units along the top, and along the bottom
 * @param down   units along the left, and along the right
 * @param unit   the finished length of one unit along the side
 */
public record UnitCount(int across, int down, Length unit) {

    public UnitCount {
        if (across < 1 || down < 1 || !unit.isPositive()) {
            throw new DesignException("a border of " + across + " and " + down + " units of " + unit
                    + " can't be sewn; use at least 1 unit on each side and a length above 0");
        }
    }

    /** The units on all four sides together, corners apart. */
    public int total() {
        return 2 * (across + down);
    }
}
