package org.calicograph.covering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.junit.jupiter.api.Test;

class CoverTest {

    private static final Region SHEET = Region.rectangle(inches(4), inches(4));

    private static List<Patch> left(double edge) {
        return List.of(Patch.of("1", Role.DARK, Region.rectangle(new Box(0, 0, edge, 4))),
                Patch.of("2", Role.LIGHT, Region.rectangle(new Box(2, 0, 4, 4))));
    }

    @Test
    void a_gap_is_refused_with_its_place() {
        assertThatThrownBy(() -> Block.of("Slip", SHEET, left(1.75))).isInstanceOf(DesignException.class)
                .hasMessageContaining("block 'Slip' has a gap").hasMessageContaining("near 1 7/8 in from the left, 2 in from the top");
    }

    @Test
    void an_overlap_is_refused_with_both_patches() {
        assertThatThrownBy(() -> Block.of("Slip", SHEET, left(2.25))).isInstanceOf(DesignException.class)
                .hasMessageContaining("patch 1 (dark) and patch 2 (light)").hasMessageContaining("overlap").hasMessageContaining("near 2 1/8 in");
    }

    @Test
    void a_patch_outside_the_outline_is_refused() {
        assertThatThrownBy(() -> Block.of("Slip", Region.rectangle(inches(3), inches(4)), left(2)))
                .hasMessageContaining("patch 2 (light) sticks out of block 'Slip'");
    }

    @Property
    void the_law_holds_from_a_thousandth_of_an_inch(@ForAll @Scale(5) @DoubleRange(min = 0.0011, max = 0.5) double off) {
        assertThatThrownBy(() -> Block.of("Slip", SHEET, left(2 - off))).hasMessageContaining("gap");
        assertThatThrownBy(() -> Block.of("Slip", SHEET, left(2 + off))).hasMessageContaining("overlap");
    }

    @Property
    void less_than_a_thousandth_of_an_inch_passes(@ForAll @Scale(5) @DoubleRange(min = -0.0009, max = 0.0009) double off) {
        assertThat(Block.of("Close", SHEET, left(2 + off)).patchCount()).isEqualTo(2);
    }

    @Property(tries = 100)
    void any_block_drafted_from_lines_covers_its_sheet_and_no_longer_does_without_one_patch(
            @ForAll @IntRange(min = 1, max = 8) int lines, @ForAll long seed) {
        Random random = new Random(seed);
        List<Path> paths = new ArrayList<>(List.of(Path.rectangle(new Box(0, 0, 8, 8))));
        for (int i = 0; i < lines; i++) {
            paths.add(i % 4 == 3 ? Path.circle(new Point(4, 4), 1 + 2.5 * random.nextDouble())
                    : Path.through(new Point(0, 8 * random.nextDouble()), new Point(8, 8 * random.nextDouble())));
        }
        List<Region> faces = Arrangement.of(paths).faces();
        List<Patch> patches = new ArrayList<>();
        for (Region face : faces) {
            patches.add(Patch.of("" + patches.size(), Role.LIGHT, face));
        }
        Region sheet = Region.rectangle(inches(8), inches(8));
        assertThat(Block.of("Drafted", sheet, patches).patchCount()).isEqualTo(faces.size());
        // A circle of 0.03 in fits into the patch that is left out: the gap counts.
        int victim = random.nextInt(faces.size());
        boolean wide = !org.calicograph.geometry.Polygons.of(faces.get(victim), 1e-4).buffer(-0.015).isEmpty();
        if (wide && faces.size() > 1) {
            patches.remove(victim);
            assertThatThrownBy(() -> Block.of("Drafted", sheet, patches)).isInstanceOf(DesignException.class).hasMessageContaining("gap");
        }
    }

    @Test
    void curved_patches_are_compared_as_curves() {
        double r = 3;
        Path quarter = Path.from(0, 4 - r).arcAbout(new Point(0, 4), org.calicograph.measure.Angle.QUARTER).lineTo(0, 4).close();
        Path rest = Path.from(0, 4 - r).arcAbout(new Point(0, 4), org.calicograph.measure.Angle.QUARTER).lineTo(4, 4).lineTo(4, 0).lineTo(0, 0).close();
        List<Patch> good = List.of(Patch.of("1", Role.DARK, Region.of(quarter)), Patch.of("2", Role.LIGHT, Region.of(rest)));
        assertThat(Block.of("Curve", SHEET, good).patchCount()).isEqualTo(2);
        List<Patch> bad = List.of(good.get(0).transformed(Transform.scale(1.01, 1.01).then(Transform.move(0, -0.04))), good.get(1));
        assertThatThrownBy(() -> Block.of("Curve", SHEET, bad)).hasMessageContaining("overlap");
    }

    @Test
    void two_patches_of_one_id_are_refused() {
        List<Patch> twins = left(2).stream().map(p -> p.named("1")).toList();
        assertThatThrownBy(() -> Block.of("Twins", SHEET, twins)).hasMessageContaining("two patches with the id '1'");
    }
}
