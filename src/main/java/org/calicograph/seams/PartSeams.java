package org.calicograph.seams;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** Tells which earlier seam every partial seam completes, so that it is begun and left open at the right end. */
public final class PartSeams {

    private static final double TOUCH = 3 * Neighbours.TOUCH;

    private PartSeams() { }

    /** The unit with the seams that a later partial seam completes marked as begun. */
    static Unit marked(Unit unit) {
        Set<Unit.Sewn> begun = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Unit.Sewn> steps = unit.steps();
        for (Unit.Sewn s : steps) {
            if (s.kind() == SeamKind.PARTIAL) {
                completed(s, steps).ifPresent(begun::add);
            }
        }
        return begun.isEmpty() ? unit : rebuilt(unit, begun);
    }

    /** How many seams are neither straight nor begun; a partial one that completes none counts far more. */
    static int awkward(Unit unit) {
        int sum = 0;
        List<Unit.Sewn> steps = unit.steps();
        for (Unit.Sewn s : steps) {
            sum += s.kind() != SeamKind.PARTIAL ? 0 : completed(s, steps).isPresent() ? 1 : 100;
        }
        return sum;
    }

    private static Unit rebuilt(Unit unit, Set<Unit.Sewn> begun) {
        if (!(unit instanceof Unit.Sewn s)) {
            return unit;
        }
        return new Unit.Sewn(begun.contains(s) ? SeamKind.BEGUN : s.kind(), s.parts().stream().map(p -> rebuilt(p, begun)).toList(), s.seams());
    }

    /**
     * The step within the unit that a partial seam completes: its seam ends at the corner of the partial seam
     * and runs on from it in one line.
     */
    public static Optional<Unit.Sewn> completed(Unit.Sewn partial, Unit unit) {
        return completed(partial, unit.steps());
    }

    private static Optional<Unit.Sewn> completed(Unit.Sewn partial, List<Unit.Sewn> steps) {
        for (Unit.Sewn earlier : steps) {
            if (earlier == partial) {
                return Optional.empty();
            }
            for (List<Segment> seam : earlier.seams()) {
                if (earlier.kind() != SeamKind.PARTIAL && seam.size() == 1 && seam.get(0) instanceof Line begun
                        && openEnd(begun, partial).isPresent()) {
                    return Optional.of(earlier);
                }
            }
        }
        return Optional.empty();
    }

    /** The end of a seam at which a partial seam goes on from it; empty if it doesn't. */
    public static Optional<Point> openEnd(Line begun, Unit.Sewn partial) {
        List<Line> closing = new ArrayList<>();
        partial.seams().forEach(seam -> seam.stream().filter(Line.class::isInstance).map(Line.class::cast).forEach(closing::add));
        for (Line c : closing) {
            boolean oneLine = Math.abs(c.heading(0).unit().cross(begun.heading(0).unit())) < 1e-4;
            for (Point end : List.of(begun.from(), begun.to())) {
                if (oneLine && (c.from().near(end, TOUCH) || c.to().near(end, TOUCH))) {
                    return Optional.of(end);
                }
            }
        }
        return Optional.empty();
    }
}
