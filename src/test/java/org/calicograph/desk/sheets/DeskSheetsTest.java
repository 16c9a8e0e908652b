package org.calicograph.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;
import org.junit.jupiter.api.Test;

class DeskSheetsTest {

    @Test
    void a_dial_is_spread_from_its_least_to_its_most() {
        assertThat(Spread.over(new Dial.Whole("points", "a1", 5, 16, 1, 8), 4)).containsExactly("5", "9", "12", "16");
        assertThat(Spread.over(new Dial.Whole("points", "a1", 5, 7, 1, 6), 9)).containsExactly("5", "6", "7");
        assertThat(Spread.over(new Dial.OfLength("side", "a1", Length.inches(4), Length.inches(12), Length.inches(1, 4), Length.inches(8)), 3))
                .containsExactly("4 in", "8 in", "12 in");
        assertThat(Spread.over(new Dial.Switch("sashed", "a1", true), 5)).containsExactly("false", "true");
        assertThat(Spread.over(new Dial.Choice("set", "a1", List.of("straight", "on point"), 0), 5)).containsExactly("straight", "on point");
    }
}
