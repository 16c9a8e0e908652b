package org.calicograph.desk.look;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large the letters are, and with them whatever holds letters: from 80 to 200 % of what the style sheets say.
 *
 * @param percent one of {@link #STEPS}
 */
public record Letters(int percent) {

    /** The sizes there are. */
    public static final List<Integer> STEPS = List.of(80, 90, 100, 115, 130, 150, 175, 200);

    /** As the style sheets say. */
    public static final Letters PLAIN = new Letters(100);

    /** Sizes of letters, of what is made to hold them, and of the squares of the graph paper. */
    private static final Pattern SIZE = Pattern.compile("(-fx-(?:font-size|(?:min|pref|max)-(?:width|height)|(?:fixed-)?cell-size): |-radius: (?=10;)|to (?=20px 0px)|to 0px )([0-9.]+)(px)?");

    /** @throws IllegalArgumentException if there is no such step */
    public Letters {
        if (!STEPS.contains(percent)) {
            throw new IllegalArgumentException("letters of " + percent + " % are no step; use one of " + STEPS);
        }
    }

    /** The step nearest to a number that was kept; plain for what is no number. */
    public static Letters near(String kept) {
        try {
            int wanted = Integer.parseInt(kept.strip());
            return new Letters(STEPS.stream().min(java.util.Comparator.comparingInt(s -> Math.abs(s - wanted))).orElseThrow());
        } catch (NumberFormatException e) {
            return PLAIN;
        }
    }

    /** A step larger, or so many; the largest and the smallest are the last. */
    public Letters step(int steps) {
        int at = STEPS.indexOf(percent) + steps;
        return new Letters(STEPS.get(Math.max(0, Math.min(STEPS.size() - 1, at))));
    }

    public double factor() {
        return percent / 100.0;
    }

    /** A style sheet with the sizes of letters, and of what holds them, taken this many times. */
    String sized(String sheet) {
        Matcher m = SIZE.matcher(sheet);
        return m.replaceAll(r -> Matcher.quoteReplacement(r.group(1) + number(Double.parseDouble(r.group(2)) * factor()) + (r.group(3) == null ? "" : r.group(3))));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.2f", value);
    }
}
