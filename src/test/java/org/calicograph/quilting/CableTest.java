package org.calicograph.quilting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Cables, against what plaitwork promises: found with a geometry library of its own from the drawn lines alone. */
class CableTest {

    private static final int MANY = Integer.getInteger("cables", 16);

    private static Geometry drawn(List<Path> lines) {
        return Polygons.FACTORY.createMultiLineString(lines.stream().map(p -> Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-3))))
                .toArray(LineString[]::new));
    }

    private static Spine level(double length) {
        return Spine.along(Path.through(org.calicograph.geometry.Point.ORIGIN, org.calicograph.geometry.Point.of(length, 0)));
    }

    /** Plaitwork on a panel of m by n cells has as many strands as the greatest number that divides both, all closed; common practice of knotwork. */
    @Test
    void a_closed_panel_has_as_many_strands_as_the_common_divisor_of_its_sides() {
        for (int strands = 2; strands <= 8; strands += 2) {
            for (int cells = 1; cells <= 12; cells++) {
                List<Path> lines = Cable.of(strands, Length.inches(strands)).along(level(2 * cells));
                assertTrue(lines.stream().allMatch(Path::isClosed), strands + " strands, " + cells + " cells: nothing ends loose");
                assertEquals(java.math.BigInteger.valueOf(cells).gcd(java.math.BigInteger.valueOf(strands / 2)).intValue(), lines.size(),
                        strands + " strands, " + cells + " cells");
            }
        }
    }

    @Test
    void a_line_across_the_band_cuts_every_strand_once() {
        Random chance = new Random(3);
        for (int n = 0; n < MANY; n++) {
            int strands = 2 + chance.nextInt(7);
            Geometry lines = drawn(Cable.of(strands, Length.inches(2)).pitch(Length.inches(0.6 + 2 * chance.nextDouble()))
                    .along(Spine.along(Path.circle(org.calicograph.geometry.Point.ORIGIN, 3 + 9 * chance.nextDouble()))));
            double angle = 2 * Math.PI * chance.nextDouble();
            LineString across = Polygons.FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0), new Coordinate(50 * Math.cos(angle), 50 * Math.sin(angle))});
            assertEquals(strands, lines.intersection(across).getNumPoints(), "case " + n + ", " + strands + " strands");
        }
    }

    @Test
    void in_a_border_every_corner_is_like_the_others_and_each_side_mirrored_at_its_middle() {
        Random chance = new Random(4);
        for (int n = 0; n < MANY / 2; n++) {
            double border = 2 + 6 * chance.nextDouble();
            double high = border * (0.4 + 0.45 * chance.nextDouble());
            double across = 4 * border + 60 * chance.nextDouble();
            Box box = new Box(0, 0, across, n % 2 == 0 ? across : 4 * border + 60 * chance.nextDouble());
            Cable cable = Cable.of(2 + chance.nextInt(4), Length.inches(high)).pitch(Length.inches(high * (0.5 + chance.nextDouble())));
            Geometry lines = drawn(cable.inBorder(box, Length.inches(border)));
            String what = "case " + n + ", " + cable + " in " + border + " round " + box;
            assertTrue(lines.getEnvelopeInternal().getMinX() > 0 && lines.getEnvelopeInternal().getMaxY() < box.bottom(), what);
            Geometry inner = Polygons.FACTORY.createLinearRing(Polygons.coordinates(Path.rectangle(box.grownBy(-border)).flattened(1)));
            assertTrue(!lines.intersects(inner), what + " comes out of the border");
            for (Transform t : List.of(new Transform(-1, 0, 0, 1, box.right(), 0), new Transform(1, 0, 0, -1, 0, box.bottom()))) {
                Geometry mirrored = drawn(cable.inBorder(box, Length.inches(border)).stream().map(p -> p.transformed(t)).toList());
                assertTrue(lines.buffer(0.01).covers(mirrored), what + " is not mirrored");
            }
            if (box.width() == box.height()) {
                Geometry folded = new org.locationtech.jts.geom.util.AffineTransformation(0, 1, 0, 1, 0, 0).transform(lines);
                assertTrue(lines.buffer(0.01).covers(folded), what + " leans in its corners");
            }
        }
    }

    /** Where two strands of two lines cross, the ones below end at the ones above, and along each strand over and under take turns. */
    @Test
    void ropes_go_over_and_under_by_turns_and_no_line_crosses_another() {
        Random chance = new Random(5);
        for (int n = 0; n < MANY / 2; n++) {
            int strands = 2 + chance.nextInt(5);
            boolean border = chance.nextBoolean();
            Cable cable = Cable.of(strands - (border ? 0 : strands % 2), Length.inches(2.5));
            cable = cable.pitch(cable.pitch().times(0.8 + chance.nextDouble()));
            cable = cable.roped(Length.inches(cable.pitch().inInches() * 0.14));
            List<Path> lines = border ? cable.inBorder(new Box(0, 0, 30 + 20 * chance.nextDouble(), 40), Length.inches(3.5)) : cable.along(level(7 + 9 * chance.nextDouble()));
            List<LineString> all = new ArrayList<>();
            for (Path p : lines) {
                all.add(Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(2e-4))));
            }
            STRtree tree = new STRtree();
            all.forEach(l -> tree.insert(l.getEnvelopeInternal(), l));
            for (LineString one : all) {
                for (Object each : tree.query(one.getEnvelopeInternal())) {
                    LineString other = (LineString) each;
                    if (one != other && one.intersects(other)) {
                        List<Point> ends = List.of(one.getStartPoint(), one.getEndPoint(), other.getStartPoint(), other.getEndPoint());
                        for (Coordinate c : one.intersection(other).getCoordinates()) {
                            assertTrue(ends.stream().anyMatch(e -> e.getCoordinate().distance(c) < 0.01), "case " + n + ", " + cable + ": two lines cross at " + c);
                        }
                    }
                }
            }
            // Every end lies on some other line, or on its own line further on: nothing ends in the open.
            for (LineString one : all) {
                for (LineString way : one.isClosed() ? List.<LineString>of() : List.of(one, one.reverse())) {
                    Point end = way.getStartPoint();
                    Geometry further = new LengthIndexedLine(way).extractLine(0.3, way.getLength());
                    org.locationtech.jts.geom.Envelope round = end.getEnvelopeInternal();
                    round.expandBy(0.01);
                    List<?> near = tree.query(round);
                    assertTrue(near.stream().anyMatch(o -> (o == one ? further : (Geometry) o).distance(end) < 0.01), "case " + n + ", " + cable + ": a line ends in the open at " + end);
                }
            }
        }
    }

    @Test
    void what_cannot_be_plaited_is_refused_with_the_repair() {
        assertEquals("a cable of 3 strands along an open line would leave one of them loose at its end; use 2 or 4 strands, or a closed line",
                assertThrows(IllegalArgumentException.class, () -> Cable.of(3, Length.inches(2)).along(level(10))).getMessage());
        assertEquals("a cable 3 in high can't turn the corner of a border 3 in wide; make it at most 2 9/16 in high",
                assertThrows(IllegalArgumentException.class, () -> Cable.of(2, Length.inches(3)).inBorder(new Box(0, 0, 40, 40), Length.inches(3))).getMessage());
        Cable.of(2, Length.inches(2.5625)).inBorder(new Box(0, 0, 40, 40), Length.inches(3));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Cable.of(2, Length.inches(2)).roped(Length.inches(1))).getMessage().contains("at most 9/16 in wide"));
        Cable.of(2, Length.inches(2)).roped(Length.inches(9, 16));
    }
}
