package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.piecing.Chain;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.seams.AssemblyOrder;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.SewingTable;
import org.calicograph.seams.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class StdlibAssemblyTest {

    static Stream<Patchwork> blocks() {
        return StdlibBlocksTest.blocks(Length.inches(12));
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void sewn_in_simulation_the_tree_gives_back_the_block(Patchwork block) {
        Unit unit = AssemblyOrder.of(block);
        Geometry sewn = SewingTable.sew(unit);
        Geometry outline = Polygons.of(block.outline(), Region.ACCURACY);
        assertThat(OverlayNGRobust.overlay(sewn, outline, OverlayNG.SYMDIFFERENCE).getArea()).isCloseTo(0, within(0.02));
        List<String> sewnIds = unit.singles().stream().map(Unit.Single::id).sorted().toList();
        assertThat(sewnIds).containsExactlyElementsOf(block.patches().stream().map(Patch::id).sorted().toList());
    }

    /** Common practice: squares and triangles of an eight-pointed star of diamonds are set in. */
    @Test
    void the_eight_pointed_star_is_reported_as_set_in() {
        Unit star = AssemblyOrder.of(block("EightPointedStar"));
        assertThat(star.isStraight()).isFalse();
        assertThat(star.steps().stream().filter(s -> s.kind() == SeamKind.SET_IN).count()).isEqualTo(8);
    }

    /** Common practice: a feathered star is sewn from alike corners and sides, its feathers in strips; what is made once comes last. */
    @Test
    void a_feathered_star_is_sewn_from_units_that_are_few_and_alike() {
        Object star = CompiledStdlib.call(CompiledStdlib.named("FeatheredStar"), "of", 7);
        Block equal = (Block) CompiledStdlib.call(CompiledStdlib.call(star, "equalFeathers"), "across", Length.inches(12));
        for (Patchwork work : List.of(block("FeatheredStar"), equal)) {
            List<Chain> chains = SewingPlan.of(work).stages().get(0).chains();
            assertThat(chains.size()).isLessThanOrEqualTo(26);
            assertThat(chains.stream().filter(c -> c.sample().kind() == SeamKind.STRAIGHT && c.times() % 4 == 0).count()).isGreaterThanOrEqualTo(10);
            assertThat(chains).anyMatch(c -> c.sample().parts().size() >= 6);
        }
    }

    /** Common practice: these are sewn with straight seams only. */
    @Test
    void grid_blocks_have_straight_seams_only() {
        for (String name : List.of("NinePatch", "OhioStar", "SawtoothStar", "ChurnDash", "Pinwheel", "LogCabin", "Shoofly",
                "FriendshipStar", "BearsPaw", "Hourglass", "DiamondInTheSquare", "Snowball")) {
            assertThat(AssemblyOrder.of(block(name)).isStraight()).as(name).isTrue();
        }
    }

    @Test
    void the_drunkards_path_has_a_curved_seam() {
        Unit unit = AssemblyOrder.of((Patchwork) CompiledStdlib.call(CompiledStdlib.named("DrunkardsPath"), "unit", Length.inches(6)));
        assertThat(unit.steps()).extracting(Unit.Sewn::kind).contains(SeamKind.CURVED);
    }

    /** A curve that runs into an edge leaves a point without end; its pieces are cut and planned all the same. */
    @Test
    void every_block_has_a_sewing_plan() {
        assertThat(SewingPlan.of(block("OrangePeel")).stages()).hasSize(1);
    }

    private static Patchwork block(String name) {
        return (Patchwork) CompiledStdlib.call(CompiledStdlib.named(name), "block", Length.inches(12));
    }
}
