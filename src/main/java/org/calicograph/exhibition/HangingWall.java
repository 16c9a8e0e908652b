package org.calicograph.exhibition;

import org.calicograph.measure.Length;

/**
 * A wall, or a screen, to hang on.
 *
 * @param length that may be hung on, without doors and corners
 * @param height from the floor to the highest that a rod may hang
 */
public record HangingWall(String name, Length length, Length height) {

    /** @throws IllegalArgumentException if it has no size */
    public HangingWall {
        if (!length.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException("the wall '" + name + "' of " + length + " x " + height + " holds nothing; measure what may be hung on");
        }
    }

    /** A wall by its name, its length and the height of its highest rod. */
    public static HangingWall of(String name, Length length, Length height) {
        return new HangingWall(name, length, height);
    }
}
