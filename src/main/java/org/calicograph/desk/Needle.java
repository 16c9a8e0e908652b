package org.calicograph.desk;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.util.Duration;

/** A needle on a thread in the top band: it moves on while something is drawn, and pressing it holds the work. */
final class Needle extends Button {

    private static final double LONG = 74;
    private static final double STEP = 8;

    private final Line thread = new Line(0, 8, 0, 8);
    private final Polygon needle = new Polygon(0, 6.6, 18, 8, 0, 9.4);
    private final Timeline walk = new Timeline(new KeyFrame(Duration.millis(180), e -> step()));
    private double at;
    private boolean still;

    Needle(Runnable hold) {
        getStyleClass().setAll("needle");
        setId("needle");
        thread.getStyleClass().add("thread");
        needle.getStyleClass().add("needle-steel");
        Pane pane = new Pane(thread, needle);
        pane.setMinSize(LONG + 20, 16);
        pane.setPrefSize(LONG + 20, 16);
        setGraphic(pane);
        walk.setCycleCount(Animation.INDEFINITE);
        setOnAction(e -> hold.run());
        setFocusTraversable(true);
        atWork(0);
    }

    /** @param count how many passages are to be drawn still; 0 for none */
    void atWork(int count) {
        setDisable(count == 0);
        String words = count == 0 ? "Nothing is being drawn" : "Drawing, " + count + " to come; press to hold (Escape)";
        setAccessibleText(words);
        setTooltip(new Tooltip(words));
        if (count == 0) {
            walk.stop();
            at = LONG;
            place();
        } else if (walk.getStatus() != Animation.Status.RUNNING) {
            at = still ? LONG / 2 : 0;
            place();
            if (!still) {
                walk.play();
            }
        }
    }

    /** Lies on the thread instead of walking along it, or walks again. */
    void still(boolean on) {
        still = on;
        if (on) {
            walk.stop();
        } else if (!isDisable()) {
            walk.play();
        }
        place();
    }

    private void step() {
        at = at >= LONG ? 0 : at + STEP;
        place();
    }

    private void place() {
        needle.setTranslateX(at);
        thread.setEndX(at + 1);
    }
}
