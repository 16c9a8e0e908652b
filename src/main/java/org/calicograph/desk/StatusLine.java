package org.calicograph.desk;

import java.util.Collection;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.calicograph.session.CellState;
import org.calicograph.session.KernelState;

/** The line at the foot: what is under the pointer, how far the drawing is, how the kernel stands. */
final class StatusLine extends HBox {

    private final Label pointed = new Label();
    private final Label progress = new Label();
    private final Label kernel = new Label("no kernel: nothing is drawn yet");

    StatusLine() {
        super(18);
        getStyleClass().add("status");
        setAlignment(Pos.CENTER_LEFT);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        pointed.setId("pointed");
        progress.setId("progress");
        kernel.setId("kernel");
        progress.setMinWidth(USE_PREF_SIZE);
        kernel.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(pointed, gap, progress, kernel);
    }

    void pointedAt(String words) {
        pointed.setText(words);
    }

    void kernel(KernelState state) {
        if (state instanceof KernelState.Starting) {
            kernel.setText("kernel starting");
        } else if (state instanceof KernelState.Ready ready) {
            kernel.setText(ready.broken().isEmpty() ? "kernel ready"
                    : "kernel ready; " + ready.broken().size() + " stdlib file(s) left out");
        } else {
            kernel.setText("kernel ended");
        }
    }

    void noKernel() {
        kernel.setText("no kernel");
        progress.setText("");
    }

    void progress(Collection<CellState> states) {
        long done = states.stream().filter(s -> s instanceof CellState.Done).count();
        long failed = states.stream().filter(s -> s instanceof CellState.Failed).count();
        long pending = states.stream().filter(CellState::pending).count();
        long stale = states.stream().filter(s -> s instanceof CellState.Stale).count();
        StringBuilder words = new StringBuilder(done + " of " + states.size() + " drawn");
        part(words, pending, "to come");
        part(words, failed, "failed");
        part(words, stale, "stale");
        progress.setText(words.toString());
    }

    private static void part(StringBuilder words, long count, String what) {
        if (count > 0) {
            words.append(", ").append(count).append(' ').append(what);
        }
    }
}
