package org.calicograph.turning;

import java.util.List;
import java.util.Set;
import org.calicograph.covering.DesignException;

/**
 * A border's units in a row, repeated without end.
 *
 * @param turns how each unit lies: as drafted, turned by a half, mirrored, or both
 * @param own   the turns that leave the unit as it is
 */
public record Frieze(List<Turn> turns, Set<Turn> own) {

    public Frieze {
        turns = List.copyOf(turns);
        own = Set.copyOf(own);
        if (turns.isEmpty()) {
            throw new DesignException("a border of no units has no pattern; give at least one");
        }
    }

    /** The frieze group by its international short name: one of seven. */
    public String group() {
        boolean half = has(new Turn(2, false), false) || has(new Turn(2, false), true);
        boolean upright = has(new Turn(0, true), false) || has(new Turn(0, true), true);
        boolean level = has(new Turn(2, true), true);
        boolean glide = has(new Turn(2, true), false);
        if (level) {
            return upright ? "p2mm" : "p11m";
        }
        if (half) {
            return upright ? "p2mg" : "p2";
        }
        return upright ? "p1m1" : glide ? "p11g" : "p1";
    }

    /** @param still true to ask only for a step that is a repeat of the row itself */
    private boolean has(Turn turn, boolean still) {
        int n = turns.size();
        for (int step = 0; step < n; step++) {
            if ((!still || keeps(Turn.NONE, step)) && keeps(turn, step)) {
                return true;
            }
        }
        return false;
    }

    private boolean keeps(Turn turn, int step) {
        int n = turns.size();
        for (int x = 0; x < n; x++) {
            int to = turn.ofStep(x, 0)[0];
            Turn here = turns.get(x).then(turn);
            if (!own.contains(here.then(turns.get(Math.floorMod(to + step, n)).inverse()))) {
                return false;
            }
        }
        return true;
    }
}
