package org.calicograph.drafting;

import java.util.Optional;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A question that a lesson asks, and what it makes of the answer.
 *
 * @param words    the question
 * @param expected the right number: degrees, inches or a count
 * @param within   how far off an answer may be
 * @param unit     what follows the number, such as a degree sign; may be empty
 * @param hint     what helps after a wrong answer
 * @param answer   the answer given; empty until there is one
 */
public record Question(String words, double expected, double within, String unit, String hint, Optional<Double> answer) {

    private static final String INCHES = " in";

    /** A question whose answer is an angle, right within 0.05 degrees. */
    public static Question of(String words, Angle expected, String hint) {
        return new Question(words, expected.degrees(), 0.05, "°", hint, Optional.empty());
    }

    /** A question whose answer is a length, right within 1/16 in. */
    public static Question of(String words, Length expected, String hint) {
        return new Question(words, expected.inInches(), 1.0 / 16, INCHES, hint, Optional.empty());
    }

    /** A question whose answer is a whole number. */
    public static Question of(String words, int expected, String hint) {
        return new Question(words, expected, 0, "", hint, Optional.empty());
    }

    /**
     * The same question about a length, right only this near.
     *
     * @throws IllegalArgumentException if the length is less than nothing
     */
    public Question within(Length near) {
        if (near.inInches() < 0) {
            throw new IllegalArgumentException("'" + words + "' can't be right within " + near + "; use nothing or more");
        }
        return new Question(words, expected, near.inInches(), unit, hint, answer);
    }

    /** The question with the answer that was given, as a bare number in its own unit. */
    public Question answered(double given) {
        return new Question(words, expected, within, unit, hint, Optional.of(given));
    }

    /** The question with the angle that was given. */
    public Question answered(Angle given) {
        return answered(given.degrees());
    }

    /** The question with the length that was given. */
    public Question answered(Length given) {
        return answered(given.inInches());
    }

    /** True if an answer was given and is near enough. */
    public boolean isRight() {
        return answer.isPresent() && Math.abs(answer.get() - expected) <= within + 1e-9;
    }

    /** The right answer as a teacher reads it: a length to the nearest 1/16 in with its decimals beside it, an angle in degrees, a count. */
    public String right() {
        return unit.equals(INCHES) ? Length.inches(expected).onRuler() : number(expected) + unit;
    }

    /** The question and what is to be said of the answer; the right number is not given away. */
    @Override
    public String toString() {
        if (answer.isEmpty()) {
            return words;
        }
        String given = unit.equals(INCHES) ? Length.inches(answer.get()).toString() : number(answer.get()) + unit;
        return words + "\n" + (isRight() ? given + " is right." : given + " is not it yet. " + hint);
    }

    private static String number(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-6 ? Long.toString(Math.round(value)) : Double.toString(Math.rint(value * 1000) / 1000);
    }
}
