package org.calicograph.stranger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tables as an eye finds them on a page: words under a known head, row by row. */
final class Columns {

    private static final double TYPE = 9;
    /** Lines of one row are nearer to one another than rows are; in points. */
    private static final double NEW_ROW = 15.5;

    private Columns() { }

    /**
     * The rows of the table whose head stands at a place, also over the turn of a page where the head stands again.
     *
     * @param at the index of the head's first word
     * @param first what stands in the first column, as a pattern; anything else there is not of the table
     * @return each row by its columns' names
     */
    static List<Map<String, String>> under(List<Printed.Words> words, int at, List<String> head, String first) {
        List<Map<String, String>> rows = new ArrayList<>();
        int i = at;
        while (i >= 0 && i < words.size() && isHead(words, i, head)) {
            double[] starts = new double[head.size()];
            for (int c = 0; c < head.size(); c++) {
                starts[c] = words.get(i + c).x();
            }
            Printed.Words begin = words.get(i);
            i += head.size();
            int page = begin.page();
            int before = -1;
            double[] lines = new double[starts.length];
            double last = begin.y();
            while (i < words.size() && words.get(i).page() == page && column(words.get(i), starts) >= 0 && Math.abs(words.get(i).size() - TYPE) < 0.1
                    && words.get(i).y() > begin.y() + 1 && words.get(i).y() - last < 60) {
                Printed.Words w = words.get(i);
                int c = column(w, starts);
                if (c == 0 && !w.text().matches(first)) {
                    return rows;
                }
                if (c == 0 && !(before == 0 && w.y() - last < NEW_ROW)) {
                    rows.add(new HashMap<>());
                    Arrays.fill(lines, w.y());
                }
                if (w.y() - lines[c] > NEW_ROW) {
                    return rows; // too far below its column to be of this row: a letter in a drawing under the table
                }
                lines[c] = w.y();
                rows.get(rows.size() - 1).merge(head.get(c), w.text(), (a, b) -> a + " " + b);
                last = w.y();
                before = c;
                i++;
            }
            // At the foot of a page stand its name and number; the head comes again on the next.
            while (i < words.size() && words.get(i).page() == page && words.get(i).y() > 780) {
                i++;
            }
            if (i < words.size() && words.get(i).page() == page) {
                break;
            }
        }
        return rows;
    }

    static boolean isHead(List<Printed.Words> words, int at, List<String> head) {
        if (at + head.size() > words.size()) {
            return false;
        }
        for (int c = 0; c < head.size(); c++) {
            Printed.Words w = words.get(at + c);
            if (!w.bold() || !w.text().equals(head.get(c)) || Math.abs(w.y() - words.get(at).y()) > 0.5) {
                return false;
            }
        }
        return true;
    }

    private static int column(Printed.Words w, double[] starts) {
        for (int c = 0; c < starts.length; c++) {
            if (Math.abs(w.x() - starts[c]) < 0.7) {
                return c;
            }
        }
        return -1;
    }
}
