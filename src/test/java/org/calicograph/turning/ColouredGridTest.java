package org.calicograph.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.Set;
import org.calicograph.covering.DesignException;
import org.junit.jupiter.api.Test;

class ColouredGridTest {

    @Test
    void squares_in_two_colours_are_as_many_as_published() {
        // The encyclopedia of integer sequences, A047937 (turns) and A054247 (turns and mirrors), first five terms after the empty one; from memory.
        String[] turns = {"2", "6", "140", "16456", "8390720"};
        String[] both = {"2", "6", "102", "8548", "4211744"};
        for (int n = 1; n <= 5; n++) {
            assertEquals(new BigInteger(turns[n - 1]), new ColouredGrid(n, n, 2).upToTurns());
            assertEquals(new BigInteger(both[n - 1]), new ColouredGrid(n, n, 2).upToTurnsAndMirrors());
        }
    }

    @Test
    void small_grids_agree_with_looking_at_every_one() {
        for (int columns = 1; columns <= 4; columns++) {
            for (int rows = 1; rows <= 3; rows++) {
                for (int colours = 1; colours <= 2; colours++) {
                    assertEquals(brute(columns, rows, colours, false), new ColouredGrid(columns, rows, colours).upToTurns().intValue(), columns + " x " + rows);
                    assertEquals(brute(columns, rows, colours, true), new ColouredGrid(columns, rows, colours).upToTurnsAndMirrors().intValue(), columns + " x " + rows);
                }
            }
        }
    }

    /** Each grid as text; alike ones share the least text of all their turns. */
    private static int brute(int columns, int rows, int colours, boolean mirrors) {
        Set<String> unlike = new HashSet<>();
        for (int code = 0; code < Math.round(Math.pow(colours, columns * rows)); code++) {
            int[][] grid = new int[rows][columns];
            for (int i = 0, c = code; i < columns * rows; i++, c /= colours) {
                grid[i / columns][i % columns] = c % colours;
            }
            String least = null;
            int[][] g = grid;
            for (int k = 0; k < 8; k++) {
                if ((k < 4 || mirrors) && g.length == rows && g[0].length == columns) {
                    String text = java.util.Arrays.deepToString(g);
                    least = least == null || text.compareTo(least) < 0 ? text : least;
                }
                g = k == 3 ? mirrored(grid) : turned(g);
            }
            unlike.add(least);
        }
        return unlike.size();
    }

    private static int[][] turned(int[][] g) {
        int[][] out = new int[g[0].length][g.length];
        for (int r = 0; r < g.length; r++) {
            for (int c = 0; c < g[0].length; c++) {
                out[c][g.length - 1 - r] = g[r][c];
            }
        }
        return out;
    }

    private static int[][] mirrored(int[][] g) {
        int[][] out = new int[g.length][g[0].length];
        for (int r = 0; r < g.length; r++) {
            for (int c = 0; c < g[0].length; c++) {
                out[r][g[0].length - 1 - c] = g[r][c];
            }
        }
        return out;
    }

    @Test
    void no_square_and_no_colour_are_refused() {
        assertThrows(DesignException.class, () -> new ColouredGrid(0, 2, 2));
        assertThrows(DesignException.class, () -> new ColouredGrid(2, 2, 0));
    }
}
