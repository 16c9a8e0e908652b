package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Print;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/** How a piece is cut: with a ruler and a rotary cutter, or by a template. */
public sealed interface CutMethod {

    /** The name of the shape. */
    String shape();

    /** The sizes to cut, as they are read out. */
    List<Dimension> dimensions();

    /** The step after the strip or blank is cut, in plain words. */
    String instruction();

    /** The rectangles that so many pieces are cut from, each at most as wide as the cloth. */
    List<Run> runs(int pieces, Length width);

    /** The cuts that part such a rectangle into pieces, from its left end in its own coordinates; none for a whole one. */
    default List<Line> cutsWithin(Run run) {
        return List.of();
    }

    /** What is drawn on such a rectangle, one of those for so many pieces: its cuts, or the outlines of templates. */
    default List<Path> drawnOn(Run run, int pieces, Length width) {
        return cutsWithin(run).stream().map(cut -> Path.through(cut.from(), cut.to())).toList();
    }

    /** How pieces lie on the strips that so many are cut from, where that is not said by the instruction. */
    default String lying(int pieces, Length width) {
        return "";
    }

    /**
     * The same from cloth whose print runs so. Of the triangles of a square only those serve that stand upright; a quick
     * method that would turn the print is refused, and each piece gets a rectangle of its own.
     *
     * @param standsSquare true if the sides of a rectangle run across and along the quilt
     * @param standing     the piece as it stands in the quilt, seam allowances on
     */
    default CutMethod running(Print.Direction way, boolean standsSquare, Nesting standing) {
        if (way == Print.Direction.ANY) {
            return this;
        }
        boolean one = way == Print.Direction.ONE_WAY;
        if (this instanceof Blanks b && b.pieces() > 1) {
            int serve = one ? 1 : 2;
            return b.pieces() == serve ? b : new Blanks(b.shape(), b.dimensions(), "Cut each square " + (b.pieces() == 2 ? "once" : "twice") + " corner to corner, the print upright: "
                    + (serve == 1 ? "one triangle of each square stands" : "two triangles of each square stand") + " as in the quilt; the others are left over.",
                    b.across(), b.along(), serve);
        }
        if (this instanceof Blanks b && b.pieces() == 1 && !standsSquare) {
            return new Template(b.shape(), List.of(), "the print must stand upright, and cut on the grain it would lean", standing.running(way));
        }
        if (this instanceof Strips) {
            return new Template(shape(), List.of(), "the print must stand upright, and strips would turn it", standing.running(way));
        }
        return this instanceof Template t ? new Template(t.shape(), t.dimensions(), t.reason(), t.nesting().running(way)) : this;
    }

    /**
     * A rectangle to cut from cloth.
     *
     * @param pieces how many pieces it gives
     */
    record Run(Length across, Length along, int pieces) { }

    /**
     * Rectangles that give a fixed number of pieces each: squares, rectangles, triangles from squares.
     *
     * @param pieces per rectangle
     */
    record Blanks(String shape, List<Dimension> dimensions, String instruction, Length across, Length along, int pieces)
            implements CutMethod {
        @Override
        public List<Run> runs(int wanted, Length width) {
            int blanks = (wanted + pieces - 1) / pieces;
            return java.util.Collections.nCopies(blanks, new Run(across, along, pieces));
        }

        @Override
        public List<Line> cutsWithin(Run run) {
            double w = run.across().inInches();
            double h = run.along().inInches();
            Line down = new Line(new Point(0, 0), new Point(w, h));
            return shape.equals("square") || shape.equals("rectangle") ? List.of() : shape.startsWith("half") ? List.of(down) : List.of(down, new Line(new Point(0, h), new Point(w, 0)));
        }
    }

    /**
     * Strips cut across at an angle; pieces lie head to tail.
     *
     * @param strip  its width
     * @param first  the length that the first piece takes
     * @param each   the length that every further piece adds
     * @param lean   how far every slanted cut goes along the strip on its way across
     * @param back   the same for every second cut where pieces lie head to tail; below 0 where it leans the other way
     */
    record Strips(String shape, List<Dimension> dimensions, String instruction, Length strip, Length first, Length each, Length lean,
                  Length back)
            implements CutMethod {
        @Override
        public List<Run> runs(int wanted, Length width) {
            if (first.compareTo(width) > 0) {
                return java.util.Collections.nCopies(wanted, new Run(strip, first, 1));
            }
            int per = 1 + (int) (width.minus(first).units() / each.units());
            List<Run> runs = new ArrayList<>();
            for (int left = wanted; left > 0; left -= per) {
                int n = Math.min(per, left);
                runs.add(new Run(first.plus(each.times((long) n - 1)), strip, n));
            }
            return List.copyOf(runs);
        }

        @Override
        public List<Line> cutsWithin(Run run) {
            double h = strip.inInches();
            boolean upright = run.across().equals(strip) && !run.along().equals(strip);
            boolean headToTail = !lean.equals(back);
            // An even number has the same slant at both ends: begun, turned about, with the lesser one it takes no more than its run.
            boolean turned = headToTail && back.negated().compareTo(lean) < 0;
            Length begun = turned ? back.negated() : lean;
            Length other = turned ? lean.negated() : back;
            double from = turned ? 0 : h;
            List<Line> cuts = new ArrayList<>();
            for (int i = 0; i <= run.pieces(); i++) {
                boolean second = headToTail && i % 2 == 1;
                double foot = each.inInches() * i + (second ? first.minus(each).inInches() : 0);
                double head = foot + (second ? other : begun).inInches();
                cuts.add(upright ? new Line(new Point(from, foot), new Point(h - from, head)) : new Line(new Point(foot, from), new Point(head, h - from)));
            }
            return List.copyOf(cuts);
        }
    }

    /** Traced round a template: no ruler gives its outline. */
    sealed interface Traced extends CutMethod {

        /** How pieces lie on the strips. */
        Nesting nesting();

        /** The same where the ends of strips are used so. */
        Traced ending(Nesting.Ends ends);

        @Override
        default List<Run> runs(int wanted, Length width) {
            return nesting().runs(wanted, width);
        }

        @Override
        default List<Path> drawnOn(Run run, int pieces, Length width) {
            return nesting().outlines(run, pieces, width);
        }

        @Override
        default String lying(int pieces, Length width) {
            return nesting().words(pieces, width);
        }
    }

    /**
     * A template, traced on strips.
     *
     * @param reason  why no ruler cut does
     * @param nesting how pieces lie on the strips
     */
    record Template(String shape, List<Dimension> dimensions, String reason, Nesting nesting) implements Traced {
        @Override
        public String instruction() {
            return "Cut by template: " + reason + ".";
        }

        @Override
        public Traced ending(Nesting.Ends ends) {
            return new Template(shape, dimensions, reason, nesting.ending(ends));
        }
    }

    /**
     * A shape that is laid on a ground: cut by template with an allowance that is turned under.
     *
     * @param turnUnder the allowance, which is no seam; nothing where raw edges are fused
     * @param nesting   how pieces lie on the strips
     */
    record Laid(String shape, Length turnUnder, Nesting nesting) implements Traced {
        @Override
        public List<Dimension> dimensions() {
            return List.of();
        }

        @Override
        public String instruction() {
            return turnUnder.isZero() ? "Cut by template along the line itself, and lay it on the ground."
                    : "Cut by template, " + turnUnder + " outside the line; turn that under when it is laid on the ground.";
        }

        @Override
        public Traced ending(Nesting.Ends ends) {
            return new Laid(shape, turnUnder, nesting.ending(ends));
        }
    }
}
