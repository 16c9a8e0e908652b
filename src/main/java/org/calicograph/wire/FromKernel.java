package org.calicograph.wire;

import java.util.List;
import java.util.Optional;

/** What a kernel says to its session. */
public sealed interface FromKernel extends Message {

    /** The first words on either socket. */
    record Hello(String token, boolean exhibits, long pid) implements FromKernel { }

    /** Cells can be evaluated now. */
    record Ready(List<Catalogue.Broken> broken) implements FromKernel { }

    record Scanned(long ticket, List<CellScan> scans) implements FromKernel { }

    /** The kernel turns to this cell now. */
    record Began(long ticket, String cell) implements FromKernel { }

    /**
     * A cell has ended.
     *
     * @param failure why it has no value; empty if all went well
     * @param exhibit true if an exhibit with this ticket and cell is on its way on the other socket
     * @param kind    the class of its value, without its package; empty if it has none
     * @param output  what it printed
     * @param dials   those that the cell declares now
     * @param nanos   how long it took
     */
    record Evaluated(long ticket, String cell, Optional<Failure> failure, boolean exhibit, String kind, String output,
                     List<Dial> dials, long nanos) implements FromKernel { }

    /**
     * A turn has ended.
     *
     * @param anew cells that could not be run again as they were and must be evaluated
     */
    record Turned(long ticket, List<String> anew) implements FromKernel { }

    record Suggested(long ticket, int anchor, List<Suggestion> suggestions) implements FromKernel { }

    record Explained(long ticket, List<Signature> signatures) implements FromKernel { }

    record Browsed(long ticket, Catalogue catalogue) implements FromKernel { }
}
