package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompassStarTest {

    /** All the points of a rank are alike, and so are the halves of each: two halves a point, 4 points, 4, 8, 16. */
    @ParameterizedTest
    @CsvSource({"8,3 in", "8,30 cm", "16,12 in", "16,25.3333 in", "32,12 in", "32,34 in", "32,6 1/2 in"})
    void every_point_stands_straight_and_has_its_twins(int points, String size) {
        Length across = Length.parse(size);
        double r = across.inInches() / 2;
        Block star = (Block) CompiledStdlib.call(CompiledStdlib.named("CompassStar"), "of", points, across);
        Point middle = star.outline().bounds().centre();
        Map<List<Long>, Integer> kinds = new HashMap<>();
        for (Patch p : star.patches()) {
            List<Point> corners = p.shape().outer().corners();
            if (!p.shape().isStraight()) {
                continue;
            }
            assertThat(corners).hasSize(3);
            Point tip = corners.stream().filter(c -> Math.abs(c.distance(middle) - r) < 1e-6).findFirst().orElseThrow();
            Point axis = middle.minus(tip).unit();
            // One side of each half lies on the line from the tip to the middle of the star.
            assertThat(corners.stream().filter(c -> c != tip).mapToDouble(c -> Math.abs(c.minus(tip).cross(axis))).min().orElseThrow())
                    .isCloseTo(0, within(1e-9 * r));
            List<Long> sides = Stream.of(0, 1, 2).map(i -> Math.round(corners.get(i).distance(corners.get((i + 1) % 3)) / r * 1e8)).sorted().toList();
            kinds.merge(sides, 1, Integer::sum);
        }
        assertThat(kinds.values()).containsExactlyInAnyOrder(switch (points) {
            case 8 -> new Integer[] {8, 8};
            case 16 -> new Integer[] {8, 8, 16};
            default -> new Integer[] {8, 8, 16, 32};
        });
    }
}
