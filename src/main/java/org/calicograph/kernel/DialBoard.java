package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.wire.Dial;

/**
 * The dials of this kernel: the values that they are to have, and which piece of which cell declared
 * each. There is one board for the process, because the word {@code dial} is a static method.
 */
final class DialBoard {

    /** Thrown at a cell whose dial can't take the value it is set to. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;
        final transient String dial;

        Refused(String dial, String why) {
            super(why);
            this.dial = dial;
        }
    }

    private record Declared(Piece piece, Dial dial) { }

    private static final Map<String, String> VALUES = new LinkedHashMap<>();
    private static final Map<String, Declared> DECLARED = new LinkedHashMap<>();
    private static Piece current = Piece.NONE;

    private DialBoard() { }

    static synchronized void set(Map<String, String> values) {
        VALUES.clear();
        VALUES.putAll(values);
    }

    static synchronized void at(Piece piece) {
        current = piece;
    }

    static synchronized String cell() {
        return current.cell();
    }

    /** The dial at the value it is to have. */
    static synchronized <D extends Dial> D take(D declared) {
        if (declared.name().isBlank()) {
            throw new IllegalArgumentException("A dial has no name, so nobody could turn it; give it one, as in dial(\"points\", 5, 16, 12).");
        }
        Declared other = DECLARED.get(declared.name());
        if (other != null && other.piece != current && !(other.piece.cell().equals(current.cell()) && other.piece.source().equals(current.source()))) {
            throw new IllegalArgumentException("The dial '" + declared.name() + "' is declared twice"
                    + (other.piece.cell().equals(current.cell()) ? " in this cell" : ", also in cell " + other.piece.cell())
                    + ". Give one of the two another name.");
        }
        String value = VALUES.get(declared.name());
        Dial turned = declared;
        if (value != null) {
            try {
                turned = declared.turnedTo(value);
            } catch (IllegalArgumentException e) {
                throw new Refused(declared.name(), e.getMessage());
            }
        }
        DECLARED.put(declared.name(), new Declared(current, turned));
        @SuppressWarnings("unchecked") // turning keeps the kind
        D same = (D) turned;
        return same;
    }

    static synchronized void forget(String cell) {
        DECLARED.values().removeIf(d -> d.piece.cell().equals(cell));
    }

    static synchronized List<Dial> of(String cell) {
        List<Dial> dials = new ArrayList<>();
        DECLARED.values().stream().filter(d -> d.piece.cell().equals(cell)).forEach(d -> dials.add(d.dial));
        return dials;
    }

    /** The pieces whose dials stand elsewhere than the values say. */
    static synchronized List<Piece> turned() {
        List<Piece> pieces = new ArrayList<>();
        DECLARED.values().stream().filter(d -> VALUES.containsKey(d.dial.name()) && !VALUES.get(d.dial.name()).equals(d.dial.text()))
                .forEach(d -> pieces.add(d.piece));
        return pieces;
    }

    static synchronized boolean declares(Piece piece) {
        return DECLARED.values().stream().anyMatch(d -> d.piece == piece);
    }
}
