package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.piecing.Foundation;
import org.calicograph.piecing.StripSets;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.seams.Sections;
import org.calicograph.seams.Unit;
import org.junit.jupiter.api.Test;

class StdlibFoundationTest {

    /** Common practice: a log cabin and a flying goose each need one foundation only. */
    @Test
    void a_log_cabin_is_pieced_on_one_foundation() {
        Foundation cabin = Foundation.of(block("LogCabin"));
        assertThat(cabin.sections()).hasSize(1);
        assertThat(cabin.sections().get(0).patches()).hasSize(block("LogCabin").patches().size());
    }

    /** Common practice: a nine patch is pieced in three rows, an Ohio Star in more. */
    @Test
    void a_block_that_one_foundation_cannot_do_is_split() {
        assertThat(Foundation.of(block("NinePatch")).sections()).hasSize(3);
        for (String name : List.of("OhioStar", "SawtoothStar", "Pinwheel", "BearsPaw")) {
            Foundation f = Foundation.of(block(name));
            assertThat(f.sections().stream().mapToInt(s -> s.patches().size()).sum()).as(name).isEqualTo(block(name).patches().size());
            for (Sections.Section s : f.sections()) {
                assertThat(s.patches().stream().map(Unit.Single::id)).as(name).doesNotHaveDuplicates();
            }
        }
    }

    /** A foundation is mirrored: what lies left in the block lies right on the pattern, and the size stays. */
    @Test
    void the_pattern_keeps_the_size_of_the_block() {
        Foundation cabin = Foundation.of(block("LogCabin"));
        assertThat(cabin.pattern(0).bounds().width()).isCloseTo(12.5, within(0.02));
    }

    @Test
    void set_in_seams_are_refused_with_the_repair() {
        assertThatThrownBy(() -> Foundation.of(block("EightPointedStar")))
                .hasMessage("a foundation can't hold a set-in seam; piece this block without one, or redraft it with straight seams from edge to edge");
    }

    /** Common practice: a nine patch of 2 1/2 in cut squares comes from strip sets, 16 segments from 40 in. */
    @Test
    void nine_patches_come_from_strip_sets() {
        Block nine = (Block) CompiledStdlib.call(CompiledStdlib.named("NinePatch"), "block", Length.inches(6));
        var top = org.calicograph.setting.Setting.straight(4, 4).of(nine);
        StripSets sets = StripSets.of(top, CuttingRules.INCH);
        assertThat(sets.sets()).hasSize(2);
        assertThat(sets.sets().stream().mapToInt(StripSets.StripSet::times).sum()).isEqualTo(48);
        assertThat(sets.sets().get(0).perSet(CuttingRules.INCH)).isEqualTo(16);
        assertThat(sets.sets()).allMatch(s -> s.area(CuttingRules.INCH).squareInches() >= s.areaOfPatches().squareInches());
    }

    private static Block block(String name) {
        return (Block) CompiledStdlib.call(CompiledStdlib.named(name), "block", Length.inches(12));
    }
}
