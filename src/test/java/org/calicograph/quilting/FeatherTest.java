package org.calicograph.quilting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** How many random feathers are tried: the property {@code feathers}, or a few of each kind. */
class FeatherTest {

    private static final int MANY = Integer.getInteger("feathers", 25);

    private static LineString line(Path path) {
        return Polygons.FACTORY.createLineString(Polygons.coordinates(path.flattened(2e-4)));
    }

    /** Two lines may meet where one of them ends; anywhere else they cross. Checked by a geometry library of its own, on lines within 0.0002 in. */
    private static void nothingCrosses(List<Path> feather, String what) {
        List<LineString> lines = feather.stream().map(FeatherTest::line).toList();
        STRtree tree = new STRtree();
        for (int i = 0; i < lines.size(); i++) {
            tree.insert(lines.get(i).getEnvelopeInternal(), i);
        }
        for (int i = 0; i < lines.size(); i++) {
            PreparedGeometry one = PreparedGeometryFactory.prepare(lines.get(i));
            for (Object each : tree.query(lines.get(i).getEnvelopeInternal())) {
                int j = (Integer) each;
                if (j <= i || !one.intersects(lines.get(j))) {
                    continue;
                }
                Geometry met = lines.get(i).intersection(lines.get(j));
                Geometry ends = Polygons.FACTORY.createMultiPoint(new org.locationtech.jts.geom.Point[] {lines.get(i).getStartPoint(), lines.get(i).getEndPoint(),
                    lines.get(j).getStartPoint(), lines.get(j).getEndPoint()}).buffer(0.012);
                assertTrue(ends.covers(met), what + ": lines " + i + " and " + j + " of " + lines.size() + " cross at " + met.difference(ends) + "; " + lines.get(i).getStartPoint() + " to " + lines.get(i).getEndPoint() + ", " + lines.get(j).getStartPoint() + " to " + lines.get(j).getEndPoint());
            }
        }
    }

    @Test
    void no_line_of_a_feather_in_a_border_crosses_another() {
        Random chance = new Random(18);
        for (int n = 0; n < MANY; n++) {
            double border = 3 + 9 * chance.nextDouble();
            double high = border * (0.25 + 0.2 * chance.nextDouble());
            double wide = high * (0.25 + 0.5 * chance.nextDouble());
            Box box = new Box(0, 0, border * 3 + 60 * chance.nextDouble(), border * 3 + 60 * chance.nextDouble());
            String what = "case " + n + ", lobes " + high + " x " + wide + " in a border of " + border + " round " + box;
            nothingCrosses(new Feather(Length.inches(high), Length.inches(wide)).doubled(Length.inches(chance.nextInt(2) * high / 10)).inBorder(box, Length.inches(border)), what);
        }
    }

    @Test
    void no_line_of_a_wreath_or_of_a_feather_along_a_bow_crosses_another() {
        Random chance = new Random(19);
        for (int n = 0; n < MANY; n++) {
            double high = 0.8 + 2 * chance.nextDouble();
            double wide = high * (0.25 + 0.5 * chance.nextDouble());
            Feather feather = new Feather(Length.inches(high), Length.inches(wide));
            nothingCrosses(feather.wreath(Point.ORIGIN, Length.inches(high * (1.3 + 3 * chance.nextDouble()))), "wreath " + n);
            double bend = Math.toRadians(30 + 120 * chance.nextDouble());
            double radius = high * (1.5 + 3 * chance.nextDouble());
            Path bow = Path.from(0, 0).arcTo(Point.of(2 * radius * Math.sin(bend / 2), 0), Math.tan(bend / 4))
                    .arcTo(Point.of(4 * radius * Math.sin(bend / 2), 0), -Math.tan(bend / 4)).open();
            nothingCrosses(feather.along(Spine.along(bow)), "bow " + n + ", " + high + " x " + wide + ", radius " + radius + ", bend " + bend);
        }
    }

    @Test
    void every_side_is_mirrored_at_its_middle_and_every_corner_is_like_the_others() {
        Box box = new Box(0, 0, 44, 60);
        List<Path> feather = new Feather(Length.inches(2.2), Length.inches(0.8)).inBorder(box, Length.inches(5));
        List<Point> starts = new ArrayList<>();
        feather.stream().skip(1).forEach(p -> starts.addAll(List.of(p.start(), p.end())));
        for (Transform mirror : List.of(new Transform(-1, 0, 0, 1, 44, 0), new Transform(1, 0, 0, -1, 0, 60))) {
            for (Point p : starts) {
                Point there = mirror.of(p);
                assertTrue(starts.stream().anyMatch(q -> q.near(there, 0.01)), "nothing mirrors " + p);
            }
        }
    }

    @Test
    void tips_are_as_round_as_half_a_circle_and_all_as_high_as_asked() {
        double high = 1.6;
        List<Path> wreath = new Feather(Length.inches(high), Length.inches(0.75)).wreath(Point.ORIGIN, Length.inches(4));
        List<Path> caps = wreath.stream().skip(1).filter(p -> Math.abs(p.start().norm() - 4) > 0.5).toList();
        assertTrue(caps.size() > 40);
        for (Path cap : caps) {
            double across = cap.start().distance(cap.end());
            // Half a circle is pi/2 times as long as it is wide.
            assertEquals(Math.PI / 2, cap.length() / across, 0.12);
            double reach = cap.flattened(1e-3).stream().mapToDouble(p -> Math.abs(p.norm() - 4)).max().orElseThrow();
            assertEquals(high, reach, 0.13);
        }
    }

    @Test
    void a_double_spine_that_leaves_no_room_is_refused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Feather(Length.inches(1), Length.inches(1, 2)).doubled(Length.inches(1))).getMessage().contains("bring the lines nearer"));
    }
}
