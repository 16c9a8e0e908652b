package org.calicograph.fabric;

import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * A cloth.
 *
 * @param name        what it is called on the shelf; not blank
 * @param colour      the colour it reads as from across the room
 * @param print       how large its print is, which way it runs, and its picture where there is one
 * @param usableWidth the width between the selvedges that can be cut; above 0
 * @param inHand      how much of it there is
 * @param price       what it costs; empty if not known
 */
public record Fabric(String name, Colour colour, Print print, Length usableWidth, InHand inHand, Optional<Price> price) {

    /** What is counted on from quilting cotton sold 42 to 44 in wide, selvedges off (common practice). */
    public static final Length USABLE_WIDTH = Length.inches(40);

    public Fabric {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a fabric of colour " + colour + " has no name; give it one");
        }
        if (!usableWidth.isPositive()) {
            throw new IllegalArgumentException("'" + name + "' has a usable width of " + usableWidth
                    + "; measure it between the selvedges, such as 40 in");
        }
    }

    /** A plain cloth of the usual width, by its name and colour. */
    public static Fabric of(String name, Colour colour) {
        return new Fabric(name, colour, Print.PLAIN, USABLE_WIDTH, InHand.AS_NEEDED, Optional.empty());
    }

    /** A fabric with its colour written as on the web. */
    public static Fabric of(String name, String hex) {
        return of(name, Colour.hex(hex));
    }

    /** A fabric known from a picture of it, true to scale; its colour is the mean of the picture's. */
    public static Fabric of(String name, Cloth picture) {
        return of(name, picture.photo().meanColour()).printed(Print.of(picture));
    }

    /** The same cloth under another name. */
    public Fabric named(String other) {
        return new Fabric(other, colour, print, usableWidth, inHand, price);
    }

    /** In another colour; a picture of the cloth, which would contradict it, is put away. */
    public Fabric coloured(Colour other) {
        return new Fabric(name, other, print.unpictured(), usableWidth, inHand, price);
    }

    /** The same cloth with a print. */
    public Fabric printed(Print other) {
        return new Fabric(name, colour, other, usableWidth, inHand, price);
    }

    /** The same cloth with another usable width. */
    public Fabric wide(Length usable) {
        return new Fabric(name, colour, print, usable, inHand, price);
    }

    /** The same cloth, of which so much is in hand. */
    public Fabric inHand(InHand amount) {
        return new Fabric(name, colour, print, usableWidth, amount, price);
    }

    /** So much of it off the bolt, at its usable width. */
    public Fabric inHand(Length length) {
        return inHand(InHand.of(length));
    }

    /** So much of it in scraps. */
    public Fabric inHand(Area scraps) {
        return inHand(InHand.of(scraps));
    }

    /** The same cloth at a price. */
    public Fabric at(Price cost) {
        return new Fabric(name, colour, print, usableWidth, inHand, Optional.of(cost));
    }

    /** True if a piece of the one may be cut from the other: name, colour, print and width agree, whatever is in hand and what it costs. */
    public boolean isSameClothAs(Fabric other) {
        return bolt().equals(other.bolt());
    }

    /** What makes a cloth the same cloth, for whoever sorts by it. */
    public Bolt bolt() {
        return new Bolt(name, colour, print, usableWidth);
    }

    /** A cloth as it lies in the shop; equal bolts are one cloth for drawing, counting, cutting and buying. */
    public record Bolt(String name, Colour colour, Print print, Length usableWidth) { }

    /** The area in hand; empty if as much as needed can be had. */
    public Optional<Area> areaInHand() {
        return inHand.area(usableWidth);
    }

    @Override
    public String toString() {
        return name;
    }
}
