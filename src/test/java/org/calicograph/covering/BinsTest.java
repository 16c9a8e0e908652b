package org.calicograph.covering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.geometry.Box;

class BinsTest {

    /** Against every pair compared: none missed, none twice; thin sheets, large boxes among small and shared edges included. */
    @Property(tries = 100)
    void boxes_that_touch_are_found_once(@ForAll @IntRange(max = 40) int count, @ForAll @IntRange(max = 1000) int seed, @ForAll @IntRange(max = 2) int kind) {
        Random random = new Random(seed);
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int x = random.nextInt(20);
            int y = kind == 1 ? 0 : random.nextInt(20);
            int reach = kind == 2 && i % 7 == 0 ? 15 : 3;
            boxes.add(new Box(x, y, x + random.nextInt(reach), y + (kind == 1 ? 1e-6 : random.nextInt(reach))));
        }
        Bins bins = new Bins(boxes);
        for (int i = 0; i < count; i++) {
            List<Integer> found = new ArrayList<>();
            bins.laterTouching(i, found::add);
            List<Integer> wanted = new ArrayList<>();
            for (int j = i + 1; j < count; j++) {
                if (boxes.get(i).touches(boxes.get(j))) {
                    wanted.add(j);
                }
            }
            assertThat(found).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }
}
