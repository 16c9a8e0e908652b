package org.calicograph.setting;

import org.calicograph.patchwork.Patchwork;

/** Which block stands where in a setting: column and row count from 0 at the top left. */
@FunctionalInterface
public interface BlockAt {

    Patchwork at(int column, int row);
}
