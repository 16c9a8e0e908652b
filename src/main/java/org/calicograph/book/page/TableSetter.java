package org.calicograph.book.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.drawing.Table;

/**
 * A table set to a width: its columns share the width by what they hold, and no word is broken while there is room.
 *
 * @param widths of the columns, in inches
 * @param head   the lines of each column's name
 * @param rows   the lines of each entry
 */
record TableSetter(double[] widths, List<List<String>> head, List<List<List<String>>> rows) {

    private static final double PAD = 0.07;
    private static final double AIR = 0.09;

    static TableSetter of(Table table, double width) {
        int n = table.columns().size();
        double[] whole = new double[n];
        double[] least = new double[n];
        List<List<String>> texts = new ArrayList<>();
        texts.add(table.columns());
        table.rows().forEach(row -> texts.add(row.stream().map(Table.Entry::text).toList()));
        for (List<String> row : texts) {
            for (int c = 0; c < n; c++) {
                whole[c] = Math.max(whole[c], Type.measure(row.get(c), Type.SMALL) * 1.06 + 2 * PAD);
                // The name of a column stays on one line.
                for (String word : row == texts.get(0) ? List.of(row.get(c)) : Type.words(row.get(c))) {
                    least[c] = Math.max(least[c], Type.measure(word, Type.SMALL) * 1.06 + 2 * PAD);
                }
            }
        }
        double[] widths = shared(whole, least, width);
        return new TableSetter(widths, lines(table.columns(), widths), texts.subList(1, texts.size()).stream().map(r -> lines(r, widths)).toList());
    }

    /** As wide as the longest entry where that goes; else each column begins as wide as its longest word, and what room is left goes to the column with most lines. */
    private static double[] shared(double[] whole, double[] least, double width) {
        double all = sum(whole);
        if (all <= width) {
            // A narrow table keeps its columns near to one another.
            double grow = Math.min(1.25, width / all);
            return Arrays.stream(whole).map(w -> w * grow).toArray();
        }
        double[] widths = least.clone();
        double over = sum(widths);
        if (over > width) {
            return Arrays.stream(widths).map(w -> w * width / over).toArray();
        }
        double step = width / 150;
        double left = width - over;
        while (left > 1e-9) {
            int neediest = -1;
            double most = 0;
            for (int c = 0; c < widths.length; c++) {
                double lines = (whole[c] - 2 * PAD) / (widths[c] - 2 * PAD);
                if (widths[c] < whole[c] && lines > most) {
                    most = lines;
                    neediest = c;
                }
            }
            if (neediest < 0) {
                break;
            }
            double more = Math.min(left, step);
            widths[neediest] += more;
            left -= more;
        }
        return widths;
    }

    private static double sum(double[] widths) {
        double sum = 0;
        for (double w : widths) {
            sum += w;
        }
        return sum;
    }

    private static List<List<String>> lines(List<String> texts, double[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < texts.size(); c++) {
            cells.add(Type.wrapped(texts.get(c), widths[c] - 2 * PAD, Type.SMALL));
        }
        return cells;
    }

    double width() {
        return sum(widths);
    }

    double headHeight() {
        return height(head);
    }

    double height(int row) {
        return height(rows.get(row));
    }

    /** On one page. */
    double height() {
        double sum = headHeight();
        for (int i = 0; i < rows.size(); i++) {
            sum += height(i);
        }
        return sum;
    }

    private static double height(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1) * Type.SMALL * Type.LEADING + AIR;
    }
}
