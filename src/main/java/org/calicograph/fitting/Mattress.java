package org.calicograph.fitting;

import java.util.List;
import java.util.Locale;
import org.calicograph.measure.Length;

/**
 * A mattress as sold; makers differ by an inch or two, so measure the bed itself.
 *
 * @param region where the name has this size: US, UK, EU or AU
 * @param name   the trade's name, in small letters
 */
public record Mattress(String region, String name, Length width, Length length) {

    /** US sizes in inches: trade tables on the web agree on them (crib: US CPSC, 16 CFR 1219/1241). */
    public static final Mattress CRIB = inches("crib", 28, 52);
    /** The North American twin, 39 x 75 in. */
    public static final Mattress TWIN = inches("twin", 39, 75);
    /** The North American twin XL, 39 x 80 in. */
    public static final Mattress TWIN_XL = inches("twin xl", 39, 80);
    /** The old three-quarter bed, 48 x 75 in. */
    public static final Mattress THREE_QUARTER = inches("three-quarter", 48, 75);
    /** The North American full or double, 54 x 75 in. */
    public static final Mattress FULL = inches("full", 54, 75);
    /** The North American full XL, 54 x 80 in. */
    public static final Mattress FULL_XL = inches("full xl", 54, 80);
    /** The North American queen, 60 x 80 in. */
    public static final Mattress QUEEN = inches("queen", 60, 80);
    /** The North American king, 76 x 80 in. */
    public static final Mattress KING = inches("king", 76, 80);
    /** The western king, 72 x 84 in. */
    public static final Mattress CALIFORNIA_KING = inches("california king", 72, 84);

    private static final List<Mattress> TABLE = List.of(CRIB, TWIN, TWIN_XL, THREE_QUARTER, FULL, FULL_XL, QUEEN, KING, CALIFORNIA_KING,
            cm("UK", "small single", 75, 190), cm("UK", "single", 90, 190), cm("UK", "small double", 120, 190),
            cm("UK", "double", 135, 190), cm("UK", "king", 150, 200), cm("UK", "super king", 180, 200),
            cm("EU", "single", 90, 200), cm("EU", "small double", 120, 200), cm("EU", "double", 140, 200),
            cm("EU", "king", 160, 200), cm("EU", "super king", 180, 200),
            cm("AU", "single", 92, 188), cm("AU", "king single", 107, 203), cm("AU", "double", 138, 188),
            cm("AU", "queen", 153, 203), cm("AU", "king", 183, 203), cm("AU", "super king", 203, 203));

    private static Mattress inches(String name, long width, long length) {
        return new Mattress("US", name, Length.inches(width), Length.inches(length));
    }

    private static Mattress cm(String region, String name, double width, double length) {
        return new Mattress(region, name, Length.cm(width), Length.cm(length));
    }

    public Mattress {
        if (!width.isPositive() || !length.isPositive()) {
            throw new IllegalArgumentException("a mattress of " + width + " x " + length + " is no bed; use sizes above 0");
        }
    }

    /** A bed as measured. */
    public static Mattress measured(Length width, Length length) {
        return new Mattress("own", "measured", width, length);
    }

    /** All that the table holds. */
    public static List<Mattress> table() {
        return TABLE;
    }

    /** @throws IllegalArgumentException listing the region's names, if there is no such mattress */
    public static Mattress named(String region, String name) {
        String r = region.toUpperCase(Locale.ROOT);
        String n = name.toLowerCase(Locale.ROOT);
        return TABLE.stream().filter(m -> m.region.equals(r) && m.name.equals(n)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no " + r + " mattress named '" + name + "'; the table has "
                        + String.join(", ", TABLE.stream().filter(m -> m.region.equals(r)).map(Mattress::name).toList())
                        + (TABLE.stream().anyMatch(m -> m.region.equals(r)) ? "" : "only the regions US, UK, EU and AU")
                        + ", or give a bed as measured"));
    }

    @Override
    public String toString() {
        Length.System system = region.equals("US") || region.equals("own") ? Length.System.INCH : Length.System.METRIC;
        return region + " " + name + ", " + width.in(system) + " x " + length.in(system);
    }
}
