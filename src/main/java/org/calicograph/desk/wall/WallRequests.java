package org.calicograph.desk.wall;

import org.calicograph.measure.Length;

/** What the wall may ask of the window. Everything is called on JavaFX's thread. */
public interface WallRequests {

    /** Something is under the pointer; empty for nothing. */
    void pointedAt(String words);

    /** A part of what hangs was pressed: the passage it was drawn by, and the part's title. */
    void picked(String cell, String title);

    /** The passage whose picture hangs is this one now. */
    void hung(String cell);

    void turn(String dial, String value);

    /** How lengths are written. */
    Length.System lengths();
}
