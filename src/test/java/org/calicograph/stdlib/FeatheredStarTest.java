package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import java.util.stream.DoubleStream;
import org.calicograph.Golden;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Placed;
import org.calicograph.show.PatchworkPicture;
import org.calicograph.seams.AssemblyOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeatheredStarTest {

    private static Object star(int straight) {
        return CompiledStdlib.call(CompiledStdlib.named("FeatheredStar"), "of", straight);
    }

    private static Block across(Object star, Length side) {
        return (Block) CompiledStdlib.call(star, "across", side);
    }

    private static Length length(Object star, String what, Length of) {
        return (Length) CompiledStdlib.call(star, what, of);
    }

    private static DoubleStream sides(Patch patch) {
        return patch.shape().outer().segments().stream().mapToDouble(Segment::length).sorted();
    }

    private static List<Patch> triangles(Block block, String role) {
        return block.patches().stream().filter(p -> p.role().name().equals(role) && p.shape().outer().segments().size() == 3).toList();
    }

    /** A half-square triangle has two equal sides and a long one of root 2 times as much (any textbook of geometry). */
    @ParameterizedTest
    @CsvSource({"2,true", "3,true", "5,true", "7,true", "12,true", "2,false", "3,false", "5,false", "7,false", "12,false"})
    void every_feather_is_a_true_half_square_triangle_and_their_number_is_whole(int straight, boolean square) {
        Object star = square ? star(straight) : CompiledStdlib.call(star(straight), "equalFeathers");
        int slant = (int) CompiledStdlib.call(star, "slant");
        Length side = inches(15);
        Block block = across(star, side);
        double f = length(star, "feather", side).inInches();
        double g = length(star, "slantFeather", side).inInches();
        List<Patch> feathers = triangles(block, "dark");
        assertThat(feathers).hasSize(8 * (straight - 1 + slant - 1));
        for (Patch feather : feathers) {
            double[] s = sides(feather).toArray();
            double leg = Math.abs(s[0] - f) < 1e-6 ? f : g;
            assertThat(s[0]).isCloseTo(leg, within(1e-6));
            assertThat(s[1]).isCloseTo(s[0], within(1e-9));
            assertThat(s[2]).isCloseTo(s[0] * Math.sqrt(2), within(1e-9));
        }
        assertThat(g / f).isCloseTo(square ? straight * Math.sqrt(2) / slant : 1, within(1e-5));
    }

    /**
     * The tip is a 45 degree diamond whose side is the feather times the root of two ('Drafting for the Creative Quilter',
     * C&T Publishing, 2010, p. 67: a published diamond of 1.4073 in for a feather of 1.4073 / 1.4142 in).
     */
    @Test
    void the_diamond_at_a_tip_has_the_long_side_of_a_feather() {
        Object star = CompiledStdlib.call(star(5), "equalFeathers");
        Length side = length(star, "sideFor", inches(1.4073 / 1.4142));
        Patch diamond = across(star, side).patches().stream().filter(p -> p.role().name().equals("accent")
                && p.shape().outer().segments().size() == 4 && p.shape().bounds().top() < 1e-9).findFirst().orElseThrow();
        assertThat(sides(diamond)).allSatisfy(s -> assertThat(s).isCloseTo(1.4073, within(1e-4)));
        List<Point> c = diamond.shape().outer().corners();
        Point u = c.get(1).minus(c.get(0)).unit();
        Point v = c.get(3).minus(c.get(0)).unit();
        assertThat(Math.abs(u.cross(v))).isCloseTo(Math.sin(Math.PI / 4), within(1e-9));
    }

    /** A right angle and equal sides: the centre of the star with two sizes of feather is a square. */
    @Test
    void the_centre_is_square_with_two_sizes_and_bends_by_the_stated_angle_with_one() {
        Block square = across(star(5), inches(15));
        Patch centre = square.patches().get(square.patchCount() - 1);
        assertThat(centre.shape().outer().segments()).hasSize(4).allSatisfy(s ->
                assertThat(s.length()).isCloseTo(10 * length(star(5), "feather", inches(15)).inInches(), within(1e-5)));
        Object equal = CompiledStdlib.call(star(5), "equalFeathers");
        Block bent = across(equal, inches(15));
        List<Point> c = bent.patches().get(bent.patchCount() - 1).shape().outer().corners();
        assertThat(c).hasSize(8);
        Point before = c.get(1).minus(c.get(0));
        Point after = c.get(2).minus(c.get(1));
        double turn = Math.toDegrees(Math.abs(Math.atan2(before.cross(after), before.dot(after))));
        double stated = Math.abs(((Angle) CompiledStdlib.call(equal, "centreBend")).degrees());
        assertThat(List.of(turn, 90 - turn)).anySatisfy(t -> assertThat(t).isCloseTo(stated, within(1e-6)));
    }

    /** 1, 3/2, 7/5 and 17/12 are the best fractions for the root of two (continued fractions, any textbook of number theory). */
    @Test
    void five_and_seven_and_twelve_and_seventeen_come_out_best() {
        Table choices = (Table) CompiledStdlib.call(CompiledStdlib.named("FeatheredStar"), "choices", 12);
        assertThat(choices.rows()).hasSize(11);
        assertThat(choices.rows().get(3).stream().map(Table.Entry::text).limit(3)).containsExactly("5", "7", "+1.02 %");
        assertThat(choices.rows().get(10).stream().map(Table.Entry::text).limit(3)).containsExactly("12", "17", "-0.17 %");
    }

    /** With a square centre, five and seven the block is 2 (11 + 10/7) feathers wide, by the algebra in the class. */
    @Test
    void a_ruler_size_of_feather_gives_the_block_and_the_compromise_is_told() {
        assertThat(length(star(5), "sideFor", inches(1, 2)).inInches()).isCloseTo(11 + 10 / 7.0, within(1e-6));
        double miss = length(star(5), "missIfCutAlike", length(star(5), "sideFor", inches(1))).inInches();
        assertThat(miss).isCloseTo(5 * Math.sqrt(2) - 7, within(1e-6));
        Golden.text("stdlib/feathered-star-report.csv", ((Table) CompiledStdlib.call(star(5), "report", inches(15))).csv());
    }

    @Test
    void another_block_may_stand_in_the_square_centre_and_other_numbers_look_right() {
        Block ohio = (Block) CompiledStdlib.call(CompiledStdlib.named("EightPointedStar"), "block", inches(6));
        Golden.picture("stdlib/feathered-star-with-a-star", PatchworkPicture.of((Block) CompiledStdlib.call(star(7), "across", inches(18), ohio)));
        Golden.picture("stdlib/feathered-star-equal", PatchworkPicture.of(across(CompiledStdlib.call(star(3), "equalFeathers"), inches(15))));
        assertThatThrownBy(() -> CompiledStdlib.call(CompiledStdlib.call(star(3), "equalFeathers"), "across", inches(15), ohio))
                .hasMessageContaining("use the star without equalFeathers");
        assertThatThrownBy(() -> star(1)).hasMessageContaining("use 2 to 40");
        assertThatThrownBy(() -> CompiledStdlib.call(star(5), "slanting", 12)).hasMessageContaining("use about 7");
    }

    /** Common practice: corners and sides are sewn by themselves, and only the seams past the diamonds turn a corner. */
    @ParameterizedTest
    @CsvSource({"5,true", "3,true", "7,false", "3,false"})
    void in_units_only_the_seams_past_the_diamonds_turn(int straight, boolean square) {
        Object star = square ? star(straight) : CompiledStdlib.call(star(straight), "equalFeathers");
        Assembly units = (Assembly) CompiledStdlib.call(star, "inUnits", inches(15));
        assertThat(units.patchCount()).isEqualTo(across(star, inches(15)).patchCount());
        assertThat(units.parts()).hasSize(9);
        for (Placed part : units.parts().subList(0, 2)) {
            assertThat(AssemblyOrder.of(part.work()).singles()).hasSize(part.work().patchCount());
        }
        assertThat(AssemblyOrder.of(units.parts().get(0).work()).isStraight()).isTrue();
        assertThat(AssemblyOrder.of(units).isStraight()).isFalse();
    }
}
