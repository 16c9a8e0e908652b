package org.calicograph.session;

import java.util.List;
import org.calicograph.wire.Dial;

/** What a session tells, one call after another, always on the same thread of its own. */
public interface SessionListener {

    /** A cell stands otherwise than before. */
    default void stands(String cell, CellState state) { }

    /**
     * A cell that is being drawn because of a dial looks like this by now. Told at once, on another thread than
     * the rest, and before the state that follows from it; to be taken note of quickly.
     */
    default void sketched(String cell, Sketch sketch) { }

    /** The dials of the notebook, in the order of their cells; told whenever one has come, gone or turned. */
    default void dials(List<Dial> dials) { }

    /** The kernel stands otherwise than before. */
    default void kernel(KernelState state) { }

    SessionListener NONE = new SessionListener() { };
}
