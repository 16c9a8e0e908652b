package org.calicograph.seams;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.junit.jupiter.api.Test;

class PressingTest {

    private static Unit grid(int side) {
        List<Unit.Single> all = new ArrayList<>();
        for (int i = 0; i < side * side; i++) {
            double x = i % side;
            double y = i / side;
            all.add(new Unit.Single("" + i, Region.rectangle(new Box(x, y, x + 1, y + 1))));
        }
        return AssemblyOrder.of(all);
    }

    /** Common practice: rows are pressed in opposite directions in turn. */
    @Test
    void rows_are_pressed_in_opposite_directions() {
        Pressing pressing = Pressing.of(grid(3), id -> Integer.parseInt(id) % 2);
        assertThat(pressing.conflicts()).isEmpty();
        List<Pressing.Pressed> upright = pressing.seams().stream().filter(p -> Math.abs(p.toward().x()) > 0.9).toList();
        assertThat(upright).hasSize(6);
        for (Pressing.Pressed a : upright) {
            for (Pressing.Pressed b : upright) {
                boolean meet = a.seam().to().near(b.seam().from(), 1e-6) || a.seam().from().near(b.seam().from(), 1e-6) && a != b;
                assertThat(meet && a.toward().equals(b.toward())).isFalse();
            }
        }
    }

    /** Two colours do: a seam that stands alone goes to the darker side. */
    @Test
    void a_lone_seam_goes_to_the_darker_side() {
        Unit pair = AssemblyOrder.of(List.of(new Unit.Single("light", Region.rectangle(new Box(0, 0, 1, 1))),
                new Unit.Single("dark", Region.rectangle(new Box(1, 0, 2, 1)))));
        Pressing pressing = Pressing.of(pair, id -> id.equals("light") ? 1 : 0);
        assertThat(pressing.seams().get(0).toward()).isEqualTo(new Point(1, 0));
    }

    @Test
    void a_grid_of_any_size_nests() {
        for (int side = 2; side < 7; side++) {
            assertThat(Pressing.of(grid(side), id -> 0.5).conflicts()).as(side + " x " + side).isEmpty();
        }
    }
}
