package org.calicograph.desk.sheets;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.PictureView;
import org.calicograph.geometry.Box;
import org.calicograph.session.CellState;

/** One variation on a sheet: its picture, small, and the values that make it; pressing it takes it. */
final class Tile extends Button {

    /** What a tile takes around its picture, in pixels. */
    static final double AROUND = 20;

    private final StackPane frame = new StackPane(new Label("\u2026"));
    private final Label name;
    private final String words;
    private final Runnable hung;
    private Optional<PictureView> view = Optional.empty();

    /** @param hung told when its picture is there */
    Tile(String words, Runnable take, Runnable hung) {
        this.words = words;
        this.hung = hung;
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
        view.ifPresent(v -> v.setPrefSize(side, side));
    }

    void show(CellState state) {
        if (state instanceof CellState.Done done) {
            ExhibitPane.picture(done.exhibit()).ifPresentOrElse(p -> {
                PictureView made = new PictureView(p, words);
                made.setMouseTransparent(true);
                made.setFocusTraversable(false);
                made.setPrefSize(frame.getPrefWidth(), frame.getPrefHeight());
                frame.getChildren().setAll(made);
                view = Optional.of(made);
                hung.run();
            }, () -> tell("no picture"));
        } else if (state instanceof CellState.Failed failed) {
            tell("\u2716 " + failed.failure().message());
        } else {
            tell("not drawn");
        }
    }

    /** How large its picture is, in inches; nothing while there is none. */
    Optional<Box> size() {
        return view.map(PictureView::box);
    }

    /** Shows its picture no larger than one of this size would be. */
    void toScaleOf(double width, double height) {
        view.ifPresent(v -> v.toScaleOf(width, height));
    }

    private void tell(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMaxWidth(frame.getPrefWidth() - 12);
        label.getStyleClass().add("tile-words");
        frame.getChildren().setAll(label);
    }
}
