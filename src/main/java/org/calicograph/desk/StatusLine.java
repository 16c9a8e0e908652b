package org.calicograph.desk;

import java.util.Collection;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.calicograph.session.CellState;
import org.calicograph.session.KernelState;

/** The line at the foot: what is under the pointer, how far the drawing is, whether there is anything to draw with. */
final class StatusLine extends HBox {

    private final Label pointed = new Label();
    private String told = "";
    private String resting = "";
    private final Label progress = new Label();
    private final Label ready = new Label();
    private KernelState able = new KernelState.Starting();
    private boolean drawing;

    StatusLine() {
        super(18);
        getStyleClass().add("status");
        setAlignment(Pos.CENTER_LEFT);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        pointed.setId("pointed");
        progress.setId("progress");
        ready.setId("ready");
        progress.setMinWidth(USE_PREF_SIZE);
        ready.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(pointed, gap, progress, ready);
        nothing();
    }

    void pointedAt(String words) {
        told = words;
        pointed.setText(words.isEmpty() ? resting : words);
    }

    /** The tape is out, or put away. */
    void tape(boolean out) {
        pointedAt(out ? "Tape measure: drag over the picture" : "");
    }

    /** What the line says of what hangs while nothing is pointed at. */
    void rests(String words) {
        resting = words;
        pointedAt(told);
    }

    void stands(KernelState state) {
        able = state;
        tell();
    }

    private void tell() {
        if (able instanceof KernelState.Starting) {
            ready.setText("getting ready");
        } else if (able instanceof KernelState.Ready now) {
            int broken = now.broken().size();
            ready.setText((drawing ? "drawing" : "ready") + (broken == 0 ? "" : "; " + broken + (broken == 1 ? " routine" : " routines") + " left out"));
        } else {
            ready.setText("drawing has ended");
        }
    }

    /** Nothing of this notebook is drawn. */
    void nothing() {
        drawing = false;
        ready.setText("nothing is drawn");
        progress.setText("");
    }

    void progress(Collection<CellState> states, boolean waits) {
        long done = states.stream().filter(s -> s instanceof CellState.Done).count();
        long held = states.stream().filter(CellState::held).count();
        long failed = states.stream().filter(s -> s instanceof CellState.Failed).count() - held;
        long pending = states.stream().filter(CellState::pending).count();
        long older = states.stream().filter(s -> s instanceof CellState.Stale).count();
        StringBuilder words = new StringBuilder(done + " of " + states.size() + " drawn");
        part(words, pending, "to come");
        part(words, failed, failed == 1 ? "needs mending" : "need mending");
        part(words, held, "held");
        part(words, older, "from before the last change");
        if (waits) {
            words.append(". It took long the last time; F8 draws now");
        }
        // Of a book in which nothing was ever drawn there is nothing to count.
        progress.setText(done + failed + held + pending + older == 0 ? "" : words.toString());
        boolean now = pending > 0 && !waits;
        if (now != drawing) {
            drawing = now;
            tell();
        }
    }

    private static void part(StringBuilder words, long count, String what) {
        if (count > 0) {
            words.append(", ").append(count).append(' ').append(what);
        }
    }
}
