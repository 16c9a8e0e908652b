package org.calicograph.setting;

import org.calicograph.patchwork.Patchwork;

/** Which block stands where in a setting: column and row count from 0 at the top left. */
@FunctionalInterface
public interface BlockAt {

    /** What lies at a column and a row, both from 0. */
    Patchwork at(int column, int row);
}
