package org.calicograph.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.junit.jupiter.api.Test;

class LaidOutTest {

    /** A half-square triangle, dark at the upper left. */
    private static final Block BLOCK = Block.onGrid("half", 1, Length.inches(4)).halvesRising(0, 0, 1, Role.DARK, Role.LIGHT).block()
            .with(Map.of(Role.DARK, Fabric.of("navy", "#24425c"), Role.LIGHT, Fabric.of("sand", "#e8dcc0")));

    private static String clothAt(LaidOut laid, double x, double y) {
        return laid.top().patches().stream().filter(p -> p.shape().contains(Point.of(x, y))).map(Patch::fabric).map(Fabric::name).findFirst().orElseThrow();
    }

    @Test
    void the_letter_says_where_the_arrow_points() {
        // The dark corner stands left of the arrow's tip, so it goes round with it.
        LaidOut row = LaidOut.of(BLOCK, "u r d l");
        String first = clothAt(row, 0.5, 0.5);
        assertEquals(first, clothAt(row, 7.5, 0.5));
        assertEquals(first, clothAt(row, 11.5, 3.5));
        assertEquals(first, clothAt(row, 12.5, 3.5));
        assertEquals(first, clothAt(LaidOut.of(BLOCK, "U"), 3.5, 0.5));
    }

    @Test
    void four_that_turn_about_a_point_give_one_figure_in_the_middle() {
        // One dark square in the lower right corner: four meet in the middle of two by two.
        Block corner = Block.onGrid("corner", 2, Length.inches(4)).square(Role.LIGHT, 0, 0, 1).square(Role.LIGHT, 1, 0, 1).square(Role.LIGHT, 0, 1, 1)
                .square(Role.DARK, 1, 1, 1).block().with(Map.of(Role.DARK, Fabric.of("navy", "#24425c"), Role.LIGHT, Fabric.of("sand", "#e8dcc0")));
        Emergence found = LaidOut.of(corner, "ur", "ld").figures();
        Emergence broken = LaidOut.of(corner, "uu", "uu").figures();
        assertEquals(1, found.figures().size());
        assertEquals(4, found.figures().get(0).patches());
        assertTrue(broken.figures().isEmpty(), () -> broken.figures().toString());
    }

    @Test
    void what_was_laid_is_the_same_as_the_unit_repeated_once() {
        LaidOut laid = LaidOut.of(BLOCK, "u R", "D l");
        assertEquals(laid.top().patches().stream().map(Patch::shape).toList(), laid.repeat().of(BLOCK, 1, 1).patches().stream().map(Patch::shape).toList());
    }

    @Test
    void a_letter_that_is_no_direction_and_uneven_rows_are_refused() {
        assertEquals("'x' in row 2 tells no direction; write u, r, d or l for where the arrow points, a capital for a block turned over",
                assertThrows(DesignException.class, () -> LaidOut.of(BLOCK, "u r", "u x")).getMessage());
        assertEquals("row 2 has 1 blocks, and row 1 has 2; write as many in each", assertThrows(DesignException.class, () -> LaidOut.of(BLOCK, "u r", "u")).getMessage());
        assertThrows(DesignException.class, () -> LaidOut.of(BLOCK));
    }
}
