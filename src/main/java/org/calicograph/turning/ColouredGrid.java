package org.calicograph.turning;

import java.math.BigInteger;
import org.calicograph.covering.DesignException;

/**
 * A grid of squares, each in one of several colours: how many there are that are not the same once turned. Counted by
 * Burnside's lemma, never one by one.
 */
public record ColouredGrid(int columns, int rows, int colours) {

    /** @throws DesignException if there is no square or no colour */
    public ColouredGrid {
        if (columns < 1 || rows < 1 || colours < 1) {
            throw new DesignException("a grid of " + columns + " x " + rows + " in " + colours + " colours can't be counted; use 1 or more of each");
        }
    }

    /** All, also those that are the same once turned. */
    public BigInteger all() {
        return BigInteger.valueOf(colours).pow(columns * rows);
    }

    /** Those that are not the same once turned. */
    public BigInteger upToTurns() {
        return fixed(false);
    }

    /** Those that are not the same once turned or mirrored. */
    public BigInteger upToTurnsAndMirrors() {
        return fixed(true);
    }

    private BigInteger fixed(boolean mirrors) {
        BigInteger sum = BigInteger.ZERO;
        int ways = 0;
        for (Turn turn : mirrors ? Turn.all() : Turn.turns()) {
            if (columns != rows && turn.quarters() % 2 != 0) {
                continue;
            }
            sum = sum.add(BigInteger.valueOf(colours).pow(rounds(turn)));
            ways++;
        }
        return sum.divide(BigInteger.valueOf(ways));
    }

    /** How many rounds of places a turn moves about: each round has one colour. */
    private int rounds(Turn turn) {
        boolean[] seen = new boolean[columns * rows];
        int rounds = 0;
        for (int p = 0; p < seen.length; p++) {
            if (!seen[p]) {
                rounds++;
                for (int q = p; !seen[q]; q = moved(turn, q)) {
                    seen[q] = true;
                }
            }
        }
        return rounds;
    }

    private int moved(Turn turn, int place) {
        int[] to = turn.ofStep(2 * (place % columns) - (columns - 1), 2 * (place / columns) - (rows - 1));
        return (to[1] + rows - 1) / 2 * columns + (to[0] + columns - 1) / 2;
    }
}
