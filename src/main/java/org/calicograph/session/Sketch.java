package org.calicograph.session;

import java.util.List;
import org.calicograph.drawing.Exhibit;
import org.calicograph.geometry.Box;

/**
 * How a cell looks while a dial is being turned; its exhibit follows when the dial comes to rest.
 *
 * @param rest     the exhibit, but with empty pictures
 * @param pictures the pictures, painted plainly
 * @param moments  on the clock of {@link System#nanoTime}: when the kernel began to run the cell, had run it,
 *                 had painted its pictures, and when the session had fetched them
 */
public record Sketch(Exhibit rest, List<Painting> pictures, List<Long> moments) {

    public Sketch {
        pictures = List.copyOf(pictures);
        moments = List.copyOf(moments);
    }

    /**
     * A picture in pixels.
     *
     * @param part   which picture of the exhibit, from 0
     * @param pixels row after row from the top, each 0xffRRGGBB; not to be changed
     * @param bounds of the picture, in inches
     */
    public record Painting(int part, int width, int height, int[] pixels, Box bounds) { }
}
