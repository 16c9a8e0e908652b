package org.calicograph.wire;

import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;

/** What a kernel says to its session. */
public sealed interface FromKernel extends Message {

    /** What a question that may be asked at any time comes to. */
    sealed interface Answer extends FromKernel {
        long ticket();
    }

    /** The first words on either socket. */
    record Hello(String token, boolean exhibits, long pid) implements FromKernel { }

    /** Cells can be evaluated now. */
    record Ready(List<Catalogue.Broken> broken) implements FromKernel { }

    record Scanned(long ticket, List<CellScan> scans) implements Answer { }

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
     * What a cell has come to lies painted on the slate. Times are the system's, in nanoseconds, the same for
     * all processes.
     *
     * @param rest  its exhibit with empty pictures
     * @param began when the cell was run
     * @param ran   when it had run
     * @param drawn when its pictures had been painted
     */
    record Sketched(long ticket, String cell, Exhibit rest, List<Painted> pictures, long began, long ran, long drawn)
            implements FromKernel { }

    /**
     * A turn or a delivery has ended.
     *
     * @param anew cells that could not be run again as they were and must be evaluated
     * @param owed cells that were only sketched
     */
    record Turned(long ticket, List<String> anew, List<String> owed) implements FromKernel { }

    record Suggested(long ticket, int anchor, List<Suggestion> suggestions) implements Answer { }

    record Explained(long ticket, List<Signature> signatures) implements Answer { }

    /** @param problems in the order of the text */
    record Checked(long ticket, List<Problem> problems) implements Answer { }

    record Planned(long ticket, CutList list) implements Answer { }

    record Browsed(long ticket, Catalogue catalogue) implements Answer { }
}
