package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Tiling;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.SvgPathData;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.stitching.Lockstitch;
import org.calicograph.stitching.Marking;
import org.calicograph.stitching.Route;
import org.calicograph.stitching.Sewing;
import org.calicograph.stitching.Throat;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class DesignsTest {

    private static final Region SHIELD = Region.polygon(Point.of(0, 0), Point.of(12, 0), Point.of(12, 9), Point.of(6, 12), Point.of(0, 9));

    /** Lines d apart over W x L take about W L / d, level or aslant: 60 x 72 at 2 in, 2160 in; rings pi R^2 / d (area divided by spacing; computed). */
    @Test
    void parallel_lines_take_the_area_divided_by_their_spacing() {
        Region bed = Region.rectangle(new Box(0, 0, 60, 72));
        assertThat(length(Lines.parallel(bed, Length.inches(2), Angle.ZERO))).isCloseTo(2160, within(1e-6));
        assertThat(length(Lines.parallel(bed, Length.inches(2), Angle.degrees(45)))).isCloseTo(2160, within(2160 * 0.01));
        assertThat(length(Lines.rings(Region.of(Path.circle(Point.ORIGIN, 10)), Point.ORIGIN, Length.inches(1))))
                .isCloseTo(2 * Math.PI * 45, within(1e-6)); // nine rings within; pi R^2 / d = 314 counts half the edge
    }

    @Test
    void every_design_stays_in_its_region() {
        List<List<Path>> designs = List.of(Lines.grid(SHIELD, Length.inches(1)), Lines.diagonalGrid(SHIELD, Length.inches(1)),
                Lines.hangingDiamonds(SHIELD, Length.inches(1)), Lines.fans(SHIELD, 5, Length.inches(0.6)),
                Lines.clamshells(SHIELD, Length.inches(1.5)), Lines.rays(SHIELD, Point.of(6, 5), 24, Angle.ZERO, Length.inches(1)),
                Echo.inside(SHIELD, Length.inches(0.5)), Echo.around(Region.of(Path.circle(Point.of(6, 5), 2)), SHIELD, Length.inches(1), 50));
        Geometry grown = Polygons.of(SHIELD, 1e-4).buffer(1e-4);
        for (List<Path> design : designs) {
            assertThat(design).isNotEmpty();
            for (Path p : design) {
                assertThat(grown.covers(Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-4))))).isTrue();
            }
        }
    }

    @Test
    void fans_and_clamshells_are_arcs_and_leave_no_wide_gap() {
        assertThat(Lines.fans(SHIELD, 5, Length.inches(0.6))).allMatch(p -> p.segments().stream().allMatch(Arc.class::isInstance));
        // Between arcs 0.6 in; at the root of a fan and where fans meet a little more.
        assertThat(Gap.largest(SHIELD, Lines.fans(SHIELD, 5, Length.inches(0.6))).diameter()).isLessThan(0.9);
        Region wide = Region.rectangle(new Box(0, 0, 12, 12));
        assertThat(Gap.largest(wide, Lines.clamshells(wide, Length.inches(1.5))).diameter()).isBetween(1.5, 2.0);
    }

    @Test
    void a_feather_turns_every_corner_and_stays_in_its_border() {
        Box box = new Box(0, 0, 40, 50);
        List<Path> feather = new Feather(Length.inches(2.2), Length.inches(0.8)).inBorder(box, Length.inches(5));
        Region border = new Region(Path.rectangle(box), List.of(Path.rectangle(box.grownBy(-5))));
        Geometry ground = Polygons.of(border, 1e-4).buffer(0.01);
        for (Path p : feather) {
            assertThat(ground.covers(Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-3))))).isTrue();
        }
        // The spine, and on each side as many ribs as caps: whole lobes all round.
        assertThat((feather.size() - 1) % 4).isZero();
        assertThat(Route.over(feather).starts()).isEqualTo(1);
    }

    @Test
    void round_a_corner_a_feather_keeps_the_spacing_of_its_lobes_on_both_sides() {
        Box box = new Box(0, 0, 40, 40);
        List<Path> feather = new Feather(Length.inches(3.4), Length.inches(1.25)).inBorder(box, Length.inches(8));
        Path spine = feather.get(0);
        Geometry stem = Polygons.FACTORY.createLineString(Polygons.coordinates(spine.flattened(1e-3)));
        // Ribs begin on the spine; the caps between their tops do not.
        List<Path> caps = feather.stream().skip(1).filter(p -> stem.distance(Polygons.FACTORY.createPoint(Polygons.coordinates(List.of(p.start()))[0])) > 0.5).toList();
        assertThat(caps).hasSizeGreaterThan(100);
        assertThat(caps).allSatisfy(c -> assertThat(c.start().distance(c.end())).isBetween(0.7 * 1.25, 1.45 * 1.25));
    }

    @Test
    void a_feather_that_can_not_turn_says_what_would() {
        assertThatThrownBy(() -> new Feather(Length.inches(3), Length.inches(1)).inBorder(new Box(0, 0, 40, 40), Length.inches(5)))
                .hasMessageContaining("3 in high").hasMessageContaining("at most 2 3/8 in");
        assertThatThrownBy(() -> new Feather(Length.inches(3), Length.inches(1)).wreath(Point.ORIGIN, Length.inches(2)))
                .hasMessageContaining("radius of 2 in");
        assertThatThrownBy(() -> Spine.along(Path.through(Point.of(0, 0), Point.of(4, 0), Point.of(4, 4))))
                .hasMessageContaining("90°").hasMessageContaining("round that corner");
    }

    @Test
    void bending_along_a_straight_spine_changes_nothing_and_along_a_circle_keeps_distances() {
        Path wave = Path.from(0, 0).curveTo(Point.of(1, 2), Point.of(2, -2), Point.of(3, 0.5)).open();
        Path same = Spine.along(Path.through(Point.of(0, 0), Point.of(9, 0))).bent(wave);
        assertThat(same.end().near(wave.end(), 1e-12)).isTrue();
        assertThat(same.length()).isCloseTo(wave.length(), within(1e-6));
        Spine circle = Spine.along(Path.circle(Point.ORIGIN, 5));
        Path level = circle.bent(Path.through(Point.of(0, 1), Point.of(10, 1)));
        for (Point p : level.flattened(1e-3)) {
            assertThat(p.norm()).isCloseTo(4, within(1e-3)); // clockwise: the right lies inside
        }
    }

    @Test
    void motifs_along_a_border_come_out_whole_and_turn_the_corner() {
        Motif leaf = Motif.of("leaf", Path.from(-1, 0).curveTo(Point.of(-0.3, -1), Point.of(0.3, -1), Point.of(1, 0))
                .curveTo(Point.of(0.3, 1), Point.of(-0.3, 1), Point.of(-1, 0)).open());
        Box box = new Box(0, 0, 31, 43);
        List<Path> all = leaf.inBorder(box, Length.inches(4), leaf.turned(Angle.degrees(45)));
        int across = (int) Math.round((31 - 8) / leaf.bounds().width());
        int down = (int) Math.round((43 - 8) / leaf.bounds().width());
        assertThat(all).hasSize(2 * across + 2 * down + 4);
        Box top = all.get(0).bounds();
        assertThat(top.left()).isCloseTo(4, within(1e-9)); // begins where the corner ends
        assertThat(leaf.along(Spine.around(box.grownBy(-2), 3))).allMatch(Path::isClosed);
    }

    /**
     * Published: C = 2 + 2 T S for stitch class 301 (textile-trade tables): 2.640 at T 0.04, S 8; 2.960 at
     * 0.04, 12; 3.600 at 0.08, 10; 3.920 at 0.12, 8; 4.880 at 0.12, 12; 6.000 at 0.2, 10. A needlework
     * industry table gives 2.5 in of thread for an inch of class 301 seam: 550 cm for 220 cm.
     */
    @Test
    void thread_follows_the_published_lockstitch_ratios() {
        double[][] rows = {{0.04, 8, 2.640}, {0.04, 12, 2.960}, {0.08, 10, 3.600}, {0.12, 8, 3.920}, {0.12, 12, 4.880}, {0.2, 10, 6.000}};
        for (double[] row : rows) {
            assertThat(Lockstitch.ofStitches(row[1], Length.inches(row[0])).perInch()).isCloseTo(row[2], within(1e-5));
        }
        Lockstitch seam = new Lockstitch(Length.inches(0.1), Length.inches(0.025), Length.ZERO);
        assertThat(seam.needed(Length.cm(220).inInches(), 1).ratioTo(Length.cm(550))).isCloseTo(1, within(1e-6));
        assertThat(seam.bobbins(Length.yards(100), Length.yards(20))).isEqualTo(3);
        // 25.4 / 2.5 = 10.16 stitches to the inch (conversion).
        assertThat(Lockstitch.MACHINE.stitchesPerInch()).isCloseTo(10.16, within(1e-9));
    }

    /**
     * Hand quilting: 6 stitches to the inch is average, 8 accomplished, 10 expert, 12 professional; machine: 8 to 12, 2.5 to 3 mm
     * (a longarm maker's articles of 2012, and two pattern sites). A stitch of 25.4 / 12 = 2.11 mm makes 12 to the inch.
     * Ranges of batting, in inches: wool 3, 80/20 2 to 3, polyester 2 to 3, needled cotton with scrim 8 to 12,
     * unknown 1 to 2 (a pattern site reading packages; a quilter's chart of 2020; a sewing teacher).
     */
    @Test
    void stitches_and_battings_lie_in_the_published_ranges() {
        assertThat(((Sewing.ByHand) Sewing.HAND).toTheInch()).isBetween(6.0, 12.0);
        assertThat(Lockstitch.MACHINE.stitchesPerInch()).isBetween(8.0, 12.0);
        assertThat(Lockstitch.ofStitches(12, Length.inches(0.08)).stitch().ratioTo(Length.mm(2.11))).isCloseTo(1, within(0.005));
        assertThat(new Lockstitch(Length.mm(2), Length.inches(0.08), Length.ZERO).stitchesPerInch()).isCloseTo(12.7, within(1e-9));
        assertThat(Batting.WOOL.widestGap().inInches()).isEqualTo(3);
        assertThat(Batting.COTTON_POLYESTER.widestGap().inInches()).isBetween(2.0, 3.0);
        assertThat(Batting.POLYESTER.widestGap().inInches()).isBetween(2.0, 3.0);
        assertThat(Batting.COTTON_WITH_SCRIM.widestGap().inInches()).isBetween(8.0, 12.0);
        assertThat(Batting.UNKNOWN.widestGap().inInches()).isBetween(1.0, 2.0);
    }

    @Test
    void a_route_covers_every_line_and_is_sewn_without_lifting() {
        List<Path> grid = Lines.diagonalGrid(SHIELD, Length.inches(1));
        Route route = Route.over(grid);
        double once = route.runs().stream().flatMap(r -> r.passes().stream()).filter(p -> p.kind() == Route.Kind.NEW).mapToDouble(p -> p.line().length()).sum();
        assertThat(once).isCloseTo(length(grid), within(1e-3));
        assertThat(route.exact()).isTrue();
        for (Path p : route.paths()) {
            assertThat(p.length()).isPositive(); // Path itself refuses a jump
        }
        // Lent the edge of the region, the grid becomes one run.
        Route lent = Route.over(grid, SHIELD.paths(), Point.ORIGIN);
        assertThat(lent.starts()).isEqualTo(1);
        assertThat(lent.length()).isGreaterThanOrEqualTo(lent.bound() - 1e-9);
    }

    /** The four sides and both diagonals of a square: straight on at the middle, never a sharp turn there. */
    @Test
    void a_route_goes_straight_on_where_lines_cross() {
        List<Path> cross = List.of(Path.through(Point.of(0, 0), Point.of(4, 4)), Path.through(Point.of(0, 4), Point.of(4, 0)),
                Path.through(Point.of(0, 0), Point.of(4, 0)), Path.through(Point.of(0, 4), Point.of(4, 4)));
        Route route = Route.over(cross);
        assertThat(route.starts()).isEqualTo(1);
        assertThat(route.retraced()).isZero();
        List<Route.Pass> passes = route.runs().get(0).passes();
        for (int i = 1; i < passes.size(); i++) {
            if (passes.get(i).line().from().near(Point.of(2, 2), 1e-9)) {
                Point u = passes.get(i - 1).line().heading(1).unit();
                assertThat(u.dot(passes.get(i).line().heading(0).unit())).isCloseTo(1, within(1e-9));
            }
        }
    }

    @Test
    void a_small_throat_refuses_the_middle_of_a_large_quilt() {
        Region bed = Region.rectangle(new Box(0, 0, 90, 108));
        Route middle = Route.over(List.of(Path.through(Point.of(45, 0), Point.of(45, 108))));
        Throat small = new Throat(Length.inches(4), Length.inches(0.4), false);
        assertThat(small.tight(middle, bed)).hasSize(1);
        assertThat(small.widest().inInches()).isCloseTo(Math.PI * 4 / 0.4, within(1e-6));
        assertThat(new Throat(Length.inches(9), Length.inches(0.4), false).tight(middle, bed)).isEmpty();
        // Round a circle the quilt turns once with the line; in free motion it keeps one way up.
        Route ring = Route.over(List.of(Path.circle(Point.of(20, 20), 5)));
        assertThat(small.turns(ring)).isCloseTo(1, within(1e-6));
        assertThat(new Throat(Length.inches(4), Length.inches(0.4), true).turns(ring)).isZero();
    }

    @Test
    void pounce_holes_lie_on_the_line_and_no_farther_apart_than_asked() {
        Path circle = Path.circle(Point.of(2, 2), 1.5);
        List<Point> holes = Marking.pricks(circle, Length.inches(1, 8));
        for (int i = 1; i < holes.size(); i++) {
            assertThat(holes.get(i).distance(Point.of(2, 2))).isCloseTo(1.5, within(1e-9));
            assertThat(holes.get(i).distance(holes.get(i - 1))).isLessThanOrEqualTo(0.125 + 1e-9);
        }
        assertThat(Marking.pounce("Ring", List.of(circle), Length.inches(1, 8), Tiling.on(Paper.A4))).hasSize(2);
        assertThat(Marking.stencil("Ring", List.of(circle), Tiling.on(Paper.LETTER).mirrored(true))).hasSize(2);
    }

    @Test
    void machine_svg_read_by_an_xml_parser_is_the_route_element_by_element() throws Exception {
        List<Path> lines = new java.util.ArrayList<>(Lines.diagonalGrid(SHIELD, Length.inches(2)));
        lines.addAll(List.of(Path.circle(Point.of(20, 2), 1), Path.circle(Point.of(26, 2), 1), Path.circle(Point.of(23, 2), 1)));
        Route route = Route.over(lines);
        var factory = javax.xml.parsers.DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        var document = factory.newDocumentBuilder().parse(new org.xml.sax.InputSource(new java.io.StringReader(Marking.machineSvg(route))));
        var elements = document.getElementsByTagName("path");
        assertThat(elements.getLength()).isEqualTo(route.starts());
        for (int i = 0; i < elements.getLength(); i++) {
            List<Path> read = SvgPathData.read(((org.w3c.dom.Element) elements.item(i)).getAttribute("d"));
            assertThat(read).as("one unbroken line in element %d", i).hasSize(1);
            Path sewn = route.paths().get(i);
            assertThat(read.get(0).length()).isCloseTo(sewn.length(), within(1e-3 * sewn.segments().size()));
            assertThat(read.get(0).start().near(sewn.start(), 1e-3)).isTrue();
            assertThat(read.get(0).end().near(sewn.end(), 1e-3)).isTrue();
            Point here = read.get(0).start();
            for (var s : read.get(0).segments()) {
                assertThat(s.from().near(here, 1e-6)).isTrue();
                here = s.to();
            }
        }
        // One inch is one unit, and the sheet's size says so.
        assertThat(document.getDocumentElement().getAttribute("width")).endsWith("in");
    }

    @Test
    void density_adds_up_to_the_length_of_the_lines() {
        List<Path> lines = Lines.diagonalGrid(SHIELD, Length.inches(1));
        Density density = Density.of(SHIELD, lines, 1.5);
        double sum = density.inches().stream().flatMap(List::stream).mapToDouble(d -> d * 1.5 * 1.5).sum();
        assertThat(sum).isCloseTo(length(lines), within(1e-6));
    }

    private static double length(List<Path> paths) {
        return paths.stream().mapToDouble(Path::length).sum();
    }

}
