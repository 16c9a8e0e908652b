package org.calicograph.desk.wall;

import java.util.Map;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/** What the wall may ask of the window. Everything is called on JavaFX's thread. */
public interface WallRequests {

    /** Something is under the pointer; empty for nothing. */
    void pointedAt(String words);

    /** What is said of a part of what hangs, by the passage it was drawn by. */
    String words(String cell, Picture.Label part);

    /** A part of what hangs was pressed. */
    void picked(String cell, Picture.Label part);

    /** What is cut of a cloth of what hangs is to be seen. */
    void cut(String cloth);

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

    /** The book's last change is to be taken back. */
    void undo();

    /** What was taken back is to be made again. */
    void redo();

    /** One wants to squint, or to look again. */
    void squint();

    /** The tape is to be taken out, or put away. */
    void tape();

    /** Lengths are to be written in inches, or metric. */
    void turnLengths();

    /** How lengths are written. */
    Length.System lengths();
}
