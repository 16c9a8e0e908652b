package org.calicograph.wire;

import java.util.List;
import java.util.Map;

/** What a session says to its kernel. A ticket comes back with the answer. */
public sealed interface ToKernel extends Message {

    /** The exit code of a kernel whose session is gone. */
    int LOST = 113;
    /** The exit code of a kernel that had no memory left for its own work. */
    int NO_MEMORY = 114;

    /** What do these cells declare, read and write? Answered at any time, by {@link FromKernel.Scanned}. */
    record Scan(long ticket, List<String> cells, List<String> texts) implements ToKernel { }

    /**
     * Evaluate a cell, in place of what it was before; answered by {@link FromKernel.Began} and
     * {@link FromKernel.Evaluated}.
     *
     * @param dials values of dials that are not where their cell puts them
     * @param stale cells whose values are out of date and may be let go
     */
    record Evaluate(long ticket, String cell, String text, Map<String, String> dials, List<String> stale) implements ToKernel { }

    /**
     * Run compiled cells again with other dial values; answered by one {@link FromKernel.Evaluated} for each cell
     * that changed, then {@link FromKernel.Turned}. A cell all of whose pictures have an easel is answered by
     * {@link FromKernel.Sketched} instead, and its exhibit is owed until a {@link Deliver} asks for it.
     *
     * @param cells  those that may be run again, in order
     * @param slate  the file of the {@link SharedPixels} to paint on, with the easels in their order; empty if there are none
     */
    record Turn(long ticket, Map<String, String> dials, List<String> cells, String slate, List<PixelFrame> easels) implements ToKernel { }

    /** Send what is owed for these cells; answered by one {@link FromKernel.Evaluated} for each, then {@link FromKernel.Turned}. */
    record Deliver(long ticket, List<String> cells) implements ToKernel { }

    /** Stop the code that runs now, if any does. */
    record Stop() implements ToKernel { }

    /** Let go of what these cells declared. */
    record Forget(List<String> cells) implements ToKernel { }

    /**
     * How could the text go on at the offset?
     *
     * @param before the texts of cells that have not been evaluated and whose names are wanted too
     */
    record Complete(long ticket, String cell, List<String> before, String text, int offset) implements ToKernel { }

    /** Which method is being called, or what is named, at the offset? */
    record Explain(long ticket, String cell, List<String> before, String text, int offset) implements ToKernel { }

    /**
     * What will the compiler object to in this text? Answered at any time, by {@link FromKernel.Checked}; nothing
     * is run, and of several only the newest is looked into.
     *
     * @param others the other cells, and {@code texts} what stands in them
     */
    record Check(long ticket, String cell, String text, List<String> others, List<String> texts) implements ToKernel { }

    /**
     * How is what this cell came to cut? Answered by {@link FromKernel.Planned}, once what was asked before is done; the plan itself is
     * reckoned beside whatever is asked next.
     */
    record Plan(long ticket, String cell) implements ToKernel { }

    /** What does the stdlib hold? */
    record Browse(long ticket) implements ToKernel { }
}
