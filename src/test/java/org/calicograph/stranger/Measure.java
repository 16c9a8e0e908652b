package org.calicograph.stranger;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as they are printed, read as anybody reads them, in inches. */
final class Measure {

    static final String LENGTH = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?) (?:in|mm|cm|m|yd)";
    private static final Pattern PARTS = Pattern.compile("(?:(\\d+) )?(?:(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?)) (in|mm|cm|m|yd)");

    private Measure() { }

    static double of(String text) {
        Matcher m = PARTS.matcher(text.strip());
        if (!m.matches()) {
            throw new IllegalArgumentException("no length that I can read: '" + text + "'");
        }
        double number = m.group(4) != null ? Double.parseDouble(m.group(4))
                : (m.group(1) == null ? 0 : Double.parseDouble(m.group(1))) + Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3));
        return number * switch (m.group(5)) {
            case "mm" -> 1 / 25.4;
            case "cm" -> 10 / 25.4;
            case "m" -> 1000 / 25.4;
            case "yd" -> 36;
            default -> 1;
        };
    }
}
