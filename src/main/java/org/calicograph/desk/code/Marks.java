package org.calicograph.desk.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** Which characters of a cell are underlined for a failure. */
public final class Marks {

    /**
     * Characters and what is wrong with them.
     *
     * @param start offset of the first
     * @param end   offset just behind the last, always beyond the first
     */
    public record Mark(int start, int end, String message) { }

    private Marks() { }

    /** The marks of a failure; each covers one character at least, unless the text is empty. */
    public static List<Mark> of(String text, Failure failure) {
        List<Mark> marks = new ArrayList<>();
        if (failure instanceof Failure.DoesNotCompile wrong) {
            for (Problem problem : wrong.problems()) {
                add(marks, text, offset(text, problem.from()), offset(text, problem.to()), problem.message());
            }
            return List.copyOf(marks);
        }
        Optional<Place> at = failure.at();
        if (at.isPresent()) {
            int start = offset(text, new Place(at.get().line(), 1));
            int end = text.indexOf('\n', start);
            int stop = end < 0 ? text.length() : end;
            while (start < stop && text.charAt(start) == ' ') {
                start++;
            }
            add(marks, text, start, stop, failure.message());
        }
        return List.copyOf(marks);
    }

    private static void add(List<Mark> marks, String text, int start, int end, String message) {
        if (text.isEmpty()) {
            return;
        }
        int from = Math.min(start, text.length() - 1);
        // A mark on a line's end would not be seen.
        while (from > 0 && text.charAt(from) == '\n') {
            from--;
        }
        marks.add(new Mark(from, Math.max(from + 1, Math.min(end, text.length())), message));
    }

    /** Marks of a text in one that comes of it by an edit: those that the edit touches are gone. */
    static List<Mark> moved(List<Mark> marks, String before, String after) {
        int most = Math.min(before.length(), after.length());
        int head = 0;
        while (head < most && before.charAt(head) == after.charAt(head)) {
            head++;
        }
        int tail = 0;
        while (tail < most - head && before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
            tail++;
        }
        int by = after.length() - before.length();
        List<Mark> moved = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark.end() < head) {
                moved.add(mark);
            } else if (mark.start() > before.length() - tail) {
                moved.add(new Mark(mark.start() + by, mark.end() + by, mark.message()));
            }
        }
        return List.copyOf(moved);
    }

    /** The offset of a place; one beyond its line is the line's end. */
    public static int offset(String text, Place place) {
        int at = 0;
        for (int line = 1; line < place.line(); line++) {
            int end = text.indexOf('\n', at);
            if (end < 0) {
                return text.length();
            }
            at = end + 1;
        }
        int lineEnd = text.indexOf('\n', at);
        return Math.min(at + place.column() - 1, lineEnd < 0 ? text.length() : lineEnd);
    }
}
