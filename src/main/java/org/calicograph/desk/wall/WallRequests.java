package org.calicograph.desk.wall;

import java.util.Map;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/** What the wall may ask of the window. Everything is called on JavaFX's thread. */
public interface WallRequests {

    /** Something is under the pointer; empty for nothing. */
    void pointedAt(String words);

    /** A part of what hangs was pressed: the passage it was drawn by, and the part's title. */
    void picked(String cell, String title);

    /** The passage whose picture hangs is this one now. */
    void hung(String cell);

    /** A call of a routine was set down on the wall. */
    void put(String call);

    /** A dial was set down on the wall: what hangs is to be laid across it over the dial's values. */
    void spread(String dial);

    /**
     * A swatch was set down on a patch of what hangs.
     *
     * @param picture which of the passage's pictures, from 0
     * @param place   on it, in inches
     * @param cloth   that the patch has
     * @param swatch  the cloth that it is to have
     */
    void dye(int picture, Point place, String cloth, String swatch);

    /** The cloths that the book names, with their colours. */
    Map<String, Colour> cloths();

    void turn(String dial, String value);

    /** How lengths are written. */
    Length.System lengths();
}
