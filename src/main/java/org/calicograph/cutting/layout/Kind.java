package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;

/**
 * Equal blanks, to be laid in lots of any number, each a grid of rows.
 *
 * @param blanks all of the kind
 */
record Kind(List<Blank> blanks) {

    Kind {
        blanks = List.copyOf(blanks);
    }

    /** Every blank a kind by itself. */
    static List<Kind> singles(List<Blank> blanks) {
        return blanks.stream().map(b -> new Kind(List.of(b))).toList();
    }

    /** Blanks told apart by their sides and whether they may be turned, in the order in which they first come. */
    static List<Kind> of(List<Blank> blanks) {
        Map<List<Object>, List<Blank>> kinds = new LinkedHashMap<>();
        for (Blank b : blanks) {
            kinds.computeIfAbsent(List.of(b.across(), b.along(), b.turnable()), k -> new ArrayList<>()).add(b);
        }
        return kinds.values().stream().map(Kind::new).toList();
    }

    Blank blank() {
        return blanks.get(0);
    }

    int count() {
        return blanks.size();
    }

    /** The size across the cloth in units of a grid, rounded up. */
    int across(long unit) {
        return units(blank().across(), unit);
    }

    /** The size along the cloth in units of a grid, rounded up. */
    int along(long unit) {
        return units(blank().along(), unit);
    }

    /** Half of the kind, a quarter, an eighth and so on: lots that can be put together to any number. */
    List<Integer> halves() {
        List<Integer> lots = new ArrayList<>();
        for (int left = blanks.size(); left > 0; left -= lots.get(lots.size() - 1)) {
            lots.add((left + 1) / 2);
        }
        return lots;
    }

    /** A way to lay a lot: so many beside each other, turned or not. */
    private record Grid(int columns, int rows, boolean turned) {
        Length across(Blank b) {
            return (turned ? b.along() : b.across()).times((long) columns);
        }

        Length along(Blank b) {
            return (turned ? b.across() : b.along()).times((long) rows);
        }
    }

    /** The ways to lay so many that may be no wider than a width, in units of the grid. */
    private List<Grid> grids(int n, int widest, long unit) {
        List<Grid> grids = new ArrayList<>();
        for (boolean turned : blank().turnable() ? new boolean[] {false, true} : new boolean[] {false}) {
            int most = (int) (widest * unit / (turned ? blank().along() : blank().across()).units());
            for (int columns = 1; columns <= Math.min(n, most); columns++) {
                grids.add(new Grid(columns, (n + columns - 1) / columns, turned));
            }
        }
        return grids;
    }

    /** The least length of so many for every width up to the cloth's, in units of a grid onto which sides are rounded up. */
    Curve curve(int n, long unit, int widest) {
        if (n == 0) {
            return new Curve(new int[1], new int[1], 1, 0, 0);
        }
        List<int[]> points = new ArrayList<>();
        for (Grid g : grids(n, widest, unit)) {
            int w = units(g.across(blank()), unit);
            if (w <= widest) {
                points.add(new int[] {w, units(g.along(blank()), unit)});
            }
        }
        points.sort(Comparator.comparingInt((int[] p) -> p[0]).thenComparingInt(p -> p[1]));
        int[] widths = new int[points.size()];
        int[] lengths = new int[points.size()];
        int size = 0;
        for (int[] p : points) {
            if (size == 0 || p[1] < lengths[size - 1]) {
                widths[size] = p[0];
                lengths[size++] = p[1];
            }
        }
        double area = (double) across(unit) * along(unit) * n;
        return new Curve(widths, lengths, size, area, 0);
    }

    private static int units(Length side, long unit) {
        return (int) ((side.units() + unit - 1) / unit);
    }

    /** Some of the kind laid within a width and a length, in units of the grid. */
    Panel laid(List<Blank> lot, int across, int along, long unit) {
        for (Grid g : grids(lot.size(), across, unit)) {
            if (units(g.across(blank()), unit) <= across && units(g.along(blank()), unit) <= along) {
                List<Panel> rows = new ArrayList<>();
                for (int from = 0; from < lot.size(); from += g.columns()) {
                    List<Panel> row = new ArrayList<>();
                    for (Blank b : lot.subList(from, Math.min(lot.size(), from + g.columns()))) {
                        row.add(new Panel.Taken(b, g.turned()));
                    }
                    rows.add(Panel.abreast(row));
                }
                return Panel.stacked(rows);
            }
        }
        throw new IllegalStateException("no rows of '" + blank().name() + "' fit " + across + " by " + along + " grid units");
    }
}
