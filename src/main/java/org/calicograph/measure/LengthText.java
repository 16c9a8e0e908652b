package org.calicograph.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reading and writing of lengths as the trade does it. */
final class LengthText {

    /** Denominators that are written as fractions: what rulers show, and the thirds and fifths of grids. */
    private static final int[] DENOMINATORS = {1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64};

    private static final Pattern FORM = Pattern.compile(
            "\\s*(-)?\\s*(?:(\\d{1,9})\\s*(?:[ -]\\s*(\\d{1,9})\\s*/\\s*(\\d{1,9}))?|(\\d{1,9})\\s*/\\s*(\\d{1,9})|(\\d{0,9}\\.\\d{1,9}))"
                    + "\\s*(in|inch|inches|\"|″|mm|cm|m|yd|yard|yards)?\\s*");

    private static final Pattern BESIDE = Pattern.compile("([^()]+)\\(([^()]+)\\)\\s*");

    private LengthText() { }

    /** A length, or a rounded one with the exact one beside it in brackets, which then counts. */
    static Length read(String text) {
        Matcher beside = BESIDE.matcher(text);
        if (!beside.matches()) {
            return one(text);
        }
        Length rounded = one(beside.group(1));
        Length exact = one(beside.group(2));
        if (Math.abs(rounded.units() - exact.units()) > 100 * Length.PER_MICROMETRE) {
            throw new IllegalArgumentException("'" + text + "' says two lengths; write one of them");
        }
        return exact;
    }

    private static Length one(String text) {
        Matcher m = FORM.matcher(glyphsSpelt(text));
        if (!m.matches()) {
            throw new IllegalArgumentException("'" + text + "' is not a length; write it like 3, 3 1/8, 2.5, 20 cm or 6 mm");
        }
        long perUnit = perUnit(m.group(8));
        Length length;
        if (m.group(7) != null) {
            BigDecimal units = new BigDecimal(m.group(7)).multiply(BigDecimal.valueOf(perUnit));
            length = new Length(units.setScale(0, RoundingMode.HALF_UP).longValueExact());
        } else if (m.group(5) != null) {
            length = fraction(text, m.group(5), m.group(6), perUnit);
        } else {
            length = new Length(Math.multiplyExact(Long.parseLong(m.group(2)), perUnit));
            if (m.group(3) != null) {
                length = length.plus(fraction(text, m.group(3), m.group(4), perUnit));
            }
        }
        return m.group(1) == null ? length : length.negated();
    }

    private static String glyphsSpelt(String text) {
        return text.replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4")
                .replace("⅛", " 1/8").replace("⅜", " 3/8").replace("⅝", " 5/8").replace("⅞", " 7/8")
                .replace("⅓", " 1/3").replace("⅔", " 2/3").replace('⁄', '/');
    }

    private static Length fraction(String text, String over, String under, long perUnit) {
        long denominator = Long.parseLong(under);
        if (denominator == 0) {
            throw new IllegalArgumentException("'" + text + "' has 0 below the line; write a fraction like 1/8");
        }
        return new Length(Math.multiplyExact(Long.parseLong(over), perUnit)).dividedBy(denominator);
    }

    private static long perUnit(String unit) {
        if (unit == null) {
            return Length.PER_INCH;
        }
        return switch (unit) {
            case "mm" -> 1_000 * Length.PER_MICROMETRE;
            case "cm" -> 10_000 * Length.PER_MICROMETRE;
            case "m" -> 1_000_000 * Length.PER_MICROMETRE;
            case "yd", "yard", "yards" -> 36 * Length.PER_INCH;
            default -> Length.PER_INCH;
        };
    }

    static String inches(Length length) {
        long units = Math.abs(length.units());
        String sign = length.units() < 0 ? "-" : "";
        long whole = units / Length.PER_INCH;
        long rest = units % Length.PER_INCH;
        for (int d : DENOMINATORS) {
            if (rest * d % Length.PER_INCH == 0) {
                long n = rest * d / Length.PER_INCH;
                String part = n == 0 ? "" + whole : whole == 0 ? n + "/" + d : whole + " " + n + "/" + d;
                return sign + part + " in";
            }
        }
        return decimal(length.inInches(), 4) + " in";
    }

    static String metric(Length length) {
        double mm = length.inMm();
        return Math.abs(mm) < 20 ? decimal(mm, 2) + " mm" : decimal(mm / 10, 2) + " cm";
    }

    static String decimal(double value, int places) {
        String s = String.format(Locale.ROOT, "%." + places + "f", value);
        if (s.indexOf('.') >= 0) {
            s = s.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return s.equals("-0") ? "0" : s;
    }
}
