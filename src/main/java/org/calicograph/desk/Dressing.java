package org.calicograph.desk;

import javafx.scene.Scene;
import org.calicograph.desk.cells.Column;
import org.calicograph.desk.look.Letters;
import org.calicograph.desk.look.Look;
import org.calicograph.desk.opened.Preferences;

/** How this window looks by a person's own liking: by day or night, with large or small letters, moving or still. */
final class Dressing {

    private final DeskWindow window;
    private final Scene scene;
    private final Preferences preferences;

    Dressing(DeskWindow window, Scene scene, Preferences preferences) {
        this.window = window;
        this.scene = scene;
        this.preferences = preferences;
        dress();
    }

    private void dress() {
        Look.dress(scene, preferences.night(), letters());
        window.header().still(preferences.still());
        window.wall().still(preferences.still());
    }

    Letters letters() {
        return Letters.near(preferences.letters());
    }

    void turnLight() {
        preferences.setNight(!preferences.night());
        dress();
    }

    /** Letters a step larger, or smaller for a number below 0, or as they come for 0; the book is laid out anew with them. */
    void letters(int steps) {
        Letters next = steps == 0 ? Letters.PLAIN : letters().step(steps);
        preferences.setLetters(next.percent());
        dress();
        Column.lettersChange();
        window.layAnew();
        window.status().pointedAt("Letters at " + next.percent() + " %");
    }

    void turnStill() {
        preferences.setStill(!preferences.still());
        dress();
        window.status().pointedAt(preferences.still() ? "Nothing moves by itself now" : "The needle walks along its thread, and chalk fades");
    }
}
