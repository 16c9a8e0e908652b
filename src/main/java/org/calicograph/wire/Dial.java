package org.calicograph.wire;

import java.util.List;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A live parameter as a cell declared it, with its present value.
 *
 * <p>On paper (a notebook file, a command line) a value is a text: {@code 12}, {@code 0.75},
 * {@code 6 1/2 in}, {@code 22.5}, {@code on point}, {@code true}. {@link #text()} writes it and
 * {@link #turnedTo} reads it; the two are inverse to each other.
 */
public sealed interface Dial {

    String name();

    /** The id of the cell that declares it. */
    String cell();

    /** The present value as a text. */
    String text();

    /** The values it can take, as words: {@code from 5 to 16}. */
    String range();

    /**
     * The same dial at another value.
     *
     * @throws IllegalArgumentException naming the dial, the value and the range, if it can't take the value
     */
    Dial turnedTo(String text);

    /** A whole number. */
    record Whole(String name, String cell, int least, int most, int step, int value) implements Dial {
        public Whole {
            Bounds.ordered(name, least <= most && step >= 1, least, most, step);
            Bounds.inside(name, value >= least && value <= most && ((long) value - least) % step == 0, value, range(least, most, step));
        }

        private static String range(int least, int most, int step) {
            return "from " + least + " to " + most + (step == 1 ? "" : " in steps of " + step);
        }

        @Override
        public String text() {
            return Integer.toString(value);
        }

        @Override
        public String range() {
            return range(least, most, step);
        }

        @Override
        public Whole turnedTo(String text) {
            return new Whole(name, cell, least, most, step, Bounds.read(this, text, t -> Integer.parseInt(t.strip())));
        }
    }

    /** A real number; a step of 0 leaves it free. */
    record Real(String name, String cell, double least, double most, double step, double value) implements Dial {
        public Real {
            Bounds.ordered(name, least <= most && step >= 0, least, most, step);
            Bounds.inside(name, value >= least && value <= most, value, "from " + least + " to " + most);
        }

        @Override
        public String text() {
            return Double.toString(value);
        }

        @Override
        public String range() {
            return "from " + least + " to " + most;
        }

        @Override
        public Real turnedTo(String text) {
            return new Real(name, cell, least, most, step, Bounds.read(this, text, t -> Double.parseDouble(t.strip())));
        }
    }

    /** A length; the step says how far one notch goes, and values between notches are taken too. */
    record OfLength(String name, String cell, Length least, Length most, Length step, Length value) implements Dial {
        public OfLength {
            Bounds.ordered(name, least.compareTo(most) <= 0 && step.isPositive(), least, most, step);
            Bounds.inside(name, value.compareTo(least) >= 0 && value.compareTo(most) <= 0, value, "from " + least + " to " + most);
        }

        @Override
        public String text() {
            return value.text();
        }

        @Override
        public String range() {
            return "from " + least + " to " + most;
        }

        @Override
        public OfLength turnedTo(String text) {
            return new OfLength(name, cell, least, most, step, Bounds.read(this, text, Length::parse));
        }
    }

    /** An angle, written in degrees; a step of 0 leaves it free. */
    record OfAngle(String name, String cell, Angle least, Angle most, Angle step, Angle value) implements Dial {
        public OfAngle {
            Bounds.ordered(name, least.compareTo(most) <= 0 && step.degrees() >= 0, least, most, step);
            Bounds.inside(name, value.compareTo(least) >= 0 && value.compareTo(most) <= 0, value, "from " + least + " to " + most);
        }

        @Override
        public String text() {
            return Double.toString(value.degrees());
        }

        @Override
        public String range() {
            return "from " + least + " to " + most;
        }

        @Override
        public OfAngle turnedTo(String text) {
            return new OfAngle(name, cell, least, most, step, Bounds.read(this, text, t ->
                    Angle.degrees(Double.parseDouble(t.replaceAll("°|degrees?", "").strip()))));
        }
    }

    /** One of several, by the words that they are written with. */
    record Choice(String name, String cell, List<String> options, int chosen) implements Dial {
        public Choice {
            options = List.copyOf(options);
            if (options.isEmpty()) {
                throw new IllegalArgumentException("the dial '" + name + "' has nothing to choose from; give it at least one choice");
            }
            if (options.stream().distinct().count() < options.size()) {
                throw new IllegalArgumentException("the dial '" + name + "' has the same choice twice among " + options + "; write each once");
            }
            Bounds.inside(name, chosen >= 0 && chosen < options.size(), chosen, "one of " + options);
        }

        @Override
        public String text() {
            return options.get(chosen);
        }

        @Override
        public String range() {
            return "one of '" + String.join("', '", options) + "'";
        }

        @Override
        public Choice turnedTo(String text) {
            int at = options.indexOf(text);
            if (at < 0) {
                throw Bounds.refused(name, "'" + text + "'", range());
            }
            return new Choice(name, cell, options, at);
        }
    }

    /** On or off. */
    record Switch(String name, String cell, boolean on) implements Dial {
        @Override
        public String text() {
            return Boolean.toString(on);
        }

        @Override
        public String range() {
            return "true or false";
        }

        @Override
        public Switch turnedTo(String text) {
            String word = text.strip();
            if (!word.equals("true") && !word.equals("false")) {
                throw Bounds.refused(name, "'" + text + "'", range());
            }
            return new Switch(name, cell, word.equals("true"));
        }
    }
}
