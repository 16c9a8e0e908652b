package org.calicograph.desk.cuts;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.measure.Length;

/** Sizes as they are read off a ruler. */
public final class RulerWords {

    private static final Pattern DECIMAL = Pattern.compile("(?<![\\d./])\\d+\\.\\d+(?= (?:x|in\\b))");

    private RulerWords() { }

    /** A title with every decimal of an inch told to the nearest eighth, as {@code about}: {@code 1.098 x 2 in} is {@code about 1 1/8 x 2 in}. */
    public static String of(String title) {
        Matcher m = DECIMAL.matcher(title);
        return m.replaceAll(found -> {
            String eighths = Length.inches(Math.rint(Double.parseDouble(found.group()) * 8) / 8).in(Length.System.INCH).replace(" in", "");
            return "about " + (eighths.equals("0") ? "1/8" : eighths);
        });
    }
}
