package org.calicograph.fabric;

import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.measure.Length;

/**
 * A picture of cloth that repeats over it, true to scale.
 *
 * @param photo  one repeat
 * @param repeat how wide the photo is on the cloth; above 0
 */
public record Cloth(Photo photo, Length repeat) {

    public Cloth {
        if (!repeat.isPositive()) {
            throw new IllegalArgumentException("a picture of cloth repeats every " + repeat
                    + "; measure how wide the picture is on the cloth");
        }
    }

    /** How high the photo is on the cloth. */
    public Length height() {
        return repeat.times((double) photo.height() / photo.width());
    }

    /** The colour at a place on the cloth, in inches; the picture repeats in both directions. */
    public Colour at(double x, double y) {
        double scale = photo.width() / repeat.inInches();
        return Colour.packed(photo.pixel(Math.floorMod((long) Math.floor(x * scale), photo.width()),
                Math.floorMod((long) Math.floor(y * scale), photo.height())) & 0xFFFFFF);
    }
}
