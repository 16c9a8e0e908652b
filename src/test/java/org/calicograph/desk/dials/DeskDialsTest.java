package org.calicograph.desk.dials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;
import org.junit.jupiter.api.Test;

class DeskDialsTest {

    private static final Dial.OfLength WIDTH = new Dial.OfLength("width", "a1", Length.inches(1), Length.inches(12), Length.inches(1, 8), Length.inches("7 3/8"));

    @Test
    void a_length_goes_by_its_step_and_a_value_between_goes_to_the_next_notch() {
        assertThat(Notches.of(WIDTH).last()).isEqualTo(88);
        assertThat(Notches.of(WIDTH).moved(1)).isEqualTo("7 1/2 in");
        Dial between = WIDTH.turnedTo("7 1/3");
        assertThat(Notches.of(between).moved(1)).isEqualTo("7 3/8 in");
        assertThat(Notches.of(between).moved(-1)).isEqualTo("7 1/4 in");
        assertThat(Notches.of(WIDTH.turnedTo("12")).moved(10)).isEqualTo("12 in");
    }

    @Test
    void in_metric_a_length_is_written_and_read_in_centimetres_and_stays_exact() {
        Writing metric = new Writing(Length.System.METRIC);
        assertThat(metric.value(WIDTH)).isEqualTo("18.73 cm");
        assertThat(metric.exact(WIDTH)).isEqualTo("exactly 7 3/8 in");
        assertThat(metric.range(WIDTH)).isEqualTo("from 2.54 cm to 30.48 cm");
        assertThat(metric.turned(WIDTH, metric.read(WIDTH, "20")).text()).isEqualTo(Length.cm(20).text());
        assertThat(metric.turned(WIDTH, metric.read(WIDTH, "8 in")).text()).isEqualTo("8 in");
        assertThat(new Writing(Length.System.INCH).read(WIDTH, "8")).isEqualTo("8");
        assertThatThrownBy(() -> metric.turned(WIDTH, "40 cm")).hasMessageContaining("from 2.54 cm to 30.48 cm");
    }

    @Property(tries = 200)
    void every_notch_of_every_dial_is_a_value_it_takes_and_lies_where_it_says(@ForAll @IntRange(min = 0, max = 400) int n) {
        List<Dial> dials = List.of(WIDTH, new Dial.Whole("points", "a1", 5, 16, 2, 5), new Dial.Real("share", "a1", 0.1, 0.9, 0.05, 0.3),
                new Dial.Real("free", "a1", -1, 2, 0, 0.3), new Dial.Choice("set", "a1", List.of("straight", "on point"), 1),
                new Dial.OfAngle("turn", "a1", Angle.degrees(0), Angle.degrees(90), Angle.degrees(7.5), Angle.degrees(15)),
                new Dial.Switch("sashed", "a1", true));
        for (Dial dial : dials) {
            int notch = Math.min(n, Notches.of(dial).last());
            Dial turned = dial.turnedTo(Notches.of(dial).text(notch));
            assertThat(Notches.of(turned).position()).as(dial.name()).isCloseTo(notch, org.assertj.core.data.Offset.offset(1e-6));
        }
    }
}
