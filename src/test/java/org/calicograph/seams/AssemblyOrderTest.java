package org.calicograph.seams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.junit.jupiter.api.Test;

class AssemblyOrderTest {

    private static Unit.Single box(String id, double x, double y, double w, double h) {
        return new Unit.Single(id, Region.rectangle(new Box(x, y, x + w, y + h)));
    }

    @Test
    void four_strips_round_a_square_need_a_partial_seam() {
        Unit unit = AssemblyOrder.of(List.of(box("middle", 1, 1, 2, 2), box("top", 0, 0, 3, 1), box("right", 3, 0, 1, 3),
                box("bottom", 1, 3, 3, 1), box("left", 0, 1, 1, 3)));
        // Common practice: the first strip's seam is left open at one end, the next go on whole, the last closes the ring.
        assertThat(unit.steps()).extracting(Unit.Sewn::kind)
                .containsExactly(SeamKind.BEGUN, SeamKind.STRAIGHT, SeamKind.STRAIGHT, SeamKind.PARTIAL);
        Unit.Sewn last = unit.steps().get(3);
        assertThat(PartSeams.completed(last, unit)).contains(unit.steps().get(0));
        Line first = (Line) unit.steps().get(0).seams().get(0).get(0);
        assertThat(last.seams().get(0)).anyMatch(s -> s.from().near(PartSeams.openEnd(first, last).orElseThrow(), 1e-6)
                || s.to().near(PartSeams.openEnd(first, last).orElseThrow(), 1e-6));
        assertThat(SewingTable.sew(unit).getArea()).isCloseTo(16, within(1e-6));
    }

    @Test
    void a_grid_is_sewn_in_rows() {
        List<Unit.Single> nine = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            nine.add(box("" + i, i % 3, i / 3, 1, 1));
        }
        Unit.Sewn rows = (Unit.Sewn) AssemblyOrder.of(nine);
        assertThat(rows.parts()).hasSize(3).allMatch(r -> r.singles().size() == 3);
        assertThat(rows.isStraight()).isTrue();
    }

    @Property(tries = 50)
    void a_sheet_parted_by_edge_to_edge_cuts_is_sewn_with_straight_seams(@ForAll @IntRange(min = 2, max = 30) int count,
                                                                         @ForAll java.util.Random random) {
        List<Box> boxes = new ArrayList<>(List.of(new Box(0, 0, 20, 20)));
        while (boxes.size() < count) {
            Box b = boxes.remove(random.nextInt(boxes.size()));
            boolean level = random.nextBoolean();
            double share = 0.25 + random.nextInt(3) * 0.25;
            double at = level ? b.top() + b.height() * share : b.left() + b.width() * share;
            boxes.add(level ? new Box(b.left(), b.top(), b.right(), at) : new Box(b.left(), b.top(), at, b.bottom()));
            boxes.add(level ? new Box(b.left(), at, b.right(), b.bottom()) : new Box(at, b.top(), b.right(), b.bottom()));
        }
        List<Unit.Single> patches = new ArrayList<>();
        for (Box b : boxes) {
            if (Math.min(b.width(), b.height()) < 0.1) {
                return;
            }
            patches.add(new Unit.Single("" + patches.size(), Region.rectangle(b)));
        }
        Unit unit = AssemblyOrder.of(patches);
        assertThat(unit.isStraight()).isTrue();
        assertThat(SewingTable.sew(unit).getArea()).isCloseTo(400, within(1e-3));
    }

    /** The sewing table itself: half a seam, a seam that is begun and never completed, and a set-in seam without a corner are caught. */
    @Test
    void what_is_sewn_wrong_is_caught() {
        List<Unit> two = List.of(box("left", 0, 0, 1, 2), box("right", 1, 0, 1, 2));
        Line whole = new Line(new Point(1, 0), new Point(1, 2));
        Line half = new Line(new Point(1, 0), new Point(1, 1));
        assertThat(SewingTable.sew(new Unit.Sewn(SeamKind.STRAIGHT, two, List.of(List.of(whole)))).getArea()).isCloseTo(4, within(1e-6));
        assertThatThrownBy(() -> SewingTable.sew(new Unit.Sewn(SeamKind.STRAIGHT, two, List.of(List.of(half))))).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> SewingTable.sew(new Unit.Sewn(SeamKind.BEGUN, two, List.of(List.of(whole))))).hasMessageContaining("nothing completes");
        assertThatThrownBy(() -> SewingTable.sew(new Unit.Sewn(SeamKind.SET_IN, two, List.of(List.of(whole))))).hasMessageContaining("turns a corner");
    }
}
