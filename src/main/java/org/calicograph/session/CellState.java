package org.calicograph.session;

import java.time.Duration;
import java.time.Instant;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.Failure;

/** How a cell stands. */
public sealed interface CellState {

    /** Not drawn since the notebook was opened. */
    record Undrawn() implements CellState { }

    /** To be drawn, behind others. */
    record Waiting() implements CellState { }

    record Drawing(Instant since) implements CellState { }

    /**
     * Drawn; the exhibit is what its value looks like.
     *
     * @param kind   the class of its value, without its package; empty if it has none
     * @param output what it printed
     * @param time   how long it took in the kernel
     */
    record Done(Exhibit exhibit, String kind, String output, Duration time) implements CellState { }

    record Failed(Failure failure, String output, Duration time) implements CellState { }

    /** Drawn once, but its text or something that it needs has changed since. */
    record Stale() implements CellState { }

    /** True while the session still owes the cell a result. */
    default boolean pending() {
        return this instanceof Waiting || this instanceof Drawing;
    }

    /** True if its drawing was stopped, or ended, because somebody asked. */
    default boolean held() {
        return this instanceof Failed failed && failed.failure() instanceof Failure.Stopped;
    }
}
