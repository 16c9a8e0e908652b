package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Trim;

/**
 * The strands of a {@link Cable}, followed over the nodes of a lattice: columns along the band, rows across it. Strands run in
 * the diagonals from node to node, turn back at the edges of the band, and cross everywhere between; nodes whose column and row
 * add up to an even number are empty. Over and under is a matter of the node alone: in even columns the strand that
 * comes down goes over, in odd ones the strand that goes up, and so each goes over and under by turns.
 */
final class Plait {

    /** How far a curve runs on level before it turns into the diagonal, of a cell, and how far it holds the diagonal. */
    private static final double LEVEL = 0.55;
    private static final double SLANT = 0.42;
    private static final double ROUND = 0.5523;

    private final int rows;
    private final Spine spine;
    private final boolean closed;
    private final double[] columns;
    /** How deep the band is on its right, at each column: less than 1 where it bends to the right and has less room. */
    private final double[] depths;
    private final double top;
    private final double row;
    private final double half;

    /** A node of a strand on its way: the direction in which it leaves. */
    private record Step(int column, int row, int along, int down) { }

    /** A strand from one node to the next, as it lies on the quilt. */
    private record Link(Step from, Cubic curve) { }

    Plait(Cable cable, Spine spine, double[] steps, double[] depths) {
        this.depths = depths;
        this.rows = cable.strands();
        this.spine = spine;
        this.closed = spine.isClosed();
        this.half = cable.rope().inInches() / 2;
        this.columns = new double[steps.length + 1];
        for (int i = 0; i < steps.length; i++) {
            columns[i + 1] = columns[i] + steps[i];
        }
        this.row = (cable.height().inInches() - 2 * half) / rows;
        this.top = -row * rows / 2;
    }

    List<Path> lines() {
        List<List<Link>> strands = strands();
        List<Path> lines = new ArrayList<>();
        if (half == 0) {
            for (List<Link> strand : strands) {
                lines.add(new Path(strand.stream().map(k -> (Segment) k.curve()).toList()));
            }
            return List.copyOf(lines);
        }
        java.util.Map<List<Integer>, Trim> over = over(strands);
        for (List<Link> strand : strands) {
            for (int side = -1; side <= 1; side += 2) {
                lines.addAll(roped(strand, side, over));
            }
        }
        return List.copyOf(lines);
    }

    // --- following the strands

    private int last() {
        return columns.length - 1;
    }

    private List<List<Link>> strands() {
        Set<List<Integer>> seen = new HashSet<>();
        List<List<Link>> strands = new ArrayList<>();
        for (int column = 0; column < last(); column++) {
            for (int r = (column + 1) % 2; r <= rows; r += 2) {
                for (int down = -1; down <= 1; down += 2) {
                    if (r + down >= 0 && r + down <= rows && !seen.contains(diagonal(new Step(column, r, 1, down)))) {
                        strands.add(strand(new Step(column, r, 1, down), seen));
                    }
                }
            }
        }
        return strands;
    }

    /** The same for both ways of going along it. */
    private static List<Integer> diagonal(Step s) {
        return List.of(Math.min(s.column(), s.column() + s.along()), Math.min(s.row(), s.row() + s.down()), s.along() * s.down());
    }

    private List<Link> strand(Step first, Set<List<Integer>> seen) {
        List<Link> links = new ArrayList<>();
        Point begin = curve(first).from();
        Point here = begin;
        Step step = first;
        do {
            seen.add(diagonal(step));
            Step next = next(step);
            Cubic curve = curve(step);
            // Two strands cross in one point, and a strand that comes round closes exactly.
            curve = curve.withEnds(here, next.equals(first) ? begin : curve.to());
            links.add(new Link(step, curve));
            here = curve.to();
            step = next;
        } while (!step.equals(first));
        return links;
    }

    /** Where the strand goes on from the far end of a step. */
    private Step next(Step s) {
        int column = s.column() + s.along();
        int r = s.row() + s.down();
        int down = isEdge(r) ? -s.down() : s.down();
        if (closed) {
            column = Math.floorMod(column, last());
            return new Step(s.along() < 0 && column == 0 ? last() : s.along() > 0 && column == last() ? 0 : column, r, s.along(), down);
        }
        return new Step(column, r, isEnd(column) ? -s.along() : s.along(), down);
    }

    // --- drawing them

    private Cubic curve(Step s) {
        if (s.along() < 0) {
            return curve(new Step(s.column() - 1, s.row() + s.down(), 1, -s.down())).reversed();
        }
        Point from = place(s.column(), s.row());
        Point to = place(s.column() + 1, s.row() + s.down());
        return new Cubic(from, from.plus(handle(s.column(), s.row(), s, true)), to.minus(handle(s.column() + 1, s.row() + s.down(), s, false)), to);
    }

    private Point place(int column, int r) {
        return spine.at(columns[column], height(column, r));
    }

    /** A step beside the spine at a node, as it lies on the quilt; where the spine begins to bend otherwise, halfway between both. */
    private Point carried(int column, int r, double along, double across) {
        double x = columns[column];
        double near = 1e-3 * Math.min(spine.length() / columns.length, 1);
        double bend = (spine.curvatureAt(x - near) + spine.curvatureAt(x + near)) / 2;
        Point u = spine.heading(x);
        return u.times(along * (1 - height(column, r) * bend)).plus(u.quarterTurned().times(across));
    }

    private double height(int column, int r) {
        double y = top + r * row;
        return y > 0 ? y * depths[column] : y;
    }

    /** How a strand leaves a node (or comes to it), towards the far end of the step (or away from its near end). */
    private Point handle(int column, int r, Step s, boolean leaves) {
        boolean meetsEnd = isEnd(leaves ? column + 1 : column - 1);
        boolean meetsEdge = isEdge(leaves ? r + s.down() : r - s.down());
        if (isEnd(column)) {
            return carried(column, r, 0, s.down() * row * (meetsEdge ? ROUND : LEVEL));
        }
        if (isEdge(r)) {
            return carried(column, r, pace(column) * (meetsEnd ? ROUND : LEVEL), 0);
        }
        double across = (height(column, r + 1) - height(column, r - 1)) / 2;
        double reach = meetsEdge || meetsEnd ? SLANT : 1 / 3.0;
        return carried(column, r, reach * pace(column), reach * s.down() * across);
    }

    private boolean isEnd(int column) {
        return !closed && (column == 0 || column == last());
    }

    private boolean isEdge(int r) {
        return r == 0 || r == rows;
    }

    /** The length of a cell at a node, between those before and after it: so that a strand runs on without a bend where cells change. */
    private double pace(int column) {
        double after = columns[column % last() + 1] - columns[column % last()];
        double before = column == 0 ? closed ? columns[last()] - columns[last() - 1] : after : columns[column] - columns[column - 1];
        return column == last() && !closed ? before : (before + after) / 2;
    }

    // --- strands of two lines

    private boolean isCrossing(int column, int r) {
        return !isEdge(r) && !isEnd(column);
    }

    private static boolean isOver(Step leaving) {
        return leaving.column() % 2 == 0 == (leaving.along() * leaving.down() > 0);
    }

    private List<Integer> node(Step s) {
        return List.of(closed ? s.column() % last() : s.column(), s.row());
    }

    /** For each crossing what is hidden under the strand that goes over it. */
    private java.util.Map<List<Integer>, Trim> over(List<List<Link>> strands) {
        java.util.Map<List<Integer>, Trim> over = new java.util.HashMap<>();
        for (List<Link> strand : strands) {
            for (int k = 0; k < strand.size(); k++) {
                Link after = strand.get(k);
                if (!isCrossing(after.from().column(), after.from().row()) || !isOver(after.from())) {
                    continue;
                }
                Link before = strand.get((k + strand.size() - 1) % strand.size());
                List<Segment> way = new ArrayList<>(List.of(before.curve().between(0.4, 1), after.curve().between(0, 0.6)));
                Spine local = Spine.along(new Path(way));
                List<Segment> outline = new ArrayList<>(local.beside(half).segments());
                List<Segment> back = local.beside(-half).reversed().segments();
                outline.add(new Line(outline.get(outline.size() - 1).to(), back.get(0).from()));
                outline.addAll(back);
                outline.add(new Line(outline.get(outline.size() - 1).to(), outline.get(0).from()));
                over.put(node(after.from()), Trim.within(Region.of(new Path(outline))));
            }
        }
        return over;
    }

    /** One line of a strand, in runs from where it comes out to where it goes under. */
    private List<Path> roped(List<Link> strand, int side, java.util.Map<List<Integer>, Trim> over) {
        int begin = 0;
        while (begin < strand.size() && !goesUnder(strand.get(begin).from())) {
            begin++;
        }
        if (begin == strand.size()) {
            return List.of(new Path(strand.stream().map(k -> (Segment) k.curve()).toList()));
        }
        List<Path> runs = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (int k = 0; k < strand.size(); k++) {
            Link link = strand.get((begin + k) % strand.size());
            Step next = strand.get((begin + k + 1) % strand.size()).from();
            List<Path> line = List.of(Spine.along(new Path(List.of(link.curve()))).beside(side * half));
            if (goesUnder(link.from())) {
                line = over.get(node(link.from())).outside(line);
            }
            if (goesUnder(next)) {
                line = over.get(node(next)).outside(line);
            }
            line.forEach(p -> run.addAll(p.segments()));
            if (goesUnder(next) && !run.isEmpty()) {
                runs.add(new Path(run));
                run.clear();
            }
        }
        return runs;
    }

    private boolean goesUnder(Step leaving) {
        return isCrossing(leaving.column(), leaving.row()) && !isOver(leaving);
    }
}
