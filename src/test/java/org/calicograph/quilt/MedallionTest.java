package org.calicograph.quilt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.border.Border;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MedallionTest {

    private static final Fabric NAVY = Fabric.of("navy", "#1f3a5f");

    private static Block tooth(Length side) {
        return Block.onGrid("Tooth", 1, side).halvesRising(0, 0, 1, Role.LIGHT, Role.DARK).block();
    }

    @Property(tries = 50)
    void every_round_covers_what_it_should(@ForAll @IntRange(min = 4, max = 20) int across, @ForAll @IntRange(min = 4, max = 20) int down,
                                           @ForAll @IntRange(min = 1, max = 3) int unit) {
        Patchwork top = Medallion.around(Block.plain(NAVY, inches(across * 2L * unit), inches(down * 2L * unit)))
                .with(Border.of(tooth(inches(unit))).mirroredAtMiddle())
                .with(Border.plain(NAVY, inches(2)).mitred())
                .with(Border.plain(NAVY, inches(3)))
                .with(Border.plain(NAVY, inches(1)).corners(tooth(inches(1))))
                .top();
        assertThat(top.width()).isEqualTo(inches(2L * across * unit + 2L * unit + 12));
        Cover.check("the top", top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
        assertThat(top.patches().stream().map(Patch::id).distinct().count()).isEqualTo(top.patchCount());
    }

    @Test
    void a_corner_block_of_another_size_is_refused() {
        assertThatThrownBy(() -> Medallion.around(Block.plain(NAVY, inches(10), inches(10)))
                .with(Border.plain(NAVY, Length.parse("2 1/2")).corners(tooth(inches(3)))).top())
                .hasMessage("Border 1 is 2 1/2 in wide but its corner block is 3 in; make them equal or mitre the corner.");
    }

    @Test
    void units_that_do_not_come_out_whole_are_refused_with_the_unit_that_does() {
        assertThatThrownBy(() -> Medallion.around(Block.plain(NAVY, inches(20), inches(20))).with(Border.of(tooth(inches(3)))).top())
                .isInstanceOf(DesignException.class).hasMessageContaining("7 units of 3 in make 21 in but the top is 20 in")
                .hasMessageContaining("2.8571 in wide");
    }

    /** A pieced border of ten 5 in units round a 46 in quilt wants spacers of 2 in finished ('Making a pieced border fit', a quilt blog, 2009). */
    @ParameterizedTest
    @CsvSource({"46,5,2,50"})
    void a_spacer_border_makes_the_published_example_fit(int quilt, int unit, int spacer, int side) {
        Patchwork top = Medallion.around(Block.plain(NAVY, inches(quilt), inches(quilt))).with(Border.plain(NAVY, inches(spacer)))
                .with(Border.of(tooth(inches(unit)))).top();
        assertThat(top.width()).isEqualTo(inches(side + 2L * unit));
    }

    @Test
    void an_uneven_border_adds_its_own_width_each_way() {
        for (int sides = 0; sides <= 3; sides++) {
            for (int ends = sides == 0 ? 1 : 0; ends <= 3; ends++) {
                Patchwork top = Medallion.around(tooth(inches(10))).with(Border.plain(NAVY, inches(sides), inches(ends))).top();
                assertThat(top.width()).isEqualTo(inches(10 + 2L * sides));
                assertThat(top.height()).isEqualTo(inches(10 + 2L * ends));
            }
        }
        assertThatThrownBy(() -> Border.plain(NAVY, inches(0), inches(0))).hasMessageContaining("one above 0");
    }

    @Test
    void a_quilt_keeps_its_size_when_bound_and_recoloured() {
        Quilt quilt = Medallion.around(tooth(inches(10))).with(Border.plain(NAVY, inches(1))).bound(NAVY);
        Quilt red = quilt.withTop(quilt.top().with(Role.DARK, Fabric.of("red", "#a33")));
        assertThat(red.width()).isEqualTo(inches(12));
        assertThat(red.patches()).anyMatch(p -> p.fabric().name().equals("red"));
        assertThat(quilt.patches()).noneMatch(p -> p.fabric().name().equals("red"));
        Patchwork byPlace = quilt.top().recoloured(p -> p.id().startsWith("border1") ? Fabric.of("red", "#a33") : p.fabric());
        assertThat(byPlace.patches().stream().filter(p -> p.fabric().name().equals("red")).count()).isEqualTo(4);
    }

    @Property(tries = 40)
    void turning_mirroring_and_scaling_keep_the_cover(@ForAll @IntRange(max = 3) int quarters, @ForAll @IntRange(min = 1, max = 30) int width) {
        Patchwork top = Setting.straight(3, 2).of((c, r) -> tooth(inches(4)).turned(c + r));
        Patchwork moved = top.turned(quarters).mirrored().scaledTo(inches(width));
        assertThat(moved.width().minus(inches(width)).abs().inInches()).isLessThan(1e-6);
        Cover.check("the top", moved.outline(), moved.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
    }
}
