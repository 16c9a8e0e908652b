package org.calicograph.book.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Typeface;

/** The sizes and colours of type on a page, and how a text breaks into lines. Sizes are heights in inches; a point is 1/72 in. */
final class Type {

    static final double BODY = 10.5 / 72;
    /** For tables and captions: the least that running words are set in. */
    static final double SMALL = 9.0 / 72;
    static final double LEADING = 1.42;
    static final Colour INK = Colour.hex("#2b2b2b");
    static final Colour QUIET = Colour.hex("#5f5c56");
    static final Colour HEAD = Colour.hex("#24425c");
    static final Colour BAND = Colour.hex("#f1eee7");
    static final Colour HEAD_BAND = Colour.hex("#dfe6e8");

    private Type() { }

    /** Lines no wider than the width, each as full as it can be; a word that is wider is broken. */
    static List<String> wrapped(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            if (!line.isEmpty() && measure(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            while (measure(line.toString(), size) > width && line.length() > 1) {
                int cut = line.length() - 1;
                while (cut > 1 && measure(line.substring(0, cut), size) > width) {
                    cut--;
                }
                lines.add(line.substring(0, cut));
                line.delete(0, cut);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static final Pattern WITHIN = Pattern.compile("(?<=\\d) +(?=\\d+/\\d)|(?<=\\d) +(?=(?:in|yd|m|cm|mm|%|°)(?:\\W|$))|(?<=\\d in|\\d cm|\\d mm) +(?=x )");

    /** What a line is never broken within: words, and measures with their fraction and unit and the x behind them. */
    static List<String> words(String text) {
        return Arrays.stream(WITHIN.matcher(text).replaceAll("\u00a0").split(" +")).map(w -> w.replace('\u00a0', ' ')).toList();
    }

    /** The width of a line in inches. */
    static double measure(String text, double size) {
        return Typeface.of(Picture.Weight.REGULAR).width(text, size);
    }
}
