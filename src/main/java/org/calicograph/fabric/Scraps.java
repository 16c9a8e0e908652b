package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Length;

/**
 * Notes for what scraps still give.
 *
 * @param width  of a piece as it lies, pressed
 * @param height of it
 */
public record Scraps(Length width, Length height) {

    /** What everybody does who cuts. */
    public static final List<String> CAUTIONS = List.of(
            "Press scraps flat before you cut; an iron is hot, and its cord and its rest want their place.",
            "Cut away from yourself along a ruler, and close the rotary cutter each time you put it down.",
            "Keep cutters, pins and irons from children; follow the maker's instructions.");

    public Scraps {
        if (!width.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException("a scrap of " + width + " x " + height + " gives nothing; measure it, or leave it out");
        }
    }

    /** How many squares of a cut size it gives, in rows and columns. */
    public int squares(Length cut) {
        if (!cut.isPositive()) {
            throw new IllegalArgumentException("squares of " + cut + " can't be cut; use a size above 0");
        }
        return (int) (width.units() / cut.units() * (height.units() / cut.units()));
    }

    /** The largest size, in steps, of which it gives so many squares; zero if there is none. */
    public Length largestFor(int squares, Length step) {
        if (squares < 1 || !step.isPositive()) {
            throw new IllegalArgumentException("can't look for " + squares + " squares in steps of " + step
                    + "; ask for 1 or more, in steps such as 1/8 in");
        }
        Length shorter = Length.min(width, height);
        Length cut = new Length(shorter.units() / step.units() * step.units());
        while (cut.isPositive()) {
            if (squares(cut) >= squares) {
                return cut;
            }
            cut = cut.minus(step);
        }
        return Length.ZERO;
    }

    /** The usual sizes to keep scraps in, cut: 1 1/2 to 5 in (common practice), and how many it gives of each. */
    public String notes() {
        List<String> lines = new ArrayList<>();
        CAUTIONS.forEach(c -> lines.add("! " + c));
        for (String size : List.of("5", "3 1/2", "2 1/2", "2", "1 1/2")) {
            lines.add(squares(Length.parse(size)) + " squares of " + Length.parse(size) + " cut");
        }
        return String.join("\n", lines);
    }
}
