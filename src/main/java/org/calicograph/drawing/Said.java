package org.calicograph.drawing;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourName;
import org.calicograph.geometry.Transform;

/**
 * What a picture shows, in words taken from itself: its labelled parts and how many there are of each, the colours of what
 * has no label, and its lettering in the order of painting. Alike things are counted, and long lists end in a count.
 */
public final class Said implements Surface {

    private static final int MOST_KINDS = 12;
    private static final int MOST_LETTERS = 420;

    private final Map<Colour, String> names = new HashMap<>();
    private final Map<String, Integer> parts = new LinkedHashMap<>();
    private final Map<String, Integer> plain = new LinkedHashMap<>();
    private final Map<String, Integer> letters = new LinkedHashMap<>();
    private int lines;
    private int labels;

    /** Of a whole picture. */
    public static String of(Picture picture) {
        Said said = new Said();
        Walk.over(picture, Transform.IDENTITY, said);
        return said.words();
    }

    /** What it is, and then what it shows. */
    public static String of(String lead, Picture picture) {
        String start = lead.strip();
        return start.isEmpty() ? of(picture) : start + (start.matches(".*[.:!?]") ? " " : ". ") + of(picture);
    }

    @Override
    public void begin(Picture.Label label) {
        if (label.id().equals(Picture.Label.CHAPTER)) {
            return;
        }
        labels++;
        if (!label.title().isBlank()) {
            parts.merge(label.title(), 1, Integer::sum);
        }
    }

    @Override
    public void end(Picture.Label label) {
        labels -= label.id().equals(Picture.Label.CHAPTER) ? 0 : 1;
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        if (labels == 0) {
            if (shape.fill().plain() instanceof Paint.Flat flat) {
                plain.merge(names.computeIfAbsent(flat.colour(), ColourName::of), 1, Integer::sum);
            } else if (shape.pen().draws()) {
                lines++;
            }
        }
    }

    @Override
    public void lettering(Picture.Lettering text, Transform onto) {
        if (!text.text().isBlank()) {
            letters.merge(text.text().strip(), 1, Integer::sum);
        }
    }

    /** A sentence for each sort of thing; 'A blank drawing.' if there is none. */
    public String words() {
        StringBuilder out = new StringBuilder();
        if (!parts.isEmpty()) {
            int all = sum(parts);
            out.append(all == 1 ? "One part: " : all + " parts: ").append(listed(parts, "part")).append(". ");
        }
        if (!plain.isEmpty()) {
            int all = sum(plain);
            out.append(all == 1 ? "One plain shape: " : all + " plain shapes: ").append(listed(plain, "shape")).append(". ");
        }
        if (lines > 0) {
            out.append(lines == 1 ? "One outline or line. " : lines + " outlines and lines. ");
        }
        if (!letters.isEmpty()) {
            out.append("Lettering: ").append(lettered()).append(". ");
        }
        return out.isEmpty() ? "A blank drawing." : out.toString().strip();
    }

    private static int sum(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** The most frequent first. */
    private static String listed(Map<String, Integer> counts, String noun) {
        String told = counts.entrySet().stream().sorted(Map.Entry.<String, Integer>comparingByValue().reversed()).limit(MOST_KINDS)
                .map(e -> e.getValue() + " " + e.getKey()).collect(Collectors.joining("; "));
        int more = counts.size() - MOST_KINDS;
        return more <= 0 ? told : told + "; and " + more + (more == 1 ? " other kind of " : " other kinds of ") + noun;
    }

    private String lettered() {
        StringBuilder out = new StringBuilder();
        int told = 0;
        for (Map.Entry<String, Integer> e : letters.entrySet()) {
            String next = e.getKey() + (e.getValue() == 1 ? "" : ", " + e.getValue() + " times");
            if (told > 0 && out.length() + next.length() > MOST_LETTERS) {
                return out + "; and " + (letters.size() - told) + " more";
            }
            out.append(told == 0 ? "" : "; ").append(next);
            told++;
        }
        return out.toString();
    }
}
