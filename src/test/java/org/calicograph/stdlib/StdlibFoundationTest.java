package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.piecing.Foundation;
import org.calicograph.piecing.StripSets;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.seams.Sections;
import org.calicograph.seams.Unit;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

class StdlibFoundationTest {

    /** Common practice: a log cabin and a flying goose each need one foundation only. */
    @Test
    void a_log_cabin_is_pieced_on_one_foundation() {
        Foundation cabin = Foundation.of(block("LogCabin"));
        assertThat(cabin.sections()).hasSize(1);
        assertThat(cabin.sections().get(0).patches()).hasSize(block("LogCabin").patches().size());
    }

    /** Common practice: a nine patch is pieced in three rows, an Ohio Star in more. */
    @Test
    void a_block_that_one_foundation_cannot_do_is_split() {
        assertThat(Foundation.of(block("NinePatch")).sections()).hasSize(3);
        for (String name : List.of("OhioStar", "SawtoothStar", "Pinwheel", "BearsPaw")) {
            Foundation f = Foundation.of(block(name));
            assertThat(f.sections().stream().mapToInt(s -> s.patches().size()).sum()).as(name).isEqualTo(block(name).patches().size());
            for (Sections.Section s : f.sections()) {
                assertThat(s.patches().stream().map(Unit.Single::id)).as(name).doesNotHaveDuplicates();
            }
        }
    }

    /**
     * Every block's foundation is sewn on paper, by an independent reckoning with polygons: each patch meets what is there
     * along one straight line that is its own whole edge and the whole edge of what is there; and the sections join in the
     * same way until the block is whole.
     */
    @Test
    void every_foundation_can_be_sewn_each_step_along_one_whole_straight_edge() {
        int sewn = 0;
        List<String> faults = new ArrayList<>();
        for (String name : CompiledStdlib.names()) {
            if (Arrays.stream(CompiledStdlib.named(name).getMethods()).noneMatch(m -> m.getName().equals("block")
                    && List.of(m.getParameterTypes()).equals(List.of(Length.class)) && m.getReturnType() == Block.class)) {
                continue;
            }
            Block block = block(name);
            Foundation f;
            try {
                f = Foundation.of(block);
            } catch (IllegalArgumentException e) {
                assertThat(e).as(name).hasMessageContaining("a foundation can't hold a");
                continue;
            }
            sewn++;
            List<Geometry> sections = new ArrayList<>();
            for (Sections.Section s : f.sections()) {
                Geometry there = polygon(s.patches().get(0));
                for (Unit.Single next : s.patches().subList(1, s.patches().size())) {
                    Geometry patch = polygon(next);
                    if (!wholeEdge(there, patch)) {
                        faults.add(name + ": patch " + next.id());
                    }
                    there = union(there, patch);
                }
                sections.add(there);
            }
            join(sections);
            if (sections.size() > 1) {
                faults.add(name + ": " + sections.size() + " parts can't be joined");
            }
        }
        assertThat(faults).isEmpty();
        assertThat(sewn).isGreaterThan(30);
    }

    /** Joins whatever joins along whole edges, until nothing more does. */
    private static void join(List<Geometry> parts) {
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < parts.size() && !again; i++) {
                for (int j = i + 1; j < parts.size() && !again; j++) {
                    if (wholeEdge(parts.get(i), parts.get(j))) {
                        parts.set(i, union(parts.get(i), parts.remove(j)));
                        again = true;
                    }
                }
            }
        }
    }

    private static final GeometryFactory EXACT = new GeometryFactory(new PrecisionModel(1e6));

    private static Geometry polygon(Unit.Single single) {
        List<Point> corners = single.shape().outer().flattened(1e-4);
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < corners.size(); i++) {
            ring[i] = new Coordinate(corners.get(i).x(), corners.get(i).y());
        }
        ring[corners.size()] = ring[0].copy();
        return GeometryPrecisionReducer.reduce(EXACT.createPolygon(ring), EXACT.getPrecisionModel());
    }

    private static Geometry union(Geometry a, Geometry b) {
        return OverlayNG.overlay(a, b, OverlayNG.UNION, EXACT.getPrecisionModel());
    }

    /** The common border is one straight line, and no longer side of either lies on that line. */
    private static boolean wholeEdge(Geometry a, Geometry b) {
        Geometry shared = OverlayNG.overlay(a.getBoundary(), b.getBoundary(), OverlayNG.INTERSECTION, EXACT.getPrecisionModel());
        double length = shared.getLength();
        if (length < 1e-3) {
            return false;
        }
        // Straight, and in one piece: as long as the diagonal of its own box.
        double across = shared.getEnvelopeInternal().getDiameter();
        return Math.abs(length - across) < 1e-3 && Math.abs(onLine(a, shared) - length) < 1e-3 && Math.abs(onLine(b, shared) - length) < 1e-3;
    }

    /** How much of a shape's border lies on the line through a straight seam, near it. */
    private static double onLine(Geometry shape, Geometry seam) {
        Coordinate[] ends = seam.getCoordinates();
        Coordinate p = ends[0];
        Coordinate q = ends[0];
        for (Coordinate c : ends) {
            q = c.distance(p) > q.distance(p) ? c : q;
        }
        double sum = 0;
        Coordinate[] ring = shape.getBoundary().getCoordinates();
        for (int i = 0; i + 1 < ring.length; i++) {
            boolean on = Distance.pointToLinePerpendicular(ring[i], p, q) < 1e-3 && Distance.pointToLinePerpendicular(ring[i + 1], p, q) < 1e-3;
            sum += on ? ring[i].distance(ring[i + 1]) : 0;
        }
        return sum;
    }

    /** A foundation is mirrored: what lies left in the block lies right on the pattern, and the size stays. */
    @Test
    void the_pattern_keeps_the_size_of_the_block() {
        Foundation cabin = Foundation.of(block("LogCabin"));
        assertThat(cabin.pattern(0).bounds().width()).isCloseTo(12.5, within(0.02));
    }

    @Test
    void set_in_seams_are_refused_with_the_repair() {
        assertThatThrownBy(() -> Foundation.of(block("EightPointedStar")))
                .hasMessage("a foundation can't hold a set-in seam; piece this block without one, or redraft it with straight seams from edge to edge");
    }

    /** Common practice: a nine patch of 2 1/2 in cut squares comes from strip sets, 16 segments from 40 in. */
    @Test
    void nine_patches_come_from_strip_sets() {
        Block nine = (Block) CompiledStdlib.call(CompiledStdlib.named("NinePatch"), "block", Length.inches(6));
        var top = org.calicograph.setting.Setting.straight(4, 4).of(nine);
        StripSets sets = StripSets.of(top, CuttingRules.INCH);
        assertThat(sets.sets()).hasSize(2);
        assertThat(sets.sets().stream().mapToInt(StripSets.StripSet::times).sum()).isEqualTo(48);
        assertThat(sets.sets().get(0).perSet(CuttingRules.INCH)).isEqualTo(16);
        assertThat(sets.sets()).allMatch(s -> s.area(CuttingRules.INCH).squareInches() >= s.areaOfPatches().squareInches());
    }

    private static Block block(String name) {
        return (Block) CompiledStdlib.call(CompiledStdlib.named(name), "block", Length.inches(12));
    }
}
