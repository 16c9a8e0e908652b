package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.measure.Length;

/** Rows across the cloth, filled tallest first; each blank goes to the first row with room (first fit, n log n). */
final class Shelves {

    private Shelves() { }

    /** @param upright true to stand blanks on their short side where they may be turned, false to lay them flat */
    static Panel lay(Length width, List<Blank> blanks, boolean upright) {
        List<Panel.Taken> lying = new ArrayList<>(blanks.size());
        for (Blank b : blanks) {
            lying.add(new Panel.Taken(b, turns(b, width, upright)));
        }
        List<Panel> all = new ArrayList<>();
        for (List<Panel.Taken> row : rows(width, lying)) {
            all.add(Panel.abreast(piled(row)).filledTo(width, row.get(0).along()));
        }
        return Panel.stacked(all);
    }

    /** Blanks as they lie, in rows: the highest first, each in the first row with room. */
    static List<List<Panel.Taken>> rows(Length width, List<Panel.Taken> blanks) {
        List<Panel.Taken> lying = new ArrayList<>(blanks);
        lying.sort(Comparator.comparing(Panel.Taken::along).thenComparing(Panel.Taken::across).reversed());
        Rooms rooms = new Rooms(lying.size(), width.units());
        List<List<Panel.Taken>> rows = new ArrayList<>();
        for (Panel.Taken t : lying) {
            int row = rooms.firstWith(t.across().units());
            if (row == rows.size()) {
                rows.add(new ArrayList<>());
            }
            rows.get(row).add(t);
            rooms.take(row, t.across().units());
        }
        return rows;
    }

    /**
     * Blanks as they lie, in rows and in each row in piles: the highest first, equal ones that are lower than their row one above
     * another as far as it is high, each pile in the first row with room.
     */
    static List<List<List<Panel.Taken>>> piles(Length width, List<Panel.Taken> blanks) {
        List<Panel.Taken> lying = new ArrayList<>(blanks);
        lying.sort(Comparator.comparing(Panel.Taken::along).thenComparing(Panel.Taken::across).reversed());
        Rooms rooms = new Rooms(lying.size(), width.units());
        List<List<List<Panel.Taken>>> rows = new ArrayList<>();
        List<Panel.Taken> pile = List.of();
        long room = 0;
        for (Panel.Taken t : lying) {
            if (room < t.along().units() || !like(pile.get(0), t)) {
                int row = rooms.firstWith(t.across().units());
                if (row == rows.size()) {
                    rows.add(new ArrayList<>());
                }
                pile = new ArrayList<>();
                rows.get(row).add(pile);
                rooms.take(row, t.across().units());
                room = rows.get(row).size() == 1 ? t.along().units() : rows.get(row).get(0).get(0).along().units();
            }
            pile.add(t);
            room -= t.along().units();
        }
        return rows;
    }

    private static boolean like(Panel.Taken a, Panel.Taken b) {
        return a.blank().name().equals(b.blank().name()) && a.across().equals(b.across()) && a.along().equals(b.along());
    }

    /** True if a blank is to be turned so that it stands upright or lies flat, as its width on the cloth allows. */
    static boolean turns(Blank b, Length width, boolean upright) {
        boolean isUpright = b.along().compareTo(b.across()) >= 0;
        return b.turnable() && (b.across().compareTo(width) > 0 || isUpright != upright && b.along().compareTo(width) <= 0);
    }

    /** Runs of equal blanks lower than their row are piled as high as the row allows. */
    private static List<Panel> piled(List<Panel.Taken> row) {
        Length height = row.get(0).along();
        List<Panel> out = new ArrayList<>();
        int i = 0;
        while (i < row.size()) {
            Panel first = row.get(i);
            int fit = (int) Math.max(1, height.units() / first.along().units());
            List<Panel> pile = new ArrayList<>();
            while (i < row.size() && pile.size() < fit && row.get(i).across().equals(first.across())
                    && row.get(i).along().equals(first.along())) {
                pile.add(row.get(i++));
            }
            out.add(Panel.stacked(pile));
        }
        return out;
    }

    /** The room left in each row, as a tree of maxima. */
    private static final class Rooms {
        private final long[] most;
        private final int base;

        Rooms(int rows, long width) {
            base = Math.max(1, Integer.highestOneBit(Math.max(1, 2 * rows - 1)));
            most = new long[2 * base];
            java.util.Arrays.fill(most, width);
        }

        int firstWith(long room) {
            int node = 1;
            if (most[1] < room) {
                throw new IllegalArgumentException("a blank is wider than the cloth; turn or divide it");
            }
            while (node < base) {
                node = most[2 * node] >= room ? 2 * node : 2 * node + 1;
            }
            return node - base;
        }

        void take(int row, long room) {
            int node = row + base;
            most[node] -= room;
            for (node /= 2; node >= 1; node /= 2) {
                most[node] = Math.max(most[2 * node], most[2 * node + 1]);
            }
        }
    }
}
