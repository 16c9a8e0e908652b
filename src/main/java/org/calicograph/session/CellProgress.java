package org.calicograph.session;

import java.util.List;
import java.util.Optional;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Dial;

/** What the conductor knows of one cell. Only its own thread touches this. */
final class CellProgress {

    final String id;
    String text;
    Optional<CellScan> scan = Optional.empty();
    CellState state = new CellState.Undrawn();
    /** The state to go back to if the cell is taken off the waiting list. */
    CellState before = state;
    /** True if the kernel holds what the present text declares. */
    boolean alive;
    /** True if it is to be drawn. */
    boolean wanted;
    List<Dial> dials = List.of();

    CellProgress(CellSource source) {
        this.id = source.id();
        this.text = source.text();
    }

    boolean drawnBefore() {
        CellState last = state.pending() ? before : state;
        return last instanceof CellState.Done || last instanceof CellState.Failed;
    }
}
