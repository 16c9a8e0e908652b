package org.calicograph.kernel;

import java.util.Arrays;
import java.util.List;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;

/**
 * The word {@code dial}, as cells use it: declares a live parameter and gives its present value.
 *
 * <pre>{@code
 * int points   = dial("points", 5, 16, 12);                          // least, most, at first
 * Length width = dial("width", inches(2), inches(9), inches(6));
 * String set   = dial("set", List.of("straight", "on point"));       // the first at first
 * boolean bind = dial("bound", true);
 * }</pre>
 *
 * <p>All throw an {@code IllegalArgumentException} that names the range if the first value lies outside.
 */
public final class Dials {

    private Dials() { }

    /** A whole number from the least to the most, in steps of 1; the initial one at first. */
    public static int dial(String name, int least, int most, int initial) {
        return dial(name, least, most, initial, 1);
    }

    /** A whole number from the least to the most, in even steps from the least. */
    public static int dial(String name, int least, int most, int initial, int step) {
        return DialBoard.take(new Dial.Whole(name, DialBoard.cell(), least, most, step, initial)).value();
    }

    /** Any number from the least to the most. */
    public static double dial(String name, double least, double most, double initial) {
        return dial(name, least, most, initial, 0.0);
    }

    /** A number from the least to the most, in even steps from the least; 0 for no steps. */
    public static double dial(String name, double least, double most, double initial, double step) {
        return DialBoard.take(new Dial.Real(name, DialBoard.cell(), least, most, step, initial)).value();
    }

    /** A length from the least to the most, in steps of 1/8 inch. */
    public static Length dial(String name, Length least, Length most, Length initial) {
        return dial(name, least, most, initial, Length.inches(1, 8));
    }

    /** A length from the least to the most, in even steps from the least. */
    public static Length dial(String name, Length least, Length most, Length initial, Length step) {
        return DialBoard.take(new Dial.OfLength(name, DialBoard.cell(), least, most, step, initial)).value();
    }

    /** Any angle from the least to the most. */
    public static Angle dial(String name, Angle least, Angle most, Angle initial) {
        return dial(name, least, most, initial, Angle.ZERO);
    }

    /** An angle from the least to the most, in even steps from the least. */
    public static Angle dial(String name, Angle least, Angle most, Angle initial, Angle step) {
        return DialBoard.take(new Dial.OfAngle(name, DialBoard.cell(), least, most, step, initial)).value();
    }

    /** A switch, on or off. */
    public static boolean dial(String name, boolean initial) {
        return DialBoard.take(new Dial.Switch(name, DialBoard.cell(), initial)).on();
    }

    /** One of several things, known by their words; the first at first. */
    public static <T> T dial(String name, List<T> choices) {
        return dial(name, choices, choices.isEmpty() ? null : choices.get(0));
    }

    /** @throws IllegalArgumentException if the first choice is none of the choices, or two read alike */
    public static <T> T dial(String name, List<T> choices, T initial) {
        List<String> words = choices.stream().map(String::valueOf).toList();
        if (!choices.isEmpty() && !choices.contains(initial)) {
            throw new IllegalArgumentException("The dial '" + name + "' can't be set to '" + initial + "'; it is one of '"
                    + String.join("', '", words) + "'.");
        }
        return choices.get(DialBoard.take(new Dial.Choice(name, DialBoard.cell(), words, choices.indexOf(initial))).chosen());
    }

    /** One of several words; the first at first. */
    public static String dial(String name, String first, String second, String... more) {
        List<String> all = new java.util.ArrayList<>(List.of(first, second));
        all.addAll(Arrays.asList(more));
        return dial(name, all);
    }

    /** One of an enum's constants. */
    public static <E extends Enum<E>> E dial(String name, E initial) {
        return dial(name, Arrays.asList(initial.getDeclaringClass().getEnumConstants()), initial);
    }
}
