package org.calicograph.workshop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;

/** Equal blanks that are laid together, in rows of any number; one blank is a lot by itself. */
record Lot(List<Blank> blanks) {

    Lot {
        blanks = List.copyOf(blanks);
    }

    /** Every blank a lot by itself. */
    static List<Lot> singles(List<Blank> blanks) {
        return blanks.stream().map(b -> new Lot(List.of(b))).toList();
    }

    /** Each kind in lots of half of it, a quarter, an eighth and so on, so that lots can be put together to any number. */
    static List<Lot> halved(List<Blank> blanks) {
        Map<List<Object>, List<Blank>> kinds = new LinkedHashMap<>();
        for (Blank b : blanks) {
            kinds.computeIfAbsent(List.of(b.across(), b.along(), b.turnable()), k -> new ArrayList<>()).add(b);
        }
        List<Lot> lots = new ArrayList<>();
        for (List<Blank> kind : kinds.values()) {
            int from = 0;
            while (from < kind.size()) {
                int n = (kind.size() - from + 1) / 2;
                lots.add(new Lot(kind.subList(from, from + n)));
                from += n;
            }
        }
        return lots;
    }

    Blank blank() {
        return blanks.get(0);
    }

    /** A way to lay the lot: so many beside each other, turned or not. */
    private record Grid(int columns, int rows, boolean turned) {
        Length across(Blank b) {
            return (turned ? b.along() : b.across()).times((long) columns);
        }

        Length along(Blank b) {
            return (turned ? b.across() : b.along()).times((long) rows);
        }
    }

    private List<Grid> grids() {
        List<Grid> grids = new ArrayList<>();
        int n = blanks.size();
        for (int columns = 1; columns <= n; columns++) {
            int rows = (n + columns - 1) / columns;
            grids.add(new Grid(columns, rows, false));
            if (blank().turnable()) {
                grids.add(new Grid(columns, rows, true));
            }
        }
        return grids;
    }

    /** The least length for every width up to the cloth's, in units of a grid onto which sides are rounded up. */
    Curve curve(long unit, int widest) {
        List<int[]> points = new ArrayList<>();
        for (Grid g : grids()) {
            int w = units(g.across(blank()), unit);
            if (w <= widest) {
                points.add(new int[] {w, units(g.along(blank()), unit)});
            }
        }
        points.sort(Comparator.comparingInt((int[] p) -> p[0]).thenComparingInt(p -> p[1]));
        int[] widths = new int[points.size()];
        int[] lengths = new int[points.size()];
        int n = 0;
        for (int[] p : points) {
            if (n == 0 || p[1] < lengths[n - 1]) {
                widths[n] = p[0];
                lengths[n++] = p[1];
            }
        }
        double area = (double) units(blank().across(), unit) * units(blank().along(), unit) * blanks.size();
        return new Curve(widths, lengths, n, area, 0);
    }

    private static int units(Length side, long unit) {
        return (int) ((side.units() + unit - 1) / unit);
    }

    /** The lot laid within a width and a length, in units of the grid. */
    Panel laid(int across, int along, long unit) {
        for (Grid g : grids()) {
            if (units(g.across(blank()), unit) <= across && units(g.along(blank()), unit) <= along) {
                List<Panel> rows = new ArrayList<>();
                for (int from = 0; from < blanks.size(); from += g.columns()) {
                    List<Panel> row = new ArrayList<>();
                    for (Blank b : blanks.subList(from, Math.min(blanks.size(), from + g.columns()))) {
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
