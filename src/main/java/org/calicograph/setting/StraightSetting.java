package org.calicograph.setting;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;

/** Blocks edge to edge, in columns and rows. */
public record StraightSetting(int columns, int rows) implements Setting {

    public StraightSetting {
        Setting.requireCounts("straight", columns, rows);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        Lattice lattice = Lattice.of(columns, rows, Length.ZERO, Length.ZERO, blocks);
        return Assembly.of("straight setting", lattice.outline(), lattice.placed());
    }
}
