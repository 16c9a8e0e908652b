package org.calicograph.desk.cells;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.calicograph.session.CellState;

/** How a cell stands, in words and with a mark, so that colour is never the only sign. */
public final class CellMark {

    private CellMark() { }

    public static String words(CellState state, Instant now) {
        if (state instanceof CellState.Undrawn) {
            return "\u25cb  not drawn yet";
        } else if (state instanceof CellState.Waiting) {
            return "\u2026  waits its turn";
        } else if (state instanceof CellState.Drawing drawing) {
            return "\u25d0  drawing, " + time(Duration.between(drawing.since(), now)) + "; Escape stops it";
        } else if (state instanceof CellState.Done done) {
            return "\u2713  drawn in " + time(done.time()) + (done.kind().isBlank() ? "" : ", " + done.kind());
        } else if (state instanceof CellState.Failed failed) {
            return "\u2716  failed after " + time(failed.time());
        }
        return "\u25cc  stale: drawn before the last change; Ctrl+Enter draws it again";
    }

    /** The style class that goes with it. */
    public static String style(CellState state) {
        return "standing-" + state.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    public static String time(Duration time) {
        long ms = Math.max(0, time.toMillis());
        if (ms < 1000) {
            return ms + " ms";
        }
        return ms < 60_000 ? String.format(Locale.ROOT, "%.1f s", ms / 1000.0) : ms / 60_000 + " min " + ms / 1000 % 60 + " s";
    }
}
