package org.calicograph.course;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.calicograph.border.Fitting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.RotaryRules;
import org.calicograph.fabric.Fabric;
import org.calicograph.finishing.Finishing;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.BorderStrips;
import org.calicograph.fitting.Fit;
import org.calicograph.fitting.Mattress;
import org.calicograph.measure.Length;

/**
 * What is practised with paper and pencil. Every problem has numbers that come out on a ruler, and its answer is
 * reckoned by the same rules as the cutting list, so that the two never disagree. Lengths are in inches, seams 1/4 in.
 */
public enum Topic {
    /** How large a quilt must be to hang down as wished. */
    BED_COVER("Covering a bed", Topic::bed),
    /** How long plain border strips are cut, butted and mitred. */
    BORDER_STRIPS("Border strips", Topic::strips),
    /** How many units of a given length go round. */
    BORDER_UNITS("Units round a border", Topic::units),
    /** How long a unit must be to come out whole on both sides. */
    UNIT_LENGTH("A unit that comes out whole", Topic::unit),
    /** How large squares are cut that give triangles. */
    TRIANGLES("Squares for triangles", Topic::triangles),
    /** How large the squares are cut that give setting triangles. */
    ON_POINT("Setting on point", Topic::onPoint),
    /** How much cloth so many squares take. */
    YARDAGE("Cloth for squares", Topic::yardage),
    /** How many strips the binding takes, and how much cloth. */
    BINDING("Binding", Topic::binding),
    /** How the backing is joined. */
    BACKING("Backing", Topic::backing);

    private static final CuttingRules RULES = CuttingRules.INCH;

    private final String title;
    private final Function<Random, Problem> maker;

    Topic(String title, Function<Random, Problem> maker) {
        this.title = title;
        this.maker = maker;
    }

    /** As it stands above the problem. */
    public String title() {
        return title;
    }

    /** A problem with numbers by chance: the same chance gives the same problem. */
    public Problem problem(Random chance) {
        return maker.apply(chance);
    }

    private static int between(Random chance, int least, int greatest) {
        return least + chance.nextInt(greatest - least + 1);
    }

    private static Length eighths(Random chance, int least, int greatest) {
        return Length.inches(between(chance, least * 8, greatest * 8), 8);
    }

    private static Length halves(Random chance, int least, int greatest) {
        return Length.inches(between(chance, least * 2, greatest * 2), 2);
    }

    private static Problem bed(Random chance) {
        List<Mattress> beds = List.of(Mattress.TWIN, Mattress.TWIN_XL, Mattress.FULL, Mattress.QUEEN, Mattress.KING);
        Mattress bed = beds.get(chance.nextInt(beds.size()));
        BedCover cover = BedCover.over(bed).drop(halves(chance, 9, 18)).tuck(halves(chance, 0, 10)).takeUp(0);
        return new Problem("A quilt is to lie on a mattress of " + bed.width() + " x " + bed.length() + " (" + bed.name() + "), hang down " + cover.drop()
                + " at both sides and the foot, and have " + cover.tuck() + " more at the head. How large is the finished quilt?",
                cover.width() + " x " + cover.length(),
                bed.width() + " + 2 x " + cover.drop() + "; " + bed.length() + " + " + cover.drop() + " + " + cover.tuck());
    }

    private static Problem strips(Random chance) {
        Length across = halves(chance, 40, 90);
        Length down = across.plus(halves(chance, 1, 20));
        Length width = halves(chance, 1, 8);
        BorderStrips butted = BorderStrips.butted(across, down, width);
        BorderStrips mitred = BorderStrips.mitred(across, down, width);
        return new Problem("A top is " + across + " x " + down + " finished. A plain border of " + width + " finished goes round it, the sides first, then the ends. "
                + "How wide and how long are the strips cut? How long would they be cut for mitred corners, with " + mitred.extra() + " extra on each?",
                "all " + butted.cutWidth() + " wide; two sides of " + butted.sides() + ", two ends of " + butted.ends() + "; mitred: " + mitred.sides() + " and " + mitred.ends(),
                "sides " + down + " + 1/2; ends " + across + " + 2 x " + width + " + 1/2; mitred: side + 2 x " + width + " + " + mitred.extra());
    }

    private static Problem units(Random chance) {
        Length unit = Length.inches(between(chance, 4, 12), 2);
        int across = between(chance, 8, 14);
        int down = across + between(chance, 1, 6);
        Length wide = unit.times((long) across);
        Length high = unit.times((long) down);
        Fitting fit = Fit.around(wide, high).units(unit).corners(Fitting.Corners.UNIT).nearest();
        return new Problem("Pieced units " + unit + " long and " + unit + " wide go round a top of " + wide + " x " + high + ", with one in each corner. How many are sewn?",
                fit.total() + " units", "2 x " + fit.across() + " + 2 x " + fit.down() + " + 4 corners");
    }

    private static Problem unit(Random chance) {
        while (true) {
            Length across = eighths(chance, 36, 60);
            Length down = across.plus(eighths(chance, 4, 24));
            Length least = Length.inches(between(chance, 5, 8), 2);
            Length most = least.plus(Length.inches(1));
            List<Fitting> all = Fit.around(across, down).units(least).between(least, most).steps(Length.inches(1, 8)).corners(Fitting.Corners.UNIT).solutions();
            List<Length> lengths = all.stream().map(Fitting::unit).distinct().sorted().toList();
            if (lengths.size() == 1) {
                Length only = lengths.get(0);
                return new Problem("A top is " + across + " x " + down + ". Which length from " + least + " to " + most + ", in eighths of an inch, goes a whole number "
                        + "of times into both sides, and how many units lie along each?",
                        only + ": " + across.units() / only.units() + " and " + down.units() / only.units(),
                        "try each eighth: " + across + " and " + down + " divided by " + only + " are both whole");
            }
        }
    }

    private static Problem triangles(Random chance) {
        Length finished = halves(chance, 1, 7);
        Length half = RotaryRules.halfSquare(finished, RULES).ruler();
        Length quarter = RotaryRules.quarterSquare(finished, RULES).ruler();
        return new Problem("A half-square triangle finishes with short sides of " + finished + ". How large is the square that gives two? And the square that gives four "
                + "triangles whose long side finishes at " + finished + "?", half + " for two; " + quarter + " for four", finished + " + 7/8; " + finished + " + 1 1/4");
    }

    private static Problem onPoint(Random chance) {
        Length block = halves(chance, 6, 16);
        Length side = RotaryRules.sideSetting(block, RULES).ruler();
        Length corner = RotaryRules.cornerSetting(block, RULES).ruler();
        return new Problem("Blocks of " + block + " finished are set on point. How wide is a block from point to point? How large are the squares cut that give "
                + "four side triangles each, and two corner triangles each, up to the next eighth?",
                Length.inches(block.inInches() * Math.sqrt(2)).roundedTo(Length.inches(1, 100)).inInches() + " in; " + side + " cut twice across; " + corner + " cut once across",
                "1.4142 x " + block + "; that + 1.21; " + block + " divided by 1.4142, + 0.86 (with the usual + 1 1/4 and + 7/8 it may come 1/8 in larger, which is trimmed)");
    }

    private static Problem yardage(Random chance) {
        Length finished = halves(chance, 2, 6);
        Length cut = finished.plus(RULES.seam().times(2));
        int count = between(chance, 30, 140);
        long each = Fabric.USABLE_WIDTH.units() / cut.units();
        long strips = (count + each - 1) / each;
        Length laid = cut.times(strips);
        return new Problem(count + " squares of " + finished + " finished are cut from cloth " + Fabric.USABLE_WIDTH + " wide. How many strips across are that, and how much cloth, "
                + "up to the next 1/8 yd?",
                strips + (strips == 1 ? " strip of " : " strips of ") + cut + ", " + laid + ": buy " + RULES.asked(laid.roundedUpTo(Length.inches(9, 2))),
                Fabric.USABLE_WIDTH + " divided by " + cut + " gives " + each + " squares a strip; " + count + " divided by " + each);
    }

    private static Problem binding(Random chance) {
        Finishing quilt = Finishing.of(Length.inches(between(chance, 40, 100)), Length.inches(between(chance, 50, 110)), RULES);
        Finishing.Assumptions how = quilt.how();
        return new Problem("A quilt is " + quilt.width() + " x " + quilt.height() + ". Its binding is cut in strips " + how.strip() + " wide across cloth of " + Fabric.USABLE_WIDTH
                + ", " + how.extra() + " longer than the way round; each join takes " + how.join() + ". How many strips, and how many inches of cloth?",
                quilt.bindingStrips() + " strips, " + quilt.bindingLaid() + " of cloth",
                "2 x (" + quilt.width() + " + " + quilt.height() + ") + " + how.extra() + " = " + quilt.bindingLength() + "; the first strip gives " + Fabric.USABLE_WIDTH
                        + ", every other " + Fabric.USABLE_WIDTH.minus(how.join()));
    }

    private static Problem backing(Random chance) {
        Finishing quilt = Finishing.of(Length.inches(between(chance, 44, 96)), Length.inches(between(chance, 60, 108)), RULES);
        Finishing.Backing back = quilt.backing();
        return new Problem("The backing of a quilt of " + quilt.width() + " x " + quilt.height() + " sticks out " + quilt.how().overage() + " on every side. It is joined from lengths of cloth "
                + Fabric.USABLE_WIDTH + " wide, seams 1/4 in. Which way takes less, and how many lengths of how many inches?",
                back.widths() + (back.widths() == 1 ? " length of " : " lengths of ") + back.each() + (back.widths() == 1 ? "" : back.upright() ? ", seams upright" : ", seams level")
                        + (quilt.backing(true).total().equals(quilt.backing(false).total()) ? " (both ways take as much)" : ""),
                "the backing is " + quilt.width().plus(quilt.how().overage().times(2)) + " x " + quilt.height().plus(quilt.how().overage().times(2)) + "; try its seams upright and level");
    }
}
