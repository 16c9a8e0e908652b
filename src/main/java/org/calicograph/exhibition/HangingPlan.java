package org.calicograph.exhibition;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;

/**
 * Which quilt hangs where: as many as the walls hold, on as few walls as can. Each hangs with its middle at eye height where
 * that leaves it clear of the floor and below the rod; else as low, or as high, as it must. What is left of a wall's
 * length is shared evenly between its quilts.
 *
 * @param gap   the least between two quilts, and at a wall's ends
 * @param eye   the height of the eye above the floor
 * @param clear the least between a quilt and the floor
 */
public record HangingPlan(Exhibition exhibition, List<HangingWall> walls, Length gap, Length eye, Length clear) implements Drawable {

    /** For whoever hangs them. */
    public static final String CAUTION = "A large quilt on its rod is heavy and long: lift and hang it with two people. Stand a ladder on firm level floor, locked, with somebody "
            + "at its foot; never lean out. Fix rods and screens by their makers' instructions, and follow the rules of the house for loads, fire and ways out.";
    /** A metre and a half before a wall lets a wheelchair turn (ISO 21542, from memory). */
    private static final String AISLE = "Keep 60 in (1.5 m) of aisle before every wall: so much a wheelchair needs to turn. Keep doors and ways out free.";
    /** What a quilted cotton quilt weighs: two layers of about 145 g and cotton batting of about 120 g a square metre, seams besides (common practice, from memory). */
    private static final double KG_A_SQUARE_METRE = 0.45;

    /**
     * One quilt in its place.
     *
     * @param number its number in the exhibition
     * @param left   from the wall's left end to the quilt's left edge
     * @param bottom from the floor to the quilt's lower edge
     */
    public record Hung(int number, ShowEntry entry, HangingWall wall, Length left, Length bottom) {

        /** From the floor to the upper edge, where the rod is. */
        public Length top() {
            return bottom.plus(entry.height());
        }
    }

    /** @throws IllegalArgumentException if there is no wall, or a gap below 0 */
    public HangingPlan {
        walls = List.copyOf(walls);
        if (walls.isEmpty()) {
            throw new IllegalArgumentException("'" + exhibition.title() + "' has no wall to hang on; give one, such as HangingWall.of(\"north\", inches(300), inches(108))");
        }
        long names = walls.stream().map(HangingWall::name).distinct().count();
        if (names < walls.size()) {
            throw new IllegalArgumentException("two walls of '" + exhibition.title() + "' have one name; call each by its own, so that the crew can tell them apart");
        }
        if (gap.units() < 0 || clear.units() < 0) {
            throw new IllegalArgumentException("a gap of " + gap + " and " + clear + " above the floor can't be kept; use 0 or more");
        }
    }

    /** The same with another least gap between quilts. */
    public HangingPlan gap(Length least) {
        return new HangingPlan(exhibition, walls, least, eye, clear);
    }

    /** The same with the middle of quilts at another height above the floor. */
    public HangingPlan eye(Length height) {
        return new HangingPlan(exhibition, walls, gap, height, clear);
    }

    /** The same with quilts at least so far off the floor. */
    public HangingPlan clear(Length least) {
        return new HangingPlan(exhibition, walls, gap, eye, least);
    }

    private Placement placement() {
        List<ShowEntry> entries = exhibition.entries();
        long[] widths = entries.stream().mapToLong(e -> e.width().plus(gap).units()).toArray();
        long[] lengths = walls.stream().mapToLong(w -> w.length().minus(gap).units()).toArray();
        boolean[][] allowed = new boolean[entries.size()][walls.size()];
        for (int i = 0; i < entries.size(); i++) {
            for (int w = 0; w < walls.size(); w++) {
                allowed[i][w] = entries.get(i).height().plus(clear).compareTo(walls.get(w).height()) <= 0;
            }
        }
        return Placement.of(widths, lengths, allowed);
    }

    /** Every quilt that hangs, wall by wall from the left. */
    public List<Hung> hung() {
        return hung(placement());
    }

    private List<Hung> hung(Placement placement) {
        List<Hung> all = new ArrayList<>();
        for (int w = 0; w < walls.size(); w++) {
            HangingWall wall = walls.get(w);
            List<Integer> here = new ArrayList<>();
            for (int i = 0; i < placement.wallOf().length; i++) {
                if (placement.wallOf()[i] == w) {
                    here.add(i);
                }
            }
            Length used = here.stream().map(i -> exhibition.entries().get(i).width()).reduce(Length.ZERO, Length::plus);
            Length between = wall.length().minus(used).dividedBy(here.size() + 1);
            Length left = between;
            for (int i : here) {
                ShowEntry entry = exhibition.entries().get(i);
                Length wished = eye.minus(entry.height().half());
                Length bottom = Length.max(clear, Length.min(wished, wall.height().minus(entry.height())));
                all.add(new Hung(i + 1, entry, wall, left, bottom));
                left = left.plus(entry.width()).plus(between);
            }
        }
        return all;
    }

    /** The quilts for which there is no room, each with the reason. */
    public List<String> left() {
        return left(placement());
    }

    private List<String> left(Placement placement) {
        List<String> all = new ArrayList<>();
        Length highest = walls.stream().map(HangingWall::height).reduce(Length.ZERO, Length::max);
        Length longest = walls.stream().map(HangingWall::length).reduce(Length.ZERO, Length::max);
        for (int i = 0; i < placement.wallOf().length; i++) {
            ShowEntry e = exhibition.entries().get(i);
            if (placement.wallOf()[i] < 0) {
                all.add((i + 1) + " '" + e.title() + "' does not hang: " + (e.height().plus(clear).compareTo(highest) > 0
                        ? "it is " + e.height() + " high and must be " + clear + " off the floor, and the highest rod is at " + highest
                        : e.width().plus(gap.times(2)).compareTo(longest) > 0 ? "with its gaps it takes " + e.width().plus(gap.times(2)) + ", and the longest wall has " + longest
                        : "the walls are full; it takes " + e.width().plus(gap) + " more"));
            }
        }
        return all;
    }

    /** For the crew: what hangs where, how high the rod is, and what it about weighs. */
    public Table table() {
        return table(hung());
    }

    private static Table table(List<Hung> hung) {
        Table table = Table.of("Hanging", "Wall", "No.", "Quilt", "Maker", "From the left", "Rod at", "Lower edge at", "Size", "About");
        for (Hung h : hung) {
            double kg = Math.ceil(h.entry().width().inInches() * h.entry().height().inInches() * 0.0254 * 0.0254 * KG_A_SQUARE_METRE * 10) / 10;
            table = table.row(h.wall().name(), String.valueOf(h.number()), h.entry().title(), h.entry().maker(), near(h.left()), near(h.top()), near(h.bottom()), h.entry().size(),
                    kg + " kg (" + Math.round(kg * 2.2046 * 2) / 2.0 + " lb)");
        }
        return table;
    }

    private static Length near(Length length) {
        return length.roundedTo(Length.inches(1, 2));
    }

    /** How well the walls are used, and what stays on the floor. */
    public String verdict() {
        return verdict(placement());
    }

    private String verdict(Placement p) {
        int n = exhibition.entries().size();
        String how = p.proved() ? "" : " No better was found in the time allowed, and none is ruled out.";
        return p.hung() == n ? "All " + n + " quilts hang, on " + p.walls() + " of " + walls.size() + (walls.size() == 1 ? " wall." : " walls.") + how
                : p.hung() + " of " + n + " quilts hang" + (p.proved() ? "; more can't." : ".") + how + " " + String.join(". ", left(p)) + ".";
    }

    @Override
    public Exhibit show() {
        Placement placement = placement();
        List<Hung> hung = hung(placement);
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(verdict(placement)));
        for (HangingWall wall : walls) {
            List<Hung> here = hung.stream().filter(h -> h.wall().equals(wall)).toList();
            if (!here.isEmpty()) {
                parts.add(Exhibit.of(WallPicture.of(wall, here, eye), "Wall '" + wall.name() + "', " + wall.length() + " long; the dashed line is at " + eye + ": "
                        + here.stream().map(h -> h.number() + " " + h.entry().title()).collect(Collectors.joining(", "))));
            }
        }
        parts.add(Exhibit.of(table(hung)));
        parts.add(Exhibit.words(AISLE + "\n" + CAUTION));
        return new Exhibit.Several(parts);
    }
}
