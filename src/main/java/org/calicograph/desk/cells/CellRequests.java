package org.calicograph.desk.cells;

import org.calicograph.drawing.Exhibit;
import org.calicograph.session.Sketch;

/** What a passage of the book may ask of the window. Everything is called on JavaFX's thread. */
public interface CellRequests {

    /** The person has turned to this passage. */
    void chosen(String id);

    /** The text of the passage is now this. */
    void edited(String id, String text);

    /** What the passage came to is this; its pictures hang on the wall. */
    void drew(String id, Exhibit exhibit, boolean current);

    /** What hangs of the passage is from before the last change now, or is not. */
    void current(String id, boolean current);

    /** A sketch of what the passage will come to. */
    void sketched(String id, Sketch sketch);

    /** The pin was pressed: its picture is to hang large. */
    void pinned(String id);

    /** Something is under the pointer; empty for nothing. */
    void pointedAt(String words);

    /** A new passage behind this one: working lines, or words. */
    void addBehind(String id, boolean code);

    /** What can be done with this passage was asked for, at a place on the screen. */
    void menu(String id, double x, double y);

    /** These words were written, and the hand has left them. */
    void leftWords(String id, String text);

    Advice advice();
}
