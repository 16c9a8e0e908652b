package org.calicograph.desk.opened;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** Where words stand in the cells of a notebook, small and capital letters alike. */
public final class Finder {

    /**
     * One place.
     *
     * @param start offset of the first character in the cell's text
     * @param end   offset just behind the last
     */
    public record Hit(String cell, int start, int end) { }

    private Finder() { }

    /** All places from the top down; none for no words. */
    public static List<Hit> hits(Notebook notebook, String words) {
        List<Hit> all = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            for (int at : places(cell.text(), words)) {
                all.add(new Hit(cell.id(), at, at + words.length()));
            }
        }
        return List.copyOf(all);
    }

    /** The offsets at which the words begin in a text, none overlapping another. */
    public static List<Integer> places(String text, String words) {
        List<Integer> all = new ArrayList<>();
        if (!words.isEmpty()) {
            String low = text.toLowerCase(Locale.ROOT);
            String sought = words.toLowerCase(Locale.ROOT);
            for (int at = low.indexOf(sought); at >= 0; at = low.indexOf(sought, at + sought.length())) {
                all.add(at);
            }
        }
        return all;
    }
}
