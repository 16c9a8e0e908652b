package org.calicograph.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.drawing.Exhibit;
import org.calicograph.fabric.Role;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.Mattress;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.covering.DesignException;
import org.calicograph.setting.Setting;
import org.calicograph.show.Show;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.junit.jupiter.api.Test;

class ScalingTest {

    /** Nine squares of a third of the side each. */
    private static Block nine(Length side) {
        var draft = Block.onGrid("Nine", 3, side);
        for (int i = 0; i < 9; i++) {
            draft = draft.square(i % 2 == 0 ? Role.DARK : Role.LIGHT, i % 3, i / 3, 1);
        }
        return draft.block();
    }

    /** A nine-patch of 12 in has squares of 4 in; at 16 in they are 5 1/3 in, which no ruler has; at 18 in they are 6 in: arithmetic. */
    @Test
    void a_nine_patch_of_16_in_leaves_the_ruler() {
        Scaling scaling = Scaling.of(nine(inches(12)), inches(16)).covering(inches(60), inches(80));
        assertThat(scaling.before().pieces()).allMatch(p -> scaling.before().offTheRuler(p).isEmpty());
        assertThat(scaling.after().pieces()).allMatch(p -> scaling.after().offTheRuler(p).size() == 1);
        Make eighteen = Scaling.of(nine(inches(12)), inches(18)).after();
        assertThat(eighteen.pieces()).allMatch(p -> eighteen.offTheRuler(p).isEmpty());
        // 5 x 7 blocks of 12 in and 4 x 5 of 16 in.
        assertThat(scaling.before().blocks()).isEqualTo(35);
        assertThat(scaling.after().blocks()).isEqualTo(20);
        assertThat(scaling.after().patches()).isEqualTo(180);
        // Within a block 4 seams of its side; between them (across - 1) x down and (down - 1) x across of it.
        assertThat(scaling.before().seams()).isEqualTo(inches(35 * 4 * 12 + (4 * 7 + 6 * 5) * 12));
        assertThat(scaling.after().seams().inInches()).isCloseTo(20 * 4 * 16 + (3 * 5 + 4 * 4) * 16, within(1e-4));
    }

    @Test
    void a_bed_is_covered_at_both_sizes() {
        BedCover cover = BedCover.over(Mattress.QUEEN).drop(inches(15));
        Scaling scaling = Scaling.of(nine(inches(12)), inches(16)).covering(cover);
        for (Make make : List.of(scaling.before(), scaling.after())) {
            assertThat(make.width()).isGreaterThanOrEqualTo(cover.topWidth());
            assertThat(make.height()).isGreaterThanOrEqualTo(cover.topLength());
            assertThat(make.width().minus(make.block().width())).isLessThan(cover.topWidth());
        }
    }

    /** Nine squares of 4 in are cut 4 1/2 in: 5 x 20.25 and 4 x 20.25 sq in a block, and 15 % more, on 40 in: arithmetic. */
    @Test
    void cloth_by_area_is_the_cut_area_and_the_waste() {
        Make make = Scaling.of(nine(inches(12)), inches(16)).covering(inches(60), inches(84)).before();
        assertThat(make.cloth(0.15)).containsEntry("dark", inches(35 * 5 * 20.25 * 1.15 / 40).roundedUpTo(inches("4 1/2")))
                .containsEntry("light", inches(35 * 4 * 20.25 * 1.15 / 40).roundedUpTo(inches("4 1/2")));
    }

    @Property(tries = 20)
    void seams_counted_by_blocks_are_those_of_the_whole_top(@ForAll @IntRange(min = 1, max = 4) int across, @ForAll @IntRange(min = 1, max = 4) int down,
                                                            @ForAll @IntRange(min = 4, max = 20) int side) {
        Block block = Block.onGrid("Halves", 2, inches(side)).halvesFalling(0, 0, 1, Role.LIGHT, Role.DARK).turnedFourTimes().block();
        Make make = new Make(block, across, down, CuttingRules.INCH);
        Make whole = new Make(Setting.straight(across, down).of(block), 1, 1, CuttingRules.INCH);
        assertThat(make.seams().inInches()).isCloseTo(whole.seams().inInches(), within(1e-5));
        assertThat(make.patches()).isEqualTo(whole.patches());
        assertThat(make.pieces()).extracting(Piece::count).allMatch(n -> n == 4);
    }

    /** Quarter-square triangles are cut by their long side, half-square triangles by their short ones (common practice). */
    @Test
    void a_triangle_is_on_the_ruler_by_its_short_sides_or_its_long_one() {
        Block hourglass = Block.onGrid("Hourglass", 1, inches(4)).quarters(0, 0, 1, Role.DARK, Role.LIGHT, Role.DARK, Role.LIGHT).block();
        Scaling scaling = Scaling.of(hourglass, inches(16).dividedBy(3));
        assertThat(scaling.before().offTheRuler(scaling.before().pieces().get(0))).isEmpty();
        assertThat(scaling.after().offTheRuler(scaling.after().pieces().get(0))).hasSize(1);
        Make halves = new Make(Block.onGrid("Half", 1, inches(4)).halvesRising(0, 0, 1, Role.LIGHT, Role.DARK).block(), 1, 1, scaling.rules());
        assertThat(halves.pieces()).allMatch(p -> halves.offTheRuler(p).isEmpty());
    }

    @Test
    void it_draws_itself_as_tables() {
        Scaling scaling = Scaling.of(nine(inches(12)), inches(16)).covering(inches(60), inches(84));
        assertThat(Show.of(scaling)).isInstanceOf(Exhibit.Several.class);
        assertThat(scaling.table().csv()).contains("blocks,35,24,0.69").contains("\"top, finished\",60 in x 84 in,64 in x 96 in,1.22")
                .contains("kinds of patches with a side off the ruler,0,2,");
        assertThat(scaling.patches().csv()).contains("dark,5,4 in x 4 in,5.33 in x 5.33 in,none,5.33 in");
        assertThatThrownBy(() -> Scaling.of(nine(inches(12)), inches(0))).isInstanceOf(DesignException.class).hasMessageContaining("use sizes above 0");
    }
}
