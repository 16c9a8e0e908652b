package org.calicograph.desk.results;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.calicograph.drawing.Exhibit;
import org.calicograph.session.Sketch;

/** A picture with its caption. */
final class Framed extends VBox {

    private final PictureView view;
    private final Label caption = new Label();

    Framed(Exhibit.Drawn drawn, Consumer<String> onPoint) {
        super(4);
        view = new PictureView(drawn.picture(), drawn.caption());
        view.onPoint(onPoint);
        VBox.setVgrow(view, Priority.ALWAYS);
        caption.getStyleClass().add("caption");
        caption.setWrapText(true);
        caption.setMinHeight(USE_PREF_SIZE);
        getChildren().add(view);
        caption(drawn.caption());
    }

    PictureView view() {
        return view;
    }

    /** What the caption takes of the height. */
    double beneath(double width) {
        return getChildren().contains(caption) ? caption.prefHeight(width) + 4 : 0;
    }

    void show(Exhibit.Drawn drawn) {
        view.show(drawn.picture(), drawn.caption());
        caption(drawn.caption());
    }

    void sketch(Sketch.Painting painting, String words) {
        view.sketch(painting, words);
        caption(words);
    }

    private void caption(String text) {
        if (text.equals(caption.getText()) && getChildren().contains(caption) != text.isBlank()) {
            return;
        }
        caption.setText(text);
        getChildren().remove(caption);
        if (!text.isBlank()) {
            getChildren().add(caption);
        }
    }
}
