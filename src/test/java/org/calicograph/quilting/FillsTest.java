package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.Golden;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.stitching.QuiltingPlan;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class FillsTest {

    private static final Region SHIELD = Region.polygon(Point.of(0, 0), Point.of(12, 0), Point.of(12, 9), Point.of(6, 12), Point.of(0, 9));
    private static final Region RING = new Region(Path.circle(Point.of(6, 6), 6), List.of(Path.circle(Point.of(6, 6), 2.5)));

    private static List<List<Path>> fills(Region region) {
        return List.of(Fills.matchsticks(region, Length.inches(0.4), Angle.degrees(20), 3), Fills.pebbles(region, Length.inches(0.4), Length.inches(1.2), 5),
                Fills.spiral(region, Point.of(5, 6), Length.inches(0.6)), Fills.ribbons(region, Length.inches(2), Length.inches(0.8)),
                Fills.quarterFans(region, 4, Length.inches(0.4)));
    }

    @Test
    void every_fill_stays_in_its_region() {
        for (Region region : List.of(SHIELD, RING)) {
            Geometry grown = Polygons.of(region, 1e-4).buffer(1e-3);
            for (List<Path> fill : fills(region)) {
                assertThat(fill).isNotEmpty();
                for (Path p : fill) {
                    assertThat(grown.covers(Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-4))))).isTrue();
                }
            }
        }
    }

    @Test
    void pebbles_never_cross_and_leave_no_room_for_another() {
        for (long shuffle = 0; shuffle < 5; shuffle++) {
            List<Path> pebbles = Fills.pebbles(RING, Length.inches(0.4), Length.inches(1.2), shuffle);
            List<double[]> circles = new ArrayList<>();
            for (Path p : pebbles) {
                Box b = p.bounds();
                assertThat(b.width()).isBetween(0.4 - 1e-9, 1.2 + 1e-9).isCloseTo(b.height(), within(1e-9));
                circles.add(new double[] {b.centre().x(), b.centre().y(), b.width() / 2});
            }
            int touching = 0;
            for (int i = 0; i < circles.size(); i++) {
                double out0 = Math.hypot(circles.get(i)[0] - 6, circles.get(i)[1] - 6);
                double nearest = Math.min(6 - out0, out0 - 2.5) - circles.get(i)[2];
                for (int j = 0; j < circles.size(); j++) {
                    if (i != j) {
                        double gap = Math.hypot(circles.get(i)[0] - circles.get(j)[0], circles.get(i)[1] - circles.get(j)[1]) - circles.get(i)[2] - circles.get(j)[2];
                        assertThat(gap).isGreaterThan(-1e-9);
                        nearest = Math.min(nearest, gap);
                    }
                }
                touching += nearest < 2e-3 ? 1 : 0;
            }
            assertThat(touching).as("of " + circles.size()).isGreaterThanOrEqualTo(circles.size() - 2);
            Random chance = new Random(shuffle);
            for (int k = 0; k < 20_000; k++) {
                double x = chance.nextDouble() * 12;
                double y = chance.nextDouble() * 12;
                double out = Math.hypot(x - 6, y - 6);
                double room = Math.min(6 - out, out - 2.5);
                for (double[] c : circles) {
                    room = Math.min(room, Math.hypot(x - c[0], y - c[1]) - c[2]);
                }
                assertThat(room).isLessThan(0.25 + 2e-3);
            }
        }
    }

    /** Rounds a spacing apart: the line is as long as the area divided by the spacing, as for parallel lines (computed). */
    @Test
    void spirals_and_matchsticks_take_the_area_divided_by_their_spacing() {
        Region bed = Region.rectangle(new Box(0, 0, 60, 72));
        double spiral = Fills.spiral(bed, Point.of(30, 36), Length.inches(1)).stream().mapToDouble(Path::length).sum();
        assertThat(spiral).isCloseTo(60 * 72, within(60 * 72 * 0.01));
        double sticks = Fills.matchsticks(bed, Length.inches(1), Angle.ZERO, 9).stream().mapToDouble(Path::length).sum();
        assertThat(sticks).isCloseTo(60 * 72, within(60 * 72 * 0.02));
        assertThat(Gap.largest(bed, Fills.matchsticks(bed, Length.inches(1), Angle.QUARTER, 9)).diameter()).isLessThan(1.5);
        assertThat(Gap.largest(bed, Fills.spiral(bed, Point.of(30, 36), Length.inches(1))).diameter()).isLessThan(1.05);
        assertThat(Gap.largest(bed, Fills.quarterFans(bed, 6, Length.inches(1))).diameter()).isLessThan(1.3);
        assertThat(Fills.spiral(bed, Point.of(30, 36), Length.inches(4))).as("the middle is one line").anyMatch(p -> p.length() > 60 * Math.PI);
    }

    @Test
    void what_is_added_leaves_no_gap_wider_than_the_batting_allows() {
        QuiltingPlan plan = QuiltingPlan.on(Block.plain(org.calicograph.fabric.Role.LIGHT.standIn(), Length.inches(16), Length.inches(20)))
                .with("cross", Colour.BLACK, List.of(Path.through(Point.of(8, 0), Point.of(8, 20)), Path.through(Point.of(0, 10), Point.of(16, 10))));
        assertThat(plan.toAdd().rows()).hasSizeGreaterThan(3);
        QuiltingPlan full = plan.filledUp(Colour.BLACK);
        assertThat(full.gap().diameter()).isLessThanOrEqualTo(plan.batting().widestGap().inInches() + 0.02);
        assertThat(full.toAdd().rows()).isEmpty();
        assertThat(plan.density(Length.inches(4)).unevenness()).isGreaterThan(full.density(Length.inches(4)).unevenness());
    }

    @Test
    void lines_as_points_follow_the_route_and_stay_on_the_lines() {
        QuiltingPlan plan = QuiltingPlan.on(Block.plain(org.calicograph.fabric.Role.LIGHT.standIn(), Length.inches(12), Length.inches(12)))
                .with("rings", Colour.BLACK, List.of(Path.circle(Point.of(6, 6), 2), Path.circle(Point.of(6, 6), 4)));
        List<List<String>> rows = plan.points(Length.inches(1, 64)).rows().stream().map(r -> r.stream().map(e -> e.text()).toList()).toList();
        assertThat(rows).hasSizeGreaterThan(40);
        for (List<String> row : rows) {
            double out = Math.hypot(Double.parseDouble(row.get(3)) - 6, Double.parseDouble(row.get(4)) - 6);
            assertThat(Math.min(Math.abs(out - 2), Math.abs(out - 4))).isLessThan(1.0 / 64 + 1e-3);
        }
        assertThat(rows.stream().map(r -> r.get(1)).distinct()).hasSize(2);
    }

    @Test
    void a_sliver_in_the_middle_gets_no_round_of_its_own() {
        // 6 1/16 in high: the third round would be a loop 1/16 in high.
        Region bar = Region.rectangle(new Box(0, 0, 20, 6.0625));
        List<Path> rows = Echo.inside(bar, Length.inches(1));
        assertThat(rows).hasSize(2);
        assertThat(Gap.largest(bar, rows).diameter()).isLessThan(2.1);
        assertThat(Echo.outline(Region.rectangle(new Box(0, 0, 20, 2.0625)), Length.inches(1))).as("one that was asked for is drawn").hasSize(1);
    }

    @Test
    void fills_look_as_they_were_accepted() {
        List<Picture> parts = new ArrayList<>();
        for (List<Path> fill : fills(SHIELD)) {
            Picture one = Picture.group(Picture.of(SHIELD).outlined(Pen.of(Colour.hex("#8a857c"), 0.05)), new Picture.Shape(fill, Paint.NONE, Pen.of(Colour.hex("#24425c"), 0.06)));
            parts.add(one.moved(parts.size() * 13, 0));
        }
        Golden.picture("quilting/fills", Picture.group(parts).scaled(0.2));
        assertThatThrownBy(() -> Fills.pebbles(SHIELD, Length.inches(1), Length.inches(0.5), 1)).hasMessageContaining("smaller width first");
        assertThatThrownBy(() -> Fills.ribbons(SHIELD, Length.inches(1), Length.inches(2))).hasMessageContaining("longer than wide");
    }
}
