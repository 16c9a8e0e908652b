package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;

/** A cell in the kernel. */
final class KernelCell {

    /** What a cell has come to, where only a sketch of it has been told. */
    record Owed(Exhibit exhibit, String kind, long nanos) { }

    final String text;
    final List<Piece> pieces = new ArrayList<>();
    /** True if every piece has been compiled, so that they can be run again. */
    boolean complete;
    Optional<Owed> owed = Optional.empty();

    KernelCell(String text) {
        this.text = text;
    }

    /** What its last piece came to; empty if it came to nothing, or not all of it was run. */
    Optional<Object> value() {
        return complete && !pieces.isEmpty() ? Optional.ofNullable(pieces.get(pieces.size() - 1).value) : Optional.empty();
    }

    /** How many letters its pieces have printed. */
    int printed() {
        return pieces.stream().mapToInt(p -> p.output.length()).sum();
    }
}
