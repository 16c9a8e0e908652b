package org.calicograph.quilting;

import org.calicograph.measure.Length;

/**
 * The layer in the middle, and how far apart its maker lets the quilting lie. The figures here are
 * common ones; the package in hand says what holds.
 */
public record Batting(String name, Length widestGap) {

    /** Where the maker states nothing: 1 to 2 in is the usual advice, so 2 in at most. */
    public static final Batting UNKNOWN = new Batting("batting of unknown make", Length.inches(2));
    /** Cotton needled to a scrim; it may be quilted far apart. */
    public static final Batting COTTON_WITH_SCRIM = new Batting("needle-punched cotton with scrim", Length.inches(8));
    /** Four parts of cotton to one of polyester. */
    public static final Batting COTTON_POLYESTER = new Batting("80/20 cotton and polyester", Length.inches(3));
    /** Wool, warm and light. */
    public static final Batting WOOL = new Batting("wool", Length.inches(3));
    /** Polyester, which keeps its loft. */
    public static final Batting POLYESTER = new Batting("polyester", Length.inches(3));

    public Batting {
        if (!widestGap.isPositive()) {
            throw new IllegalArgumentException("batting '" + name + "' allows a gap of " + widestGap + "; read its package for one above 0");
        }
    }
}
