package org.calicograph.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionListener;

/**
 * How far a long run has come: a bar that is drawn over where there is a terminal, and else a plain line
 * every few seconds. Short runs show nothing.
 */
final class Progress implements SessionListener {

    private static final Duration SHORT = Duration.ofMillis(1200);
    private static final Duration PLAIN = Duration.ofSeconds(5);
    private static final int WIDTH = 24;

    private final PrintWriter err;
    private final boolean quiet;
    private final boolean terminal = Terminal.isThere();
    private Instant began = Instant.now();
    private Instant told = began;
    private int cells;
    private int done;
    private boolean shown;

    Progress(PrintWriter err, boolean quiet) {
        this.err = err;
        this.quiet = quiet;
    }

    synchronized void begin(int count) {
        cells = count;
        done = 0;
        began = Instant.now();
        told = began;
    }

    @Override
    public synchronized void stands(String cell, CellState state) {
        if (state instanceof CellState.Done || state instanceof CellState.Failed) {
            done = Math.min(cells, done + 1);
        }
        Duration soFar = Duration.between(began, Instant.now());
        if (quiet || cells == 0 || soFar.compareTo(SHORT) < 0) {
            return;
        }
        if (terminal) {
            int full = done * WIDTH / cells;
            err.print("\r[" + "=".repeat(full) + " ".repeat(WIDTH - full) + "] " + done + " of " + cells + " cells, cell " + cell + ", " + soFar.toSeconds() + " s ");
            err.flush();
            shown = true;
        } else if (Duration.between(told, Instant.now()).compareTo(PLAIN) >= 0) {
            err.println(done + " of " + cells + " cells drawn, " + soFar.toSeconds() + " s");
            told = Instant.now();
        }
    }

    synchronized void end() {
        if (shown) {
            err.print("\r" + " ".repeat(WIDTH + 60) + "\r");
            err.flush();
            shown = false;
        }
        cells = 0;
    }
}
