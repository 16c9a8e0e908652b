package org.calicograph.turning;

import java.util.List;
import java.util.Set;
import org.calicograph.patchwork.Assembly;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;

/**
 * One layout of a block, to be repeated side by side without end.
 *
 * @param turns how each block lies, row by row
 * @param own   the turns that leave the block as it is
 */
public record Repeat(int columns, int rows, List<Turn> turns, Set<Turn> own) {

    public Repeat {
        turns = List.copyOf(turns);
        own = Set.copyOf(own);
        if (columns < 1 || rows < 1 || turns.size() != columns * rows) {
            throw new DesignException("a repeat of " + columns + " x " + rows + " blocks has " + turns.size() + " turns; give one for each block");
        }
    }

    /** How the block in a column and row lies, also beyond the repeat. */
    public Turn at(int column, int row) {
        return turns.get(Math.floorMod(row, rows) * columns + Math.floorMod(column, columns));
    }

    /** A top of the repeat, so many times across and down. */
    public Assembly of(Patchwork block, int across, int down) {
        Patchwork[] turned = Turn.all().stream().map(t -> t.of(block)).toArray(Patchwork[]::new);
        return Setting.straight(columns * across, rows * down).of((c, r) -> turned[Turn.all().indexOf(at(c, r))]);
    }

    boolean looksLike(Turn a, Turn b) {
        // a and b look the same if what leads from the one to the other leaves the block as it is.
        return own.contains(a.then(b.inverse()));
    }

    /** The plane group of the endless repeat, by its international short name: one of the twelve without third and sixth turns. */
    public String planeGroup() {
        return PlaneGroup.of(this);
    }
}
