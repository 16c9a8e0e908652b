package org.calicograph.colour;

/**
 * A named colour and how much of it there is.
 *
 * @param share the part of the whole, from 0 to 1
 */
public record Swatch(String name, Colour colour, double share) {

    public Swatch {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("the swatch '" + name + "' is " + share + " of the whole; use 0 to 1");
        }
    }
}
