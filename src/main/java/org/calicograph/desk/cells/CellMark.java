package org.calicograph.desk.cells;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.calicograph.session.CellState;

/**
 * How a passage's pin looks and what it says, so that colour is never the only sign: a full pin is current, a hollow
 * one from before the last change or held, a crossed one needs mending.
 *
 * @param sign  what stands in the pin
 * @param style the style class that goes with it
 * @param words what it says to whoever points at it or listens
 */
public record CellMark(String sign, String style, String words) {

    /** @param pin the number of the passage's picture on the wall, if it has one */
    public static CellMark of(CellState state, boolean saved, Optional<Integer> pin, Instant now) {
        String number = pin.map(String::valueOf).orElse("");
        if (state.held()) {
            return new CellMark(number, "pin-older", "held; F8 draws it now");
        } else if (state instanceof CellState.Failed) {
            return new CellMark(number.isEmpty() ? "\u00d7" : number + "\u00d7", "pin-failed", "needs mending");
        } else if (state instanceof CellState.Drawing drawing) {
            return new CellMark(number.isEmpty() ? "\u2026" : number, "pin-waiting",
                    "is being drawn, " + time(Duration.between(drawing.since(), now)) + "; Escape holds it");
        } else if (state instanceof CellState.Waiting) {
            return new CellMark(number.isEmpty() ? "\u2026" : number, "pin-waiting", "waits its turn");
        } else if (state instanceof CellState.Done done) {
            return new CellMark(number, "pin-current", "current, drawn in " + time(done.time()));
        } else if (state instanceof CellState.Undrawn) {
            return new CellMark(number, "pin-older", saved ? "as saved in the file" : "not drawn yet");
        }
        return new CellMark(number, "pin-older", "from before the last change; F8 draws now");
    }

    public static String time(Duration time) {
        long ms = Math.max(0, time.toMillis());
        if (ms < 1000) {
            return ms + " ms";
        }
        return ms < 60_000 ? String.format(Locale.ROOT, "%.1f s", ms / 1000.0) : ms / 60_000 + " min " + ms / 1000 % 60 + " s";
    }
}
