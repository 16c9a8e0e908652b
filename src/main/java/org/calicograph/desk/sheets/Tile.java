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

    private final StackPane frame = new StackPane(new Label("\u2026"));
    private final String words;

    Tile(String words, double side, Runnable take) {
        this.words = words;
        getStyleClass().add("tile");
        frame.setMinSize(side, side);
        frame.setPrefSize(side, side);
        Label label = new Label(words);
        label.getStyleClass().add("tile-words");
        label.setWrapText(true);
        label.setMaxWidth(side);
        setPrefHeight(side + 48);
        setMaxHeight(USE_PREF_SIZE);
        setAlignment(Pos.TOP_LEFT);
        setGraphic(new VBox(5, frame, label));
        setAccessibleText("Take " + words);
        setOnAction(e -> take.run());
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
