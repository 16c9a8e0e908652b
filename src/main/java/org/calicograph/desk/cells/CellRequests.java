package org.calicograph.desk.cells;

import org.calicograph.measure.Length;

/** What a cell's pane may ask of the window. Everything is called on JavaFX's thread. */
public interface CellRequests {

    /** The person has turned to this cell. */
    void chosen(String id);

    /** The text of the cell is now this. */
    void edited(String id, String text);

    void draw(String id);

    void turn(String dial, String value);

    /** Something is under the pointer; empty for nothing. */
    void pointedAt(String words);

    /** A new cell behind this one. */
    void addBehind(String id, boolean code);

    Advice advice();

    /** How lengths are written. */
    Length.System lengths();
}
