package org.calicograph.command;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;

/** A dial at several values spread over its range, ends included. */
final class DialSteps {

    private DialSteps() { }

    /** @param most how many values at the most, at least 2 */
    static List<Dial> of(Dial dial, int most) {
        List<Dial> values = new ArrayList<>();
        if (dial instanceof Dial.Switch) {
            return List.of(dial.turnedTo("false"), dial.turnedTo("true"));
        }
        if (dial instanceof Dial.Choice choice) {
            choice.options().forEach(o -> values.add(dial.turnedTo(o)));
            return values;
        }
        if (dial instanceof Dial.Whole whole) {
            int notches = (whole.most() - whole.least()) / whole.step();
            int count = Math.min(most - 1, Math.max(notches, 1));
            for (int i = 0; i <= count && notches > 0 || i == 0; i++) {
                long notch = Math.round((double) notches * i / count);
                values.add(dial.turnedTo(Long.toString(whole.least() + notch * whole.step())));
            }
            return values;
        }
        for (int i = 0; i < most; i++) {
            double share = (double) i / (most - 1);
            if (dial instanceof Dial.OfLength length) {
                Length at = length.least().plus(length.most().minus(length.least()).times(share)).roundedTo(length.step());
                Length inside = Length.max(length.least(), Length.min(length.most(), at));
                values.add(new Dial.OfLength(length.name(), length.cell(), length.least(), length.most(), length.step(), inside));
            } else if (dial instanceof Dial.OfAngle angle) {
                Angle at = angle.least().plus(angle.most().minus(angle.least()).times(share));
                values.add(dial.turnedTo(Double.toString(at.degrees())));
            } else if (dial instanceof Dial.Real real) {
                values.add(dial.turnedTo(Double.toString(real.least() + (real.most() - real.least()) * share)));
            }
        }
        return values.stream().distinct().toList();
    }
}
