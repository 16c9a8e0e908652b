package org.calicograph.desk.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.desk.dials.Notches;
import org.calicograph.wire.Dial;

/** Values of a dial from its least to its most, evenly spread. */
final class Spread {

    private Spread() { }

    /** @param most how many at most, 2 or more; a dial with fewer notches gives them all */
    static List<String> over(Dial dial, int most) {
        Notches notches = Notches.of(dial);
        int count = Math.min(most, notches.last() + 1);
        Set<String> values = new LinkedHashSet<>();
        for (int i = 0; i < count; i++) {
            values.add(notches.text(count == 1 ? 0 : (int) Math.rint((double) i * notches.last() / (count - 1))));
        }
        return List.copyOf(values);
    }
}
