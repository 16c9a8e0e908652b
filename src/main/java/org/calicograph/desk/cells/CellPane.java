package org.calicograph.desk.cells;

import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A passage of the book: a margin on the left, with its pin, and its body. */
public abstract class CellPane extends VBox {

    private static final PseudoClass SMALL = PseudoClass.getPseudoClass("small");
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    protected final String id;
    protected final CellRequests wishes;
    protected final VBox body = new VBox();
    private final Label pin = new Label();
    private final Tooltip said = new Tooltip();
    private double knownWidth = -2;
    private double knownHeight = -1;

    protected CellPane(String id, CellRequests wishes) {
        this.id = id;
        this.wishes = wishes;
        getStyleClass().add("passage");
        setId("cell-" + id);
        pin.getStyleClass().setAll("pin");
        pin.setId("pin-" + id);
        pin.setVisible(false);
        pin.setAccessibleRole(AccessibleRole.BUTTON);
        pin.setTooltip(said);
        pin.setOnMouseClicked(e -> wishes.pinned(id));
        StackPane margin = new StackPane(pin);
        margin.getStyleClass().add("margin");
        margin.setAlignment(Pos.TOP_RIGHT);
        margin.setPadding(new Insets(9, 9, 0, 0));
        body.getStyleClass().add("passage-body");
        body.setMinWidth(80);
        HBox.setHgrow(body, Priority.ALWAYS);
        getChildren().add(new HBox(margin, body));
        addEventFilter(MouseEvent.MOUSE_PRESSED, e -> wishes.chosen(id));
        addEventFilter(ContextMenuEvent.CONTEXT_MENU_REQUESTED, e -> {
            wishes.chosen(id);
            wishes.menu(id, e.getScreenX(), e.getScreenY());
            e.consume();
        });
    }

    public String cellId() {
        return id;
    }

    /** Shows the pin as this mark has it. */
    protected void mark(CellMark mark) {
        pin.setVisible(true);
        pin.setText(mark.sign());
        said.setText(mark.words());
        pin.setAccessibleText((mark.sign().isEmpty() ? "Pin" : "Pin " + mark.sign()) + ", " + mark.words());
        if (!pin.getStyleClass().contains(mark.style())) {
            pin.getStyleClass().setAll("pin", mark.style());
        }
        pin.pseudoClassStateChanged(SMALL, mark.sign().isEmpty());
    }

    /** A passage's height is asked for whenever any changes; it is found anew only when this one has. */
    @Override
    protected double computePrefHeight(double width) {
        if (width != knownWidth || knownHeight < 0) {
            knownHeight = super.computePrefHeight(width);
            knownWidth = width;
        }
        return knownHeight;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    public void requestLayout() {
        knownHeight = -1;
        super.requestLayout();
    }

    /** Shows whether this is the passage that keys go to. */
    public void showChosen(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    /** The text of the passage is now this one. */
    public abstract void showText(String text);

    /** Puts the keyboard where the passage's text is written. */
    public abstract void write();

    /** Puts the keyboard on the passage, without opening its text where it is read. */
    public abstract void focus();

    /** Readies the passage for use, since it is near what is seen. */
    public void wake() { }

    public boolean isAwake() {
        return true;
    }

    /** What is selected in its text; empty if nothing is. */
    public abstract String selected();

    /** Selects a part of its text, where it is written as it is; the keyboard stays where it was. */
    public abstract void select(int start, int end);

    /** Marks where these words stand in it; none for no words. */
    public abstract void seek(String words);

    /** Hides all but the first line, or shows it again. */
    public abstract void fold();

    /** The line that the caret is on, from 1. */
    public abstract int caretLine();

    /** How far below the passage's top the caret's line begins, in pixels. */
    public double caretTop() {
        return 0;
    }
}
