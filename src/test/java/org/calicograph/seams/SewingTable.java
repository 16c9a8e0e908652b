package org.calicograph.seams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Sews a tree in simulation. Every join is made edge to edge along lines that both parts have; a set-in seam goes
 * in its parts from corner to corner, the pivot a bay of the one part that a corner of the other fills; a part
 * seam stays open until the partial seam that completes it. In the end every seam has been sewn once.
 */
public final class SewingTable {

    private static final double TOUCH = 5e-3;
    private static final double HAIR = 1e-3;

    private final Unit whole;
    private final List<Segment> sewn = new ArrayList<>();
    /** Part seams that wait to be completed, and what is left of each to sew. */
    private final Map<Unit.Sewn, Line> open = new IdentityHashMap<>();

    private SewingTable(Unit whole) {
        this.whole = whole;
    }

    /** What the unit's patches make when they have been sewn together. */
    public static Geometry sew(Unit unit) {
        SewingTable table = new SewingTable(unit);
        Geometry made = table.made(unit);
        assertThat(table.open).as("part seams never completed").isEmpty();
        double edges = unit.singles().stream().mapToDouble(s -> polygon(s).getLength()).sum();
        double seams = table.sewn.stream().mapToDouble(Segment::length).sum();
        // Every edge of a patch lies at a seam, with another patch's beside it, or on the outside.
        assertThat(2 * seams + made.getLength()).as("edges of all patches").isCloseTo(edges, within(0.02 + 2e-4 * edges));
        table.nowhereTwice();
        return made;
    }

    private static Geometry polygon(Unit.Single single) {
        return Polygons.of(single.shape(), Region.ACCURACY);
    }

    private Geometry made(Unit unit) {
        if (unit instanceof Unit.Single single) {
            return polygon(single);
        }
        Unit.Sewn step = (Unit.Sewn) unit;
        Geometry done = made(step.parts().get(0));
        for (int i = 1; i < step.parts().size(); i++) {
            done = joined(step, step.seams().get(i - 1), done, made(step.parts().get(i)));
        }
        return done;
    }

    private Geometry joined(Unit.Sewn step, List<Segment> seam, Geometry done, Geometry next) {
        assertThat(seam).as("a seam between " + step.parts()).isNotEmpty();
        assertThat(Polygons.intersection(done, next).getArea()).as("overlap at the seam").isLessThan(0.01);
        for (Segment s : seam) {
            onEdge(s, done);
            onEdge(s, next);
        }
        switch (step.kind()) {
            case STRAIGHT -> {
                assertThat(isOneLine(seam)).as("one straight line: " + seam).isTrue();
                sewn.addAll(seam);
            }
            case BEGUN -> begun(step, seam);
            case CURVED -> {
                assertThat(seam).anyMatch(s -> !(s instanceof Line));
                sewn.addAll(seam);
            }
            case SET_IN -> setIn(seam, done, next);
            case PARTIAL -> partial(step, seam, done, next);
        }
        Geometry both = closed(Polygons.union(done, next));
        double length = seam.stream().mapToDouble(Segment::length).sum();
        // What two parts share is on neither's outside afterwards.
        assertThat(done.getLength() + next.getLength() - 2 * length).as("the seam is all that the two share")
                .isCloseTo(both.getLength(), within(0.02 * (1 + seam.size())));
        return both;
    }

    /** Without the hairs that are left between edges which agree to a few millionths. */
    private static Geometry closed(Geometry shape) {
        BufferParameters how = new BufferParameters(2, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);
        return BufferOp.bufferOp(BufferOp.bufferOp(shape, HAIR, how), -HAIR, how);
    }

    private static void onEdge(Segment s, Geometry part) {
        for (Point p : new Path(List.of(s)).flattened(1e-3)) {
            assertThat(part.getBoundary().distance(Polygons.point(p))).as("seam on the edge").isLessThan(TOUCH);
        }
    }

    /** Sewn from one end to the middle, the rest left open at the end where the partial seam comes to it. */
    private void begun(Unit.Sewn step, List<Segment> seam) {
        assertThat(seam).hasSize(1);
        Line line = (Line) seam.get(0);
        Unit.Sewn later = whole.steps().stream().filter(s -> s.kind() == SeamKind.PARTIAL && PartSeams.completed(s, whole).filter(b -> b == step).isPresent())
                .findFirst().orElseThrow(() -> new AssertionError("nothing completes the part seam " + line));
        Point end = PartSeams.openEnd(line, later).orElseThrow();
        Point start = end.near(line.from(), TOUCH) ? line.to() : line.from();
        sewn.add(new Line(start, line.middle()));
        open.put(step, new Line(line.middle(), end));
    }

    private void partial(Unit.Sewn step, List<Segment> seam, Geometry done, Geometry next) {
        PartSeams.completed(step, whole).filter(open::containsKey).ifPresentOrElse(begun -> {
            Line rest = open.remove(begun);
            assertThat(seam).as("runs on along the seam that was begun").anyMatch(s -> s instanceof Line l
                    && (l.from().near(rest.to(), 2 * TOUCH) || l.to().near(rest.to(), 2 * TOUCH))
                    && Math.abs(l.heading(0).unit().cross(rest.heading(0).unit())) < 1e-3);
            sewn.addAll(seam);
            sewn.add(rest);
        }, () -> setIn(seam, done, next));
    }

    /** One part of the seam after another; between two that meet the needle stays down in the corner, and the cloth turns. */
    private void setIn(List<Segment> seam, Geometry done, Geometry next) {
        assertThat(seam.size()).as("turns a corner").isGreaterThan(1);
        for (int i = 0; i < seam.size(); i++) {
            for (int j = i + 1; j < seam.size(); j++) {
                for (Point p : List.of(seam.get(i).from(), seam.get(i).to())) {
                    if (seam.get(j).from().near(p, TOUCH) || seam.get(j).to().near(p, TOUCH)) {
                        double one = share(p, done);
                        double other = share(p, next);
                        assertThat(one + other).as("the corner fills the bay at " + p).isCloseTo(1, within(0.02));
                    }
                }
            }
        }
        sewn.addAll(seam);
    }

    /** How much of a small disc about a point the part takes. */
    private static double share(Point p, Geometry part) {
        Geometry disc = Polygons.point(p).buffer(0.05, 32);
        return Polygons.intersection(disc, part).getArea() / disc.getArea();
    }

    private void nowhereTwice() {
        for (int i = 0; i < sewn.size(); i++) {
            Point m = sewn.get(i).middle();
            for (int j = 0; j < sewn.size(); j++) {
                if (i != j && sewn.get(i) instanceof Line && sewn.get(j) instanceof Line l) {
                    double along = m.minus(l.from()).dot(l.heading(0).unit());
                    boolean on = Math.abs(m.minus(l.from()).cross(l.heading(0).unit())) < TOUCH && along > TOUCH && along < l.length() - TOUCH;
                    assertThat(on && Math.abs(l.heading(0).unit().cross(sewn.get(i).heading(0).unit())) < 1e-3)
                            .as("sewn twice: " + sewn.get(i) + " and " + l).isFalse();
                }
            }
        }
    }

    private static boolean isOneLine(List<Segment> seam) {
        Point from = seam.get(0).from();
        Point u = seam.get(0).heading(0).unit();
        return seam.stream().allMatch(s -> s instanceof Line && Math.abs(s.from().minus(from).cross(u)) < TOUCH
                && Math.abs(s.to().minus(from).cross(u)) < TOUCH);
    }
}
