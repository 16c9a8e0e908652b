package org.calicograph.desk.cells;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.css.PseudoClass;

/** A cell in the column: a narrow rail with its name on the left, its body, and room for dials on the right. */
public abstract class CellPane extends VBox {

    static final double RAIL = 56;
    static final double DIALS = 232;
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    protected final String id;
    protected final CellRequests wishes;
    protected final VBox body = new VBox();
    protected final VBox margin = new VBox(12);
    private final Label name;
    private double knownWidth = -2;
    private double knownHeight = -1;

    protected CellPane(String id, CellRequests wishes) {
        this.id = id;
        this.wishes = wishes;
        getStyleClass().add("cell");
        setId("cell-" + id);
        name = new Label(id);
        name.getStyleClass().add("cell-name");
        StackPane rail = new StackPane(name);
        rail.getStyleClass().add("rail");
        rail.setAlignment(Pos.TOP_RIGHT);
        rail.setMinWidth(RAIL);
        rail.setPrefWidth(RAIL);
        rail.setPadding(new Insets(10, 12, 0, 0));
        body.getStyleClass().add("cell-body");
        body.setMinWidth(120);
        HBox.setHgrow(body, Priority.ALWAYS);
        margin.setMinWidth(DIALS);
        margin.setPrefWidth(DIALS);
        margin.setMaxWidth(DIALS);
        margin.setPadding(new Insets(6, 0, 0, 20));
        getChildren().addAll(new HBox(rail, body, margin), between());
        addEventFilter(MouseEvent.MOUSE_PRESSED, e -> wishes.chosen(id));
    }

    public String cellId() {
        return id;
    }

    /** A cell's height is asked for whenever any cell changes; it is found anew only when this one has. */
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

    /** Between two cells: quiet buttons for a new one. */
    private Node between() {
        Button code = button("Write code here", "Add a code cell behind " + id, true);
        Button prose = button("Write prose here", "Add a prose cell behind " + id, false);
        HBox row = new HBox(6, code, prose);
        row.getStyleClass().add("between");
        row.setPadding(new Insets(0, 0, 0, RAIL));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Button button(String text, String spoken, boolean code) {
        Button button = new Button(text);
        button.getStyleClass().add("between-button");
        button.setAccessibleText(spoken);
        button.setTooltip(new Tooltip(spoken));
        button.setFocusTraversable(false);
        button.setOnAction(e -> wishes.addBehind(id, code));
        return button;
    }

    /** Shows whether this is the cell that keys go to. */
    public void showChosen(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
        name.setText(chosen ? "\u25b8 " + id : id);
    }

    /** The text of the cell is now this one. */
    public abstract void showText(String text);

    /** Puts the keyboard where the cell's text is written. */
    public abstract void write();

    /** Puts the keyboard on the cell, without opening its text where it is read. */
    public abstract void focus();

    /** Readies the cell for use, since it is near what is seen. */
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

    static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }
}
