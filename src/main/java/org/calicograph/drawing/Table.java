package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.fabric.CommaLines;

/**
 * Rows under named columns.
 *
 * @param title   what the table is of; may be empty
 * @param columns the columns' names
 * @param rows    each as long as the columns
 */
public record Table(String title, List<String> columns, List<List<Entry>> rows) {

    /**
     * One entry: what is written, and the number to sort by where it is one.
     *
     * @param value the number that the text stands for; not a number (NaN) where it stands for none
     */
    public record Entry(String text, double value) {
        /** True where it is set as a number, to the right. */
        public boolean isNumber() {
            return !Double.isNaN(value);
        }

        /** A thing as a table writes it. */
        public static Entry of(Object thing) {
            if (thing instanceof Entry entry) {
                return entry;
            }
            if (thing instanceof Number n) {
                double v = n.doubleValue();
                String text = v == Math.rint(v) && Math.abs(v) < 1e15 ? Long.toString((long) v) : n.toString();
                return new Entry(text, v);
            }
            if (thing instanceof org.calicograph.measure.Length length) {
                return new Entry(length.toString(), length.inInches());
            }
            return new Entry(String.valueOf(thing), Double.NaN);
        }
    }

    public Table {
        columns = List.copyOf(columns);
        List<List<Entry>> kept = new ArrayList<>();
        for (List<Entry> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("row " + (kept.size() + 1) + " of the table '" + title + "' has " + row.size()
                        + " entries under " + columns.size() + " columns; give it one for each");
            }
            kept.add(List.copyOf(row));
        }
        rows = List.copyOf(kept);
    }

    /** An empty table by its title and the heads of its columns; rows are added one by one. */
    public static Table of(String title, String... columns) {
        return new Table(title, List.of(columns), List.of());
    }

    /** The same table with a row more; numbers and lengths sort by their size. */
    public Table row(Object... entries) {
        List<List<Entry>> more = new ArrayList<>(rows);
        more.add(Arrays.stream(entries).map(Entry::of).toList());
        return new Table(title, columns, more);
    }

    /** Comma-separated values (RFC 4180) with a heading line. */
    public String csv() {
        List<List<String>> lines = new ArrayList<>(List.of(columns));
        rows.forEach(row -> lines.add(row.stream().map(Entry::text).toList()));
        return CommaLines.of(lines.stream().map(line -> line.stream().map(Table::inert).toList()).toList());
    }

    /** What a spreadsheet would reckon out gets an apostrophe before it, and stays words; a number with a sign stays a number. */
    private static String inert(String field) {
        boolean number = field.matches("[-+][\\d.,/ ]+( ?[A-Za-z%°²]+)?");
        boolean formula = field.matches("(?s)[=+@\t\r].*|-.+") && !number;
        return formula ? "'" + field : field;
    }
}
