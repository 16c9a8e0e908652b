package org.calicograph.desk.wall;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** What is wanted all the time, in words at the wall's upper edge: taking back, squinting, the tape, inches or metric. All of it has keys too. */
final class Handles extends HBox {

    private final Button undo = handle(new Button("Undo"), "Takes the last change of the book back (Ctrl+Z)");
    private final Button redo = handle(new Button("Redo"), "Makes the change again that was taken back (Ctrl+Shift+Z)");
    private final ToggleButton squint = handle(new ToggleButton("Squint"), "Shows light and dark alone (F6)");
    private final ToggleButton tape = handle(new ToggleButton("Tape"), "Measures by dragging over the picture (F7)");
    private final ToggleButton metric = handle(new ToggleButton("Metric"), "Writes lengths in centimetres, or in inches again (Ctrl+Shift+U)");

    Handles(WallRequests asks) {
        super(4);
        getStyleClass().add("handles");
        setAlignment(Pos.CENTER_RIGHT);
        setMinWidth(USE_PREF_SIZE);
        undo.setOnAction(e -> asks.undo());
        redo.setOnAction(e -> asks.redo());
        squint.setOnAction(e -> asks.squint());
        tape.setOnAction(e -> asks.tape());
        metric.setOnAction(e -> asks.turnLengths());
        getChildren().setAll(undo, redo, squint, tape, metric);
        change(false, false);
    }

    /** The keyboard stays where one writes. */
    private static <B extends ButtonBase> B handle(B button, String spoken) {
        button.setId("handle-" + button.getText().toLowerCase(java.util.Locale.ROOT));
        button.getStyleClass().add("at-edge");
        button.setFocusTraversable(false);
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(spoken);
        button.setTooltip(new Tooltip(spoken));
        return button;
    }

    /** Which way the book's changes can be gone. */
    void change(boolean back, boolean on) {
        undo.setDisable(!back);
        redo.setDisable(!on);
    }

    void squint(boolean on) {
        squint.setSelected(on);
    }

    void tape(boolean out) {
        tape.setSelected(out);
    }

    void metric(boolean on) {
        metric.setSelected(on);
    }
}
