package org.calicograph.stitching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.calicograph.border.Border;
import org.calicograph.colour.Colour;
import org.calicograph.colouring.Lighting;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilting.Choice;
import org.calicograph.quilting.Lines;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

class QuiltingPlanTest {

    private static final Fabric NAVY = Fabric.of("navy", "#24425c");
    private static final Fabric FOAM = Fabric.of("foam", "#f3ecdd");
    private static final Patchwork TOP = Medallion.around(Setting.straight(3, 3).alternating(
            Block.plain(NAVY, Length.inches(6), Length.inches(6)), Block.plain(FOAM, Length.inches(6), Length.inches(6))))
            .with(Border.plain(NAVY, Length.inches(3)).mitred()).top();
    private static final Region SHADOW = Region.polygon(Point.of(4, 0), Point.of(13, 0), Point.of(20, 24), Point.of(11, 24));

    private static final QuiltingPlan PLAN = QuiltingPlan.on(TOP)
            .with("grid", Colour.hex("#5d7f73"), Lines.grid(TOP.outline(), Length.inches(2)))
            .with("rings", Colour.hex("#b5553c"), Lines.rings(TOP.outline(), Point.of(12, 12), Length.inches(1)));

    @Test
    void a_shadow_changes_the_thread_along_the_line_and_loses_none_of_it() {
        Lighting shadow = Lighting.shadow(SHADOW, 0.5);
        QuiltingPlan shaded = PLAN.threaded("in shadow", List.of(shadow.over()), shadow::on);
        assertThat(shaded.layers()).extracting(QuiltingPlan.Layer::name).containsExactly("grid", "grid in shadow", "rings", "rings in shadow");
        assertThat(length(shaded.lines())).isCloseTo(length(PLAN.lines()), within(1e-4));
        Trim trim = Trim.within(SHADOW);
        for (QuiltingPlan.Layer layer : shaded.layers()) {
            boolean dark = layer.name().endsWith("in shadow");
            for (Path p : layer.lines()) {
                p.segments().forEach(s -> assertThat(trim.covers(s.middle())).as(layer.name()).isEqualTo(dark));
            }
        }
        assertThat(shaded.layers().get(1).thread()).isEqualTo(shadow.on(Colour.hex("#5d7f73")));
    }

    @Test
    void what_shares_a_thread_is_sewn_together() {
        QuiltingPlan one = PLAN.threaded("on navy", Choice.of(TOP).in(NAVY).joined(), c -> Colour.hex("#24425c"));
        assertThat(one.layers()).extracting(QuiltingPlan.Layer::name).containsExactly("grid", "grid on navy", "rings on navy", "rings");
        assertThat(length(one.lines())).isCloseTo(length(PLAN.lines()), within(1e-3));
    }

    @Test
    void regions_are_chosen_by_fabric_block_round_or_shape() {
        Choice all = Choice.of(TOP);
        assertThat(all.in(NAVY).patches()).hasSize(5 + 4);
        assertThat(all.in(FOAM).patches()).hasSize(4).allMatch(p -> p.fabric().equals(FOAM));
        Choice centre = all.within("centre");
        assertThat(centre.patches()).hasSize(9);
        assertThat(centre.joined()).singleElement().satisfies(r -> assertThat(r.area().squareInches()).isCloseTo(18 * 18, within(1e-2)));
        assertThat(all.within("r2c2").patches()).singleElement()
                .satisfies(p -> assertThat(p.shape().bounds().centre().near(Point.of(12, 12), 1e-6)).isTrue());
        assertThat(all.shapedLike(centre.patches().get(0)).patches()).hasSize(9);
        assertThat(all.where(p -> !centre.patches().contains(p)).patches()).hasSize(4);
    }

    @Test
    void a_plan_says_what_does_not_go_through_and_sews_each_run_the_easier_way() {
        Region bed = Region.rectangle(new Box(0, 0, 90, 108));
        Throat throat = new Throat(Length.inches(5), Length.inches(0.4), false);
        // Down a line 20 in from the right edge the 70 in to its left lie on the needle's right; upwards only 20 in do.
        Route hard = Route.over(List.of(Path.through(Point.of(70, 0), Point.of(70, 108))));
        assertThat(throat.tight(hard, bed)).hasSize(1);
        assertThat(throat.tight(throat.eased(hard, bed), bed)).isEmpty();
        assertThat(throat.eased(hard, bed).length()).isCloseTo(hard.length(), within(1e-9));
        Throat small = new Throat(Length.inches(2), Length.inches(0.4), false);
        String csv = PLAN.through(small).toString();
        assertThat(csv).contains("no: quilt it by hand").contains("walking foot");
    }

    /**
     * Reckoned by hand. Each of a square grid's line ends is a spur, gone over again to the outermost crossing; there the
     * two of a corner meet, and the k others of each side are joined to their neighbours along the rim. Where k is odd,
     * two pairs reach round a corner. The best pair is left, for the beginning and the end.
     */
    @Test
    void a_crosshatch_over_a_whole_quilt_is_one_route_as_short_as_reckoned() {
        for (int[] quilt : new int[][] {{20, 2}, {40, 2}, {41, 2}, {60, 1}, {80, 2}, {81, 2}, {100, 2}}) {
            double gap = quilt[1];
            List<Path> lines = Lines.grid(Region.rectangle(Length.inches(quilt[0]), Length.inches(quilt[0])), Length.inches(quilt[1]));
            int each = lines.size() / 2;
            double spur = (quilt[0] - (each - 1) * gap) / 2;
            int k = each - 2;
            double rim = k % 2 == 0 ? 2 * k * gap : 2 * (k - 1) * gap + 4 * gap;
            double left = 2 * spur + (k % 2 == 0 ? gap : 2 * gap);
            Route route = Route.over(lines);
            assertThat(route.runs()).hasSize(1);
            assertThat(route.length()).as("a grid of " + quilt[1] + " in on " + quilt[0] + " in")
                    .isCloseTo(length(lines) + 4 * each * spur + rim - left, within(1e-2));
        }
    }

    @Test
    void of_plans_with_equal_starts_the_one_that_turns_the_quilt_less_is_chosen() {
        QuiltingPlan blank = QuiltingPlan.on(Block.plain(FOAM, Length.inches(30), Length.inches(60)));
        Colour thread = Colour.hex("#24425c");
        // Lines up and down lie within the reach of the throat; lines across have 60 in to one side or the other.
        QuiltingPlan along = blank.with("along", thread, List.of(Path.through(Point.of(28, 0), Point.of(28, 60))));
        QuiltingPlan across = blank.with("across", thread, List.of(Path.through(Point.of(0, 30), Point.of(30, 30))));
        QuiltingPlan ring = blank.with("ring", thread, List.of(Path.circle(Point.of(15, 30), 5)));
        Throat small = new Throat(Length.inches(3), Length.inches(0.4), false);
        assertThat(small.easiest(List.of(across, along))).isEqualTo(along);
        Throat wide = new Throat(Length.inches(20), Length.inches(0.4), false);
        assertThat(wide.easiest(List.of(ring, across))).isEqualTo(across);
    }

    @Test
    void motifs_that_touch_the_seams_are_joined_along_them() {
        List<Path> motifs = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++) {
            motifs.add(Path.polygon(Point.of(3 + 6 * i, 6), Point.of(9 + 6 * i, 6), Point.of(6 + 6 * i, 3)));
        }
        motifs.add(Path.circle(Point.of(12, 12), 3));
        Colour thread = Colour.hex("#24425c");
        QuiltingPlan plan = QuiltingPlan.on(TOP).with("motifs", thread, motifs);
        assertThat(plan.layers().get(0).route().starts()).isEqualTo(2);
        Route joined = plan.travellingAlongSeams().layers().get(0).route();
        assertThat(joined.starts()).isEqualTo(1);
        assertThat(joined.length() - joined.retraced()).isCloseTo(length(motifs), within(1e-6));
        QuiltingPlan echo = QuiltingPlan.on(TOP).with("a", thread, motifs).with("b", thread, List.of(Path.through(Point.of(9, 6), Point.of(12, 9))));
        assertThat(echo.travellingAlongOthers().layers().get(0).route().starts()).isEqualTo(1);
    }

    @Test
    void by_hand_starts_are_cheap_and_threads_short_by_machine_the_throat_limits() {
        List<Path> lines = Lines.grid(Region.rectangle(new Box(0, 0, 24, 24)), Length.inches(3));
        QuiltingPlan plan = QuiltingPlan.on(TOP).with("grid", Colour.hex("#24425c"), lines);
        Sewing machine = new Sewing.ByMachine(Lockstitch.MACHINE, new Throat(Length.inches(2), Length.inches(0.4), false));
        Route byHand = plan.layers().get(0).route(Sewing.HAND);
        Route byMachine = plan.layers().get(0).route(machine);
        assertThat(byHand.starts()).isGreaterThan(byMachine.starts());
        assertThat(byHand.retraced()).isLessThan(byMachine.retraced());
        assertThat(byMachine.starts()).isEqualTo(1);
        assertThat(plan.sewn(machine).toString()).contains("does not go through a throat of 2 in");
        assertThat(plan.sewn(Sewing.HAND).toString()).contains("10.0 stitches to the inch", "threads of 18 in");
    }

    private static double length(List<Path> paths) {
        return paths.stream().mapToDouble(Path::length).sum();
    }
}
