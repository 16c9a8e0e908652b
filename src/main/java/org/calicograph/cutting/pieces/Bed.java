package org.calicograph.cutting.pieces;

import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/**
 * A way to lie in rows: how pieces follow each other in a row, and how far the next row lies below and aside. All lengths in inches.
 *
 * @param quarter true if pieces lie turned by a quarter
 * @param turns   true if every second piece of a row is turned about
 * @param width   of a piece as it lies
 * @param height  of a piece as it lies
 * @param step    from a piece to the next of its row, from the first to the second, and so on by turns
 * @param back    the same from the second to the third
 * @param aside   how far a row is moved along
 * @param slant   true if each row is moved on from the one before, false if every second row is moved
 * @param begun   true if every second row begins with a piece that is turned about
 * @param down    from the first row to the second
 * @param on      from the second row to the third
 */
record Bed(boolean quarter, boolean turns, double width, double height, double step, double back, double aside, boolean slant, boolean begun, double down, double on) {

    /** A piece in a bed: its box's corner, and whether it is turned about. */
    record Lying(Point at, boolean about) { }

    /** The same with its rows moved so far. */
    Bed aside(double other) {
        return new Bed(quarter, turns, width, height, step, back, other, slant, begun, down, on);
    }

    /** The same with its rows so far below each other. */
    Bed apart(double first, double second) {
        return new Bed(quarter, turns, width, height, step, back, aside, slant, begun, first, second);
    }

    /** How many pieces a row holds on so much cloth. */
    int row(int row, double room) {
        int n = 0;
        while (start(row, n) + width <= room + 1e-9) {
            n++;
        }
        return n;
    }

    /** How many all rows hold. */
    int holds(int rows, double room) {
        int all = 0;
        for (int r = 0; r < rows; r++) {
            all += row(r, room);
        }
        return all;
    }

    /** The height of so many rows, up to a ruler's line. */
    Length along(int rows, Length step) {
        return Length.inches(top(rows - 1) + height - 1e-9).roundedUpTo(step);
    }

    /** The length of rows of so many columns, up to a ruler's line. */
    Length across(int rows, int columns, Length step) {
        double end = 0;
        for (int r = 0; r < rows; r++) {
            end = Math.max(end, start(r, columns - 1) + width);
        }
        return Length.inches(end - 1e-9).roundedUpTo(step);
    }

    /** The piece of a row and a column. */
    Lying piece(int row, int column) {
        return new Lying(new Point(start(row, column), top(row)), turns && (column % 2 == 1) != (begun && row % 2 == 1));
    }

    private double top(int row) {
        return row / 2 * (down + on) + row % 2 * down;
    }

    private double start(int row, int column) {
        boolean other = begun && row % 2 == 1;
        double moved = slant ? row * aside % (turns ? step + back : step) : row % 2 * aside;
        return moved + column / 2 * (step + back) + column % 2 * (other ? back : step);
    }

    /** Square inches of cloth for each piece, as rows and columns go on without end. */
    double each() {
        return (step + back) / 2 * (down + on) / 2;
    }
}
