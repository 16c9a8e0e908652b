package org.calicograph.notebook;

/** The value that a dial was moved to, as the file has it. */
public sealed interface DialValue {

    /** As it is written on a command line and sent to a kernel: {@code 12}, {@code true}, {@code 7 3/8 in}. */
    String text();

    /** @param text the number as JSON writes it, digit by digit */
    record Quantity(String text) implements DialValue {
        public Quantity {
            if (!Json.Num.isNumber(text)) {
                throw new IllegalArgumentException("'" + Excerpt.of(text) + "' is not a number; write it like 12 or 0.75");
            }
        }
    }

    record OnOff(boolean on) implements DialValue {
        @Override
        public String text() {
            return Boolean.toString(on);
        }
    }

    /** A length with its unit, or one of several choices. */
    record Words(String text) implements DialValue { }

    /** A number if the text is one, a switch if it is true or false, otherwise words. */
    static DialValue of(String text) {
        if (text.equals("true") || text.equals("false")) {
            return new OnOff(text.equals("true"));
        }
        return Json.Num.isNumber(text) ? new Quantity(text) : new Words(text);
    }
}
