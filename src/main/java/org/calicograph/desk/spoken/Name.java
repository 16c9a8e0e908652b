package org.calicograph.desk.spoken;

import javafx.scene.control.Control;
import javafx.scene.control.Label;

/**
 * The name of a control whose content is written or chosen: a field, a list to choose from, a number to step. A text of its own for
 * listeners would be read in place of what stands in it, so the name is that of a label that belongs to it, on the screen or not.
 */
public final class Name {

    private Name() { }

    /** Names a control in words that stand nowhere on the screen. */
    public static void of(Control control, String words) {
        by(control, apart(words));
    }

    /** A label that is on no screen, to name something by. */
    public static Label apart(String words) {
        Label label = new Label();
        label.setAccessibleText(words);
        return label;
    }

    /** Names a control by a label that stands beside it. */
    public static void by(Control control, Label label) {
        control.setAccessibleText(null);
        label.setLabelFor(control);
    }
}
