package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;

/**
 * The question where to cut the strips of a printed border so that the print mirrors at the mitres.
 *
 * <p>A print that repeats along the strip and mirrors about a line across it does so about two lines in
 * each repeat, half a repeat apart. At a mitre it mirrors if both strips show the same print at the same
 * distance from the corner. Going round, that closes just where the sides of the quilt differ by a whole
 * number of half repeats; all four corners are alike just where they differ by whole repeats and the
 * middle of every strip lies on a mirror line. The width of the border makes no difference.
 *
 * @param across    the finished width of what the border goes round
 * @param down      its finished height
 * @param width     the finished width of the border
 * @param repeat    the length of the print's repeat, along the strip
 * @param mirrors   false for a print that runs one way along the strip
 * @param step      where the top strip may begin: every so much of the print
 * @param tolerance how far the print may be off at the last corner
 * @param extra     added to each strip's outer length for seams and the mitre
 * @param lanes     copies of the stripe side by side across the cloth
 */
public record StripeFit(Length across, Length down, Length width, Length repeat, boolean mirrors, Length step, Length tolerance, Length extra, int lanes)
        implements FitQuestion<StripeMatch> {

    public StripeFit {
        for (Length length : List.of(across, down, width, repeat, step)) {
            if (!length.isPositive()) {
                throw new DesignException("a printed border " + width + " wide with a repeat of " + repeat + " round " + across + " x " + down
                        + " can't be matched; use lengths above 0");
            }
        }
        if (lanes < 1 || lanes > 12 || tolerance.units() < 0 || extra.units() < 0) {
            throw new DesignException(lanes + " stripes across the cloth, " + extra + " extra and a tolerance of " + tolerance
                    + " can't be cut; use 1 to 12 stripes, and 0 or more");
        }
        if (repeat.ratioTo(step) > 1000) {
            throw new DesignException("steps of " + step + " in a repeat of " + repeat + " are too many to try; use a thousandth of it or more");
        }
    }

    /** A border of a finished width, its print to be given with {@link #repeating}; 4 in extra a strip (common practice). */
    public static StripeFit around(Length across, Length down, Length width) {
        Length inch = Length.inches(1);
        return new StripeFit(across, down, width, inch.times(6), true, inch.half(), Length.inches(1, 16), inch.times(4), 4);
    }

    /** A border of a finished width round a piece of work. */
    public static StripeFit around(Patchwork inside, Length width) {
        return around(inside.width(), inside.height(), width);
    }

    /** A print that repeats after this length along the strip. */
    public StripeFit repeating(Length length) {
        return new StripeFit(across, down, width, length, mirrors, step, tolerance, extra, lanes);
    }

    /** A print that runs one way along the strip and mirrors nowhere. */
    public StripeFit oneWay() {
        return new StripeFit(across, down, width, repeat, false, step, tolerance, extra, lanes);
    }

    StripeFit mirroring() {
        return new StripeFit(across, down, width, repeat, true, step, tolerance, extra, lanes);
    }

    /** The steps in which a strip may start along the print. */
    public StripeFit steps(Length fraction) {
        return new StripeFit(across, down, width, repeat, mirrors, fraction, tolerance, extra, lanes);
    }

    /** How far the print may be off at a mitre and still be called a match. */
    public StripeFit within(Length off) {
        return new StripeFit(across, down, width, repeat, mirrors, step, off, extra, lanes);
    }

    /** How much each strip gets for seams and the mitre. */
    public StripeFit extra(Length each) {
        return new StripeFit(across, down, width, repeat, mirrors, step, tolerance, each, lanes);
    }

    /** So many copies of the stripe side by side across the cloth. */
    public StripeFit lanes(int copies) {
        return new StripeFit(across, down, width, repeat, mirrors, step, tolerance, extra, copies);
    }

    StripeFit sized(Length otherAcross, Length otherDown) {
        return new StripeFit(otherAcross, otherDown, width, repeat, mirrors, step, tolerance, extra, lanes);
    }

    /** The outer edge of a strip, 0 top, 1 right, 2 bottom, 3 left. */
    Length outer(int side) {
        return (side % 2 == 0 ? across : down).plus(width.times(2));
    }

    /** What to cut for a strip. */
    Length cut(int side) {
        return outer(side).plus(extra);
    }

    /** Every match with the top strip beginning in steps of the print, or with its middle on a mirror line; the best first. */
    @Override
    public List<StripeMatch> solutions() {
        return StripeSearch.all(this);
    }

    /**
     * The nearest sizes at which the print matches, each with what it changes, the least first; for a print that runs
     * one way the like that mirrors. Empty if it matches as it is.
     */
    @Override
    public List<Change<StripeMatch>> others() {
        return StripeSearch.near(this);
    }

    /** The finished heights within a range at which the print matches round this width. */
    public List<Length> heights(Length from, Length to) {
        return mirrors ? StripeSearch.heights(this, from, to) : List.of();
    }

    /** How much more cloth a match takes than plain strips would, with up to one repeat to find the first place. */
    public Length extraCloth(StripeMatch match) {
        return match.cloth().plus(repeat).minus(StripeSearch.plainCloth(this));
    }

    @Override
    public String why() {
        return why(solutions());
    }

    private String why(List<StripeMatch> all) {
        if (!all.isEmpty()) {
            return "The print mirrors at all four mitres: " + all.get(0) + "; there are " + all.size() + " ways in all, the top moved along the print by "
                    + step + " at a time.";
        }
        if (!mirrors) {
            return "The print runs one way, so every strip leads away from one of its corners and towards the other and can't mirror at both; use a print"
                    + " that mirrors, a block in each corner, or butted strips.";
        }
        Length apart = across.minus(down).abs();
        return "The sides differ by " + StripeMatch.shown(apart) + ", which is " + String.format(Locale.ROOT, "%.2f", apart.ratioTo(repeat) * 2)
                + " half repeats of " + StripeMatch.shown(repeat.half())
                + "; the print mirrors at every mitre only if that is a whole number, whatever the width of the border or of a spacer that is equal all round.";
    }

    private Table strips(StripeMatch match) {
        Table table = Table.of("Strips, corners clockwise", "strip", "outer edge, finished", "cut", "first outer corner after a mirror line", "middle after a mirror line");
        List<String> names = List.of("top", "right", "bottom", "left");
        for (int side = 0; side < 4; side++) {
            Length middle = StripeSearch.within(match.starts().get(side).plus(outer(side).half()), repeat);
            table = table.row(names.get(side), StripeMatch.shown(outer(side)), StripeMatch.shown(cut(side)), StripeMatch.shown(match.starts().get(side)),
                    StripeMatch.shown(middle));
        }
        return table;
    }

    @Override
    public Exhibit show() {
        List<StripeMatch> all = solutions();
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(why(all)));
        if (!all.isEmpty()) {
            StripeMatch best = all.get(0);
            parts.add(Exhibit.of(FitPictures.stripes(this, best), best.toString()));
            parts.add(Exhibit.of(strips(best)));
            parts.add(Exhibit.words("A mirror line is a line across the print about which it mirrors; there are two in each repeat, half a repeat apart. With "
                    + lanes + " stripes across the cloth the strips take " + StripeMatch.shown(best.cloth()) + ", and up to one repeat more to find the first place: "
                    + StripeMatch.shown(extraCloth(best)) + " more than plain strips. Fold one strip under at 45 degrees on the other to check the print before you"
                    + " sew the mitre; cut with the cutter's guard closed between cuts and mind the iron: their makers' instructions come first."));
            return new Exhibit.Several(parts);
        }
        List<Change<StripeMatch>> others = others();
        if (!others.isEmpty()) {
            Table table = Table.of("The nearest that match", "change", "corners", "cloth");
            for (Change<StripeMatch> c : others) {
                table = table.row(c.words(), c.solution().looks() == 1 ? "all alike" : "alike in pairs", StripeMatch.shown(c.solution().cloth()));
            }
            parts.add(Exhibit.of(table));
        }
        return new Exhibit.Several(parts);
    }
}
