package org.calicograph.turning;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;

/**
 * The question in how many ways a block can be laid out.
 *
 * @param columns blocks across
 * @param rows    blocks down
 * @param allowed how each block may lie; ways that look the same count once
 * @param own     the turns that leave the block as it is
 * @param whole   the turns of the whole layout that make no difference
 */
public record Turnings(int columns, int rows, List<Turn> allowed, Set<Turn> own, Set<Turn> whole) {

    /** The longest list that is made, in layouts before likes are left out. */
    public static final long MOST = 20_000_000;

    /**
     * @throws DesignException if there are no blocks or turns
     */
    public Turnings {
        if (columns < 1 || rows < 1 || allowed.isEmpty()) {
            throw new DesignException("a layout of " + columns + " x " + rows + " blocks with " + allowed.size()
                    + " turns is none; use at least 1 x 1 and 1 turn");
        }
        Set<Turn> distinct = new LinkedHashSet<>();
        for (Turn t : allowed) {
            distinct.add(likest(t, own));
        }
        allowed = List.copyOf(distinct);
        own = Set.copyOf(own);
        List<Turn> states = allowed;
        Set<Turn> ownTurns = own;
        boolean square = columns == rows;
        // A turn of the whole counts only if it fits the sheet and leads from allowed turns to allowed turns.
        whole = Set.copyOf(whole.stream().filter(g -> (square || g.quarters() % 2 == 0)
                && states.stream().allMatch(s -> states.contains(likest(s.then(g), ownTurns)))).toList());
    }

    /** Every way in which a block can lie, layouts equal if turning or mirroring the whole makes them so. */
    public static Turnings of(Patchwork block, int columns, int rows) {
        return new Turnings(columns, rows, Turn.all(), BlockSymmetry.of(block), Set.copyOf(Turn.all()));
    }

    /** Turns alone, for cloth with a right side or blocks that have no mirror image. */
    public Turnings unmirrored() {
        return new Turnings(columns, rows, Turn.turns(), own, Set.copyOf(Turn.turns()));
    }

    /** Only these ways for a block to lie. */
    public Turnings only(Collection<Turn> turns) {
        return new Turnings(columns, rows, List.copyOf(turns), own, whole);
    }

    /** Turns that look the same on the block are one; the first in the order of all stands for them. */
    private static Turn likest(Turn turn, Set<Turn> own) {
        return Turn.all().stream().filter(t -> own.stream().anyMatch(h -> h.then(turn).equals(t))).findFirst().orElse(turn);
    }

    /** All layouts, likes included. */
    public BigInteger raw() {
        return BigInteger.valueOf(allowed.size()).pow(columns * rows);
    }

    /** Layouts that are not alike, by Burnside's lemma. */
    public BigInteger count() {
        BigInteger sum = BigInteger.ZERO;
        for (Turn g : whole) {
            BigInteger fixed = BigInteger.ONE;
            int[] moved = moved(g);
            boolean[] seen = new boolean[moved.length];
            for (int p = 0; p < moved.length; p++) {
                if (seen[p]) {
                    continue;
                }
                Turn round = Turn.NONE;
                for (int q = p; !seen[q]; q = moved[q]) {
                    seen[q] = true;
                    round = round.then(g);
                }
                Turn after = round;
                long states = allowed.stream().filter(s -> likest(s.then(after), own).equals(s)).count();
                fixed = fixed.multiply(BigInteger.valueOf(states));
            }
            sum = sum.add(fixed);
        }
        return sum.divide(BigInteger.valueOf(whole.size()));
    }

    /** Where each place goes when the whole is turned, places counted row by row. */
    private int[] moved(Turn g) {
        int[] moved = new int[columns * rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                int[] to = g.ofStep(2 * c - (columns - 1), 2 * r - (rows - 1));
                moved[r * columns + c] = (to[1] + rows - 1) / 2 * columns + (to[0] + columns - 1) / 2;
            }
        }
        return moved;
    }

    /**
     * Every layout that is not like one before it, in the order of the allowed turns.
     *
     * @throws DesignException if there are more than {@link #MOST} to look through
     */
    public List<Repeat> distinct() {
        if (raw().compareTo(BigInteger.valueOf(MOST)) > 0) {
            throw new DesignException(raw() + " layouts of " + columns + " x " + rows + " blocks are too many to list; count them, or allow fewer turns or a smaller repeat");
        }
        int n = columns * rows;
        int s = allowed.size();
        List<int[]> places = new ArrayList<>();
        List<int[]> states = new ArrayList<>();
        for (Turn g : whole) {
            places.add(moved(g));
            states.add(allowed.stream().mapToInt(t -> allowed.indexOf(likest(t.then(g), own))).toArray());
        }
        List<Repeat> found = new ArrayList<>();
        int[] layout = new int[n];
        int[] image = new int[n];
        do {
            if (isFirst(layout, image, places, states)) {
                List<Turn> turns = new ArrayList<>();
                for (int t : layout) {
                    turns.add(allowed.get(t));
                }
                found.add(new Repeat(columns, rows, turns, own));
            }
        } while (next(layout, s));
        return List.copyOf(found);
    }

    private static boolean isFirst(int[] layout, int[] image, List<int[]> places, List<int[]> states) {
        for (int g = 0; g < places.size(); g++) {
            for (int p = 0; p < layout.length; p++) {
                image[places.get(g)[p]] = states.get(g)[layout[p]];
            }
            if (java.util.Arrays.compare(image, layout) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean next(int[] layout, int states) {
        for (int p = layout.length - 1; p >= 0; p--) {
            if (++layout[p] < states) {
                return true;
            }
            layout[p] = 0;
        }
        return false;
    }
}
