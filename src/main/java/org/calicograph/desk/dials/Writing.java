package org.calicograph.desk.dials;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;

/** How the values of dials are written for a person, and read when a person has typed them: in inches or in metric. */
public record Writing(Length.System lengths) {

    /** The dial's value; metric is rounded to 0.1 mm. */
    public String value(Dial dial) {
        String text = dial.text();
        if (dial instanceof Dial.OfLength d) {
            return lengths == Length.System.METRIC ? d.value().in(lengths) : text;
        }
        return dial instanceof Dial.Real && text.endsWith(".0") ? text.substring(0, text.length() - 2)
                : dial instanceof Dial.OfAngle ? text.replaceFirst("\\.0$", "") + "\u00b0" : text;
    }

    /** The exact value where {@link #value} had to round it; otherwise empty. */
    String exact(Dial dial) {
        return dial instanceof Dial.OfLength d && !Length.parse(value(dial)).equals(d.value()) ? "exactly " + d.text() : "";
    }

    /** What the dial takes, in words. */
    String range(Dial dial) {
        return dial instanceof Dial.OfLength d ? "from " + d.least().in(lengths) + " to " + d.most().in(lengths) : dial.range();
    }

    /**
     * What somebody typed, as {@link Dial#turnedTo} reads it. A bare number is in the unit that the value
     * stands in at present: typing 20 over 15.24 cm means 20 cm.
     */
    String read(Dial dial, String typed) {
        boolean bare = lengths == Length.System.METRIC && dial instanceof Dial.OfLength && typed.strip().matches("[\\d ./]*\\d");
        return bare ? typed.strip() + value(dial).replaceFirst("^[-\\d.]+", "") : typed;
    }

    /** The dial turned; as {@link Dial#turnedTo}, with the range in the person's units. */
    Dial turned(Dial dial, String text) {
        try {
            return dial.turnedTo(text);
        } catch (IllegalArgumentException e) {
            throw lengths == Length.System.INCH ? e : new IllegalArgumentException(e.getMessage().replace(dial.range(), range(dial)), e);
        }
    }

    /** Values of dials by name, on a line. Values of dials that are not there are written as they are. */
    public String words(Map<String, String> values, List<Dial> dials) {
        return values.entrySet().stream().map(e -> e.getKey() + " " + word(e.getKey(), e.getValue(), dials)).collect(Collectors.joining(", "));
    }

    /** One value of a dial by its name. */
    public String word(String name, String text, List<Dial> dials) {
        try {
            return dials.stream().filter(d -> d.name().equals(name)).findFirst().map(d -> value(d.turnedTo(text))).orElse(text);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}
