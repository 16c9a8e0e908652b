package org.calicograph.desk.results;

import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import org.calicograph.measure.Length;

/** A tape measure over a picture: from where it was begun to the pointer, with its length. */
final class Tape extends Pane {

    private final Line line = new Line();
    private final Label length = new Label();

    Tape() {
        setManaged(false);
        setMouseTransparent(true);
        line.getStyleClass().add("tape");
        length.getStyleClass().add("tape-length");
        getChildren().addAll(line, length);
        clear();
    }

    boolean isEmpty() {
        return !line.isVisible();
    }

    void clear() {
        line.setVisible(false);
        length.setVisible(false);
    }

    /**
     * Lays the tape.
     *
     * @param scale pixels an inch
     * @return what it says: the length, and the nearest eighth of an inch where that is another
     */
    String stretch(double x, double y, double toX, double toY, double scale) {
        line.setStartX(x);
        line.setStartY(y);
        line.setEndX(toX);
        line.setEndY(toY);
        String words = words(Math.hypot(toX - x, toY - y) / scale);
        length.setText(words);
        length.autosize();
        length.relocate((x + toX) / 2 + 8, (y + toY) / 2 - 26);
        line.setVisible(true);
        length.setVisible(true);
        return "tape: " + words;
    }

    /** A length in inches as a tape reads it: two decimals, and the nearest eighth. */
    static String words(double inches) {
        double two = Math.rint(inches * 100) / 100;
        double eighth = Math.rint(inches * 8) / 8;
        String near = Length.inches(eighth).toString();
        return two == eighth ? near : String.format(java.util.Locale.ROOT, "%.2f in", two) + ", nearest " + near;
    }
}
