package org.calicograph.command.output;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionListener;

/** How far a long run has come: a bar that is drawn over, on a terminal only. Short runs show nothing. */
public final class Progress implements SessionListener {

    private static final Duration SHORT = Duration.ofMillis(1200);
    private static final int WIDTH = 24;

    private final PrintWriter err;
    private final boolean quiet;
    private final boolean terminal = Terminal.isThere();
    private Instant began = Instant.now();
    private int cells;
    private int done;
    private boolean shown;

    public Progress(PrintWriter err, boolean quiet) {
        this.err = err;
        this.quiet = quiet;
    }

    public synchronized void begin(int count) {
        cells = count;
        done = 0;
        began = Instant.now();
    }

    @Override
    public synchronized void stands(String cell, CellState state) {
        if (state instanceof CellState.Done || state instanceof CellState.Failed) {
            done = Math.min(cells, done + 1);
        }
        Duration soFar = Duration.between(began, Instant.now());
        if (quiet || !terminal || cells == 0 || soFar.compareTo(SHORT) < 0) {
            return;
        }
        int full = done * WIDTH / cells;
        err.print("\r[" + "=".repeat(full) + " ".repeat(WIDTH - full) + "] " + done + " of " + cells + " cells, cell " + cell + ", " + soFar.toSeconds() + " s ");
        err.flush();
        shown = true;
    }

    public synchronized void end() {
        if (shown) {
            err.print("\r" + " ".repeat(WIDTH + 60) + "\r");
            err.flush();
            shown = false;
        }
        cells = 0;
    }
}
