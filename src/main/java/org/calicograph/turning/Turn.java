package org.calicograph.turning;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.patchwork.Patchwork;

/**
 * A way in which a square can lie: mirrored first, left to right, or not; then turned clockwise.
 *
 * @param quarters quarter turns, 0 to 3
 */
public record Turn(int quarters, boolean mirrored) {

    /** Left as it lies. */
    public static final Turn NONE = new Turn(0, false);

    public Turn {
        quarters = Math.floorMod(quarters, 4);
    }

    /** The four turns without mirroring. */
    public static List<Turn> turns() {
        return List.of(NONE, new Turn(1, false), new Turn(2, false), new Turn(3, false));
    }

    /** All eight. */
    public static List<Turn> all() {
        List<Turn> all = new ArrayList<>(turns());
        for (int q = 0; q < 4; q++) {
            all.add(new Turn(q, true));
        }
        return List.copyOf(all);
    }

    /** This one first, then the next. */
    public Turn then(Turn next) {
        // A mirror in between turns the direction of the turns before it round.
        return new Turn(next.quarters + (next.mirrored ? -quarters : quarters), mirrored != next.mirrored);
    }

    /** The turn that undoes this one. */
    public Turn inverse() {
        return mirrored ? this : new Turn(-quarters, false);
    }

    /** The work turned. */
    public Patchwork of(Patchwork work) {
        return (mirrored ? work.mirrored() : work).turned(quarters);
    }

    /** Where a step across and down goes: x' and y'. */
    int[] ofStep(int across, int down) {
        int x = mirrored ? -across : across;
        int y = down;
        for (int q = 0; q < quarters; q++) {
            int old = x;
            x = -y;
            y = old;
        }
        return new int[] {x, y};
    }

    @Override
    public String toString() {
        return (mirrored ? "mirrored" : "") + (mirrored && quarters > 0 ? ", " : "") + (quarters > 0 ? "turned " + 90 * quarters + "°" : mirrored ? "" : "as drafted");
    }
}
