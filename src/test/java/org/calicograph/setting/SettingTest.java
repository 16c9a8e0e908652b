package org.calicograph.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingTest {

    private static final Fabric NAVY = Fabric.of("navy", "#1f3a5f");
    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");

    private static Block block(Length side) {
        return Block.onGrid("Test block", 2, side).halvesFalling(0, 0, 1, Role.LIGHT, Role.DARK).turnedFourTimes().block();
    }

    /**
     * Straight sets: 5 x 6 blocks of 12 in make 60 x 72 (a quilt shop's page of layouts); 4 x 5 of 10 in with 2 in sashing between
     * make 46 x 58 (a quilt blog); 5 x 6 of 12 in with 3 in sashing and a sashed border make 78 x 93 (a quilt shop's page of layouts).
     */
    @ParameterizedTest
    @CsvSource({"5,6,12,0,false,60,72", "4,5,10,2,false,46,58", "5,6,12,3,true,78,93"})
    void straight_sets_have_their_published_sizes(int columns, int rows, int side, int sash, boolean framed, int width, int height) {
        Block block = block(inches(side));
        SashedSetting sashed = sash == 0 ? null : Setting.sashed(columns, rows, inches(sash), NAVY, SAND);
        Assembly top = sash == 0 ? Setting.straight(columns, rows).of(block) : framed ? sashed.framedToo().of(block) : sashed.of(block);
        assertThat(top.width()).isEqualTo(inches(width));
        assertThat(top.height()).isEqualTo(inches(height));
    }

    /**
     * On-point layouts: 8 x 10 of 6 in with alternate squares make 68 x 85 in with 143 blocks, 32 side and 4 corner
     * triangles (quilting shop blog, 2010: '68 x 85 from 80 nine-patch blocks with alternate setting squares'); 3 x 4 of
     * 8 in, 5 x 6 of 9 in and 6 x 8 of 12 in computed from geometry.
     */
    @ParameterizedTest
    @CsvSource({"8,10,6,67.882,84.853,143,32", "3,4,8,33.941,45.255,18,10", "5,6,9,63.640,76.368,50,18", "6,8,12,101.823,135.765,83,24"})
    void on_point_layouts_have_their_published_sizes_and_counts(int columns, int rows, int side, double width, double height, int blocks, int sides) {
        Assembly top = Setting.onPoint(columns, rows, SAND).of(Block.plain(NAVY, inches(side), inches(side)));
        assertThat(top.outline().bounds().width()).isCloseTo(width, within(0.001));
        assertThat(top.outline().bounds().height()).isCloseTo(height, within(0.001));
        assertThat(top.parts().stream().filter(p -> p.work().name().equals("navy")).count()).isEqualTo(blocks);
        assertThat(top.parts().stream().filter(p -> p.work().name().equals("side triangle")).count()).isEqualTo(sides);
        assertThat(top.parts().stream().filter(p -> p.work().name().equals("corner triangle")).count()).isEqualTo(4);
    }

    /** Block diagonals to the nearest 1/8 in (a published quilt-maths chart, 2002). */
    @ParameterizedTest
    @CsvSource({"4,5 5/8", "5,7 1/8", "6,8 1/2", "7,9 7/8", "8,11 3/8", "9,12 3/4", "10,14 1/8", "12,17", "14,19 3/4"})
    void a_block_on_its_point_is_as_wide_as_the_published_diagonal(int side, String diagonal) {
        Patchwork onPoint = block(inches(side)).turned(org.calicograph.measure.Angle.degrees(45));
        assertThat(onPoint.width().roundedTo(inches(1, 8))).isEqualTo(Length.parse(diagonal));
    }

    /**
     * Setting triangles: squares to cut for side and corner triangles, rounded up to the next 1/8 in (on-point cutting
     * chart, hobby reference page that states 'rounded up to nearest 1/8'). The rule adds 1 1/4 in and 7/8 in to the
     * finished long side and short side (common practice); the finished sides are those of the setting itself.
     */
    @ParameterizedTest
    @CsvSource({"5,8 3/8,4 1/2", "6,9 3/4,5 1/8", "7,11 1/4,5 7/8", "8,12 5/8,6 5/8", "9,14,7 1/4", "10,15 1/2,8", "11,16 7/8,8 3/4",
        "12,18 1/4,9 3/8", "13,19 3/4,10 1/8", "14,21 1/8,10 7/8", "15,22 1/2,11 1/2", "3,5 1/2,3"})
    void setting_triangles_are_cut_from_the_published_squares(int side, String sideSquare, String cornerSquare) {
        Assembly top = Setting.onPoint(2, 2, SAND).of(Block.plain(NAVY, inches(side), inches(side)));
        Box sideTriangle = bounds(top, "side triangle");
        Box cornerTriangle = bounds(top, "corner triangle");
        Length eighth = inches(1, 8);
        assertThat(inches(sideTriangle.width()).plus(Length.parse("1 1/4")).roundedUpTo(eighth)).isEqualTo(Length.parse(sideSquare));
        assertThat(inches(cornerTriangle.width()).plus(Length.parse("7/8")).roundedUpTo(eighth)).isEqualTo(Length.parse(cornerSquare));
    }

    private static Box bounds(Assembly top, String name) {
        return top.parts().stream().filter(p -> p.work().name().equals(name)).findFirst().orElseThrow().work().outline().bounds();
    }

    @Property(tries = 60)
    void every_setting_covers_its_outline(@ForAll @IntRange(min = 1, max = 5) int columns, @ForAll @IntRange(min = 1, max = 5) int rows,
                                          @ForAll @DoubleRange(min = 1, max = 20) double side, @ForAll @DoubleRange(min = 0.25, max = 4) double sash) {
        Block block = block(inches(side));
        Length width = inches(sash);
        for (Assembly top : new Assembly[] {Setting.straight(columns, rows).of(block), Setting.onPoint(columns, rows, SAND).of(block),
            Setting.sashed(columns, rows, width, NAVY, SAND).of(block), Setting.sashed(columns, rows, width, NAVY, SAND).framedToo().of(block)}) {
            double patches = top.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
            assertThat(patches).isCloseTo(top.outline().area().squareInches(), within(1e-6 * patches));
            Cover.check("the top", top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
        }
    }

    @Test
    void a_block_of_another_size_is_refused_with_both_sizes() {
        assertThatThrownBy(() -> Setting.straight(2, 1).of((c, r) -> block(inches(6 + c)))).isInstanceOf(DesignException.class)
                .hasMessage("'Test block' is 7 in high but row 1 is 6 in high; make them equal with scaledTo");
        assertThatThrownBy(() -> Setting.onPoint(2, 2, SAND).of((c, r) -> block(inches(c == 0 ? 6 : 5)))).isInstanceOf(DesignException.class)
                .hasMessageContaining("is 5 in x 5 in but the blocks of this on-point setting are 6 in square");
    }
}
