package org.calicograph.desk.sheets;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.PictureView;
import org.calicograph.session.CellState;

/** One variation on a sheet: its picture, small, and the values that make it; pressing it takes it. */
final class Tile extends Button {

    /** What a tile takes around its picture, in pixels. */
    static final double AROUND = 20;

    private final StackPane frame = new StackPane(new Label("\u2026"));
    private final Label name;
    private final String words;

    Tile(String words, Runnable take) {
        this.words = words;
        getStyleClass().add("tile");
        // A measure stays with its unit.
        name = new Label(words.replaceAll("(?<=\\d) (?=\\d+/\\d|(?:in|cm|mm|m|yd)\\b)", "\u00a0"));
        name.getStyleClass().add("tile-words");
        name.setWrapText(true);
        setMaxHeight(USE_PREF_SIZE);
        setAlignment(Pos.TOP_LEFT);
        setGraphic(new VBox(5, frame, name));
        setAccessibleText("Take " + words);
        setOnAction(e -> take.run());
    }

    /** Makes it this large; the picture is square. */
    void side(double side) {
        frame.setMinSize(side, side);
        frame.setPrefSize(side, side);
        frame.setMaxSize(side, side);
        name.setMaxWidth(side);
        setPrefHeight(side + 64);
        frame.getChildren().forEach(n -> {
            if (n instanceof PictureView view) {
                view.setPrefSize(side, side);
            }
        });
    }

    void show(CellState state) {
        if (state instanceof CellState.Done done) {
            ExhibitPane.picture(done.exhibit()).ifPresentOrElse(p -> {
                PictureView view = new PictureView(p, words);
                view.setMouseTransparent(true);
                view.setFocusTraversable(false);
                view.setPrefSize(frame.getPrefWidth(), frame.getPrefHeight());
                frame.getChildren().setAll(view);
            }, () -> tell("no picture"));
        } else if (state instanceof CellState.Failed failed) {
            tell("\u2716 " + failed.failure().message());
        } else {
            tell("not drawn");
        }
    }

    private void tell(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMaxWidth(frame.getPrefWidth() - 12);
        label.getStyleClass().add("tile-words");
        frame.getChildren().setAll(label);
    }
}
