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

    /** The notebook with other words in all places, as they are written; the same one where there is none. */
    public static Notebook replaced(Notebook notebook, String words, String others) {
        Notebook changed = notebook;
        for (Cell cell : notebook.cells()) {
            List<Integer> places = places(cell.text(), words);
            StringBuilder text = new StringBuilder(cell.text());
            // From the end, so that the places before stay where they are.
            for (int i = places.size() - 1; i >= 0; i--) {
                text.replace(places.get(i), places.get(i) + words.length(), others);
            }
            if (!places.isEmpty()) {
                changed = changed.withText(cell.id(), text.toString());
            }
        }
        return changed;
    }

    /** The notebook with other words in this one place. */
    public static Notebook replaced(Notebook notebook, Hit hit, String others) {
        String text = notebook.cells().get(notebook.indexOf(hit.cell())).text();
        return notebook.withText(hit.cell(), text.substring(0, hit.start()) + others + text.substring(hit.end()));
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
