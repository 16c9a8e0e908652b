package org.calicograph.border;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.setting.SettingShapesTest;
import org.calicograph.Golden;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.quilt.Medallion;
import org.calicograph.show.PatchworkPicture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounds of a medallion that change its shape: on point, octagons, rings. */
class RoundTest {

    private static final Fabric NAVY = Fabric.of("navy", "#24425c");
    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");
    private static final Fabric RUST = Fabric.of("rust", "#b5553c");
    private static final Fabric MIST = Fabric.of("mist", "#9db8bb");

    private static Block centre(double side) {
        return Block.onGrid("Centre", 2, inches(side)).halvesFalling(0, 0, 1, Role.LIGHT, Role.DARK).turnedFourTimes().block();
    }

    @Property(tries = 6)
    void rounds_cover_what_they_should(@ForAll @DoubleRange(min = 2, max = 30) double side, @ForAll @IntRange(min = 2, max = 10) int wedges,
                                       @ForAll @DoubleRange(min = 0.5, max = 6) double width) {
        Medallion square = Medallion.around(centre(side)).with(Round.onPoint(SAND)).with(Border.plain(NAVY, inches(width))).with(Round.onPoint(RUST));
        SettingShapesTest.covers(square.top());
        assertThat(square.top().outline().bounds().width()).isCloseTo((side * Math.sqrt(2) + 2 * width) * Math.sqrt(2), within(1e-5));
        SettingShapesTest.covers(Medallion.around(centre(side)).with(Round.octagon(MIST, SAND).diagonals(RUST)).top());
        SettingShapesTest.covers(Medallion.around(centre(side)).with(Round.octagon(MIST, SAND).wide(inches(side * 0.25 + width))).top());
        SettingShapesTest.covers(Medallion.around(centre(side)).with(Round.ring(2 * wedges, inches(width), NAVY, MIST).on(SAND)).with(Round.onPoint(RUST)).top());
    }

    @Test
    void a_rectangle_on_its_point_comes_to_a_square() {
        Patchwork top = Medallion.around(Block.plain(NAVY, inches(10), inches(16))).with(Round.onPoint(SAND)).top();
        SettingShapesTest.covers(top);
        assertThat(top.outline().bounds().width()).isCloseTo(26 / Math.sqrt(2), within(1e-9));
        assertThat(top.outline().bounds().height()).isCloseTo(26 / Math.sqrt(2), within(1e-9));
    }

    /**
     * Square in a square: for a centre of 4 in finished, corner squares of 3 3/4 in to halve, the exact size 3.7034 in
     * rounded up to the next 1/8 in (a pattern site's block pages); a finished block of 12 in has a centre cut 9 in, exactly 8.9853
     * (the same handout). Seams of 1/4 in: a half-square triangle adds 0.25 x (2 + root 2) to its short side.
     */
    @Test
    void a_square_in_a_square_has_the_published_parts() {
        Assembly four = (Assembly) Medallion.around(centre(4)).with(Round.onPoint(SAND)).top();
        double leg = four.parts().get(1).work().outline().bounds().width();
        double exact = leg + 0.25 * (2 + Math.sqrt(2));
        // The chart adds 7/8 in, its rounding of 0.8536: 2.8284 + 0.875 = 3.7034.
        assertThat(leg + 0.875).isCloseTo(3.7034, within(0.0001));
        assertThat(inches(exact).roundedUpTo(inches(1, 8))).isEqualTo(Length.parse("3 3/4"));
        double centre = 12 / Math.sqrt(2);
        assertThat(centre + 0.5).isCloseTo(8.9853, within(0.0001));
        assertThat(Medallion.around(centre(centre)).with(Round.onPoint(SAND)).top().outline().bounds().width()).isCloseTo(12, within(1e-5));
    }

    /**
     * An octagon cut from a 36 in square is marked 10.545 in from each corner (how-to article: 36 / 3.414; exactly 10.5442);
     * one from a 12 in square has sides of 4.97 in (article: side = square / (1 + root 2)); the factor is 0.4142 (layout
     * note that quotes a builders' handbook of geometry of 1921).
     */
    @ParameterizedTest
    @CsvSource({"36,10.545,", "12,,4.97", "1,,0.4142"})
    void octagons_have_the_published_measures(double square, Double mark, Double side) {
        double inner = square / (1 + Math.sqrt(2));
        Assembly top = (Assembly) Medallion.around(centre(inner)).with(Round.octagon(MIST, SAND)).top();
        assertThat(top.outline().bounds().width()).isCloseTo(square, within(1e-5));
        if (mark != null) {
            Placed corner = top.parts().stream().filter(p -> p.id().contains("corner")).findFirst().orElseThrow();
            assertThat(corner.work().outline().bounds().width()).isCloseTo(mark, within(0.001));
        }
        if (side != null) {
            assertThat(inner).isCloseTo(side, within(0.001));
            assertThat(OctagonRound.side(inches(square)).inInches()).isCloseTo(side, within(0.001));
        }
    }

    @Test
    void a_ring_goes_round_a_circle_too() {
        Region disc = Region.of(Path.circle(new Point(5, 5), 5));
        Block round = Block.plain("disc", NAVY, disc);
        Assembly top = (Assembly) Medallion.around(round).with(Round.ring(16, inches(3), RUST, SAND).margin(inches(1))).top();
        SettingShapesTest.covers(top);
        assertThat(top.width()).isEqualTo(inches(18));
        assertThat(top.parts()).noneMatch(p -> p.id().contains("segment"));
        double ring = top.parts().get(1).work().patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(ring).isCloseTo(Math.PI * (8 * 8 - 5 * 5), within(1e-9));
        SettingShapesTest.covers(Medallion.around(round).with(Round.ring(16, inches(3), RUST, NAVY).inPoints()).top());
    }

    @Test
    void rounds_that_can_not_go_round_say_why() {
        Block oblong = Block.plain(NAVY, inches(10), inches(16));
        assertThatThrownBy(() -> Medallion.around(oblong).with(Round.octagon(MIST, SAND)).top()).isInstanceOf(DesignException.class)
                .hasMessage("octagon 1 can't go around 'navy' of 10 in x 16 in, which is not a square; set it in a square, or add an uneven border first");
        assertThatThrownBy(() -> Medallion.around(centre(10)).with(Round.octagon(MIST, SAND).wide(inches(2))).top())
                .hasMessageContaining("whose corners stick out of it; let it reach more than 2 1/8 in");
        assertThatThrownBy(() -> Round.ring(15, inches(2), NAVY, SAND)).hasMessageContaining("a whole number of times the fabrics");
        assertThatThrownBy(() -> Medallion.around(centre(20)).with(Round.ring(4, inches(2), NAVY).inPoints()).top())
                .hasMessageContaining("make it wider or use more points");
    }

    @Test
    void rounds_look_as_accepted() {
        Block middle = (Block) centre(8).with(Role.DARK, NAVY).with(Role.LIGHT, SAND);
        Golden.picture("setting/squares-in-squares", PatchworkPicture.of(Medallion.around(middle).with(Round.onPoint(MIST)).with(Border.plain(RUST, inches(1)))
                .with(Round.onPoint(NAVY)).with(Border.plain(SAND, inches(2)).mitred()).top()));
        Golden.picture("setting/octagon", PatchworkPicture.of(Medallion.around(middle).with(Round.octagon(MIST, SAND).diagonals(RUST))
                .with(Border.plain(NAVY, inches(2)).mitred()).top()));
        Golden.picture("setting/ring", PatchworkPicture.of(Medallion.around(middle).with(Round.ring(24, inches(3), NAVY, MIST, RUST).on(SAND))
                .with(Border.plain(NAVY, inches(1))).top()));
        Golden.picture("setting/ring-points", PatchworkPicture.of(Medallion.around(middle).with(Round.ring(20, inches(3), NAVY, RUST).inPoints().on(SAND)).top()));
    }
}
