package org.calicograph.desk.results;

import java.util.Arrays;

/**
 * How a table's columns share its width: each gets what its longest entry needs if that goes; otherwise narrow
 * columns get theirs, and the wide ones share the rest, the widest giving way most, and wrap.
 */
final class ColumnWidths {

    private ColumnWidths() { }

    /**
     * The same, no column narrower than its head.
     *
     * @param least what each column takes in any case; together more than the room, where the table is to be moved sideways
     */
    static double[] shared(double[] natural, double[] least, double room) {
        if (Arrays.stream(least).sum() >= room) {
            return least.clone();
        }
        double[] widths = shared(natural, room);
        boolean[] held = new boolean[natural.length];
        boolean more = true;
        while (more) {
            more = false;
            double left = room;
            double others = 0;
            for (int i = 0; i < widths.length; i++) {
                if (!held[i] && widths[i] < least[i]) {
                    held[i] = true;
                    more = true;
                }
                left -= held[i] ? least[i] : 0;
                others += held[i] ? 0 : widths[i];
            }
            for (int i = 0; more && i < widths.length; i++) {
                widths[i] = held[i] ? least[i] : widths[i] * left / others;
            }
        }
        return widths;
    }

    /**
     * @param natural what each column would need to show every entry on one line
     * @param room    the width of the table
     * @return widths that add up to the room, or to less than it only by rounding
     */
    static double[] shared(double[] natural, double room) {
        double wanted = Arrays.stream(natural).sum();
        double[] widths = natural.clone();
        if (wanted <= room) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] += (room - wanted) / widths.length;
            }
            return widths;
        }
        boolean[] kept = new boolean[natural.length];
        double left = room;
        int open = natural.length;
        boolean more = true;
        while (more && open > 0) {
            more = false;
            double share = left / open;
            for (int i = 0; i < natural.length; i++) {
                if (!kept[i] && natural[i] <= share) {
                    kept[i] = true;
                    left -= natural[i];
                    open--;
                    more = true;
                    break;
                }
            }
        }
        double rest = 0;
        for (int i = 0; i < natural.length; i++) {
            rest += kept[i] ? 0 : Math.sqrt(natural[i]);
        }
        for (int i = 0; i < natural.length; i++) {
            widths[i] = kept[i] ? natural[i] : left * Math.sqrt(natural[i]) / rest;
        }
        return widths;
    }
}
