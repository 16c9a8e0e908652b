package org.calicograph.workshop.pieces;

import java.util.List;
import org.calicograph.measure.Length;

/** How a piece is cut: with a ruler and a rotary cutter, or by a template. */
public sealed interface CutMethod {

    /** The name of the shape. */
    String shape();

    List<Dimension> dimensions();

    /** The step after the strip or blank is cut, in plain words. */
    String instruction();

    /** The rectangles that so many pieces are cut from, each at most as wide as the cloth. */
    List<Run> runs(int pieces, Length width);

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
    }

    /**
     * Strips cut across at an angle; pieces lie head to tail.
     *
     * @param strip  its width
     * @param first  the length that the first piece takes
     * @param each   the length that every further piece adds
     */
    record Strips(String shape, List<Dimension> dimensions, String instruction, Length strip, Length first, Length each)
            implements CutMethod {
        @Override
        public List<Run> runs(int wanted, Length width) {
            if (first.compareTo(width) > 0) {
                return java.util.Collections.nCopies(wanted, new Run(strip, first, 1));
            }
            int per = 1 + (int) (width.minus(first).units() / each.units());
            java.util.ArrayList<Run> runs = new java.util.ArrayList<>();
            for (int left = wanted; left > 0; left -= per) {
                int n = Math.min(per, left);
                runs.add(new Run(first.plus(each.times((long) n - 1)), strip, n));
            }
            return List.copyOf(runs);
        }
    }

    /**
     * A template; each piece is laid in a rectangle of its own.
     *
     * @param reason why no ruler cut does
     */
    record Template(String shape, List<Dimension> dimensions, String reason, Length across, Length along) implements CutMethod {
        @Override
        public String instruction() {
            return "Cut by template: " + reason + ".";
        }

        @Override
        public List<Run> runs(int wanted, Length width) {
            return java.util.Collections.nCopies(wanted, new Run(across, along, 1));
        }
    }

    /**
     * A shape that is laid on a ground: cut by template with an allowance that is turned under.
     *
     * @param turnUnder the allowance, which is no seam; nothing where raw edges are fused
     */
    record Laid(String shape, Length turnUnder, Length across, Length along) implements CutMethod {
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
        public List<Run> runs(int wanted, Length width) {
            return java.util.Collections.nCopies(wanted, new Run(across, along, 1));
        }
    }
}
