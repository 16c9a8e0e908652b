package org.calicograph.drawing.writing;

import org.calicograph.geometry.Point;

/** The text of an SVG file as it grows: numbers to fixed decimals, everything foreign escaped. */
final class SvgText {

    private final StringBuilder out = new StringBuilder(4096);

    SvgText raw(String text) {
        out.append(text);
        return this;
    }

    SvgText point(Point p) {
        return number(p.x()).raw(" ").number(p.y());
    }

    /** To four decimals, without zeros at the end. */
    SvgText number(double value) {
        return decimal(value, 10_000);
    }

    /** To eight decimals, without zeros at the end. */
    SvgText fine(double value) {
        return decimal(value, 100_000_000);
    }

    private SvgText decimal(double value, long unit) {
        long n = Math.round(value * unit);
        if (n < 0) {
            out.append('-');
            n = -n;
        }
        out.append(n / unit);
        long rest = n % unit;
        if (rest > 0) {
            out.append('.');
            for (long place = unit / 10; rest > 0; place /= 10) {
                out.append((char) ('0' + rest / place));
                rest %= place;
            }
        }
        return this;
    }

    /** A colour as {@code #rrggbb}. */
    SvgText hex(int packed) {
        out.append('#');
        for (int shift = 20; shift >= 0; shift -= 4) {
            out.append(Character.forDigit(packed >> shift & 15, 16));
        }
        return this;
    }

    /** As character data or within double quotes; what XML can't hold becomes U+FFFD. */
    SvgText escaped(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return this;
    }

    /** The characters of XML 1.0, without the controls past ASCII. */
    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c < 0x7F || c >= 0xA0 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
