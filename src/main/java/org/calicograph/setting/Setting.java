package org.calicograph.setting;

import java.util.Optional;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;

/** A way of putting blocks together into a top. */
public sealed interface Setting permits StraightSetting, OnPointSetting, SashedSetting, StrippySetting,
        HexagonSetting, RosetteSetting, TriangleSetting, RingSetting, ShellSetting {

    /** Edge to edge, in columns and rows. */
    static StraightSetting straight(int columns, int rows) {
        return new StraightSetting(columns, rows);
    }

    /**
     * Standing on their points: columns x rows of blocks, with (columns - 1) x (rows - 1) more between
     * them, and triangles of the fabric along the sides and in the corners.
     */
    static OnPointSetting onPoint(int columns, int rows, Fabric triangles) {
        return new OnPointSetting(columns, rows, triangles);
    }

    /** With strips between the blocks and squares where the strips meet; {@code framed} adds them outside too. */
    static SashedSetting sashed(int columns, int rows, Length width, Fabric sash, Fabric cornerstone) {
        return new SashedSetting(columns, rows, width, sash, cornerstone, false, Optional.empty());
    }

    /** In columns, with a strip of one fabric as long as the top between each two. */
    static StrippySetting strippy(int columns, int rows, Length width, Fabric strip) {
        return new StrippySetting(columns, rows, width, strip, false, Optional.empty(), false);
    }

    /** Hexagons on a point in rows, with partial hexagons of the fabric along the edge. */
    static HexagonSetting hexagons(int columns, int rows, Fabric edge) {
        return new HexagonSetting(columns, rows, edge, false);
    }

    /** Rosettes of hexagons with so many rings, on a ground of hexagons of the fabric. */
    static RosetteSetting rosettes(int columns, int rows, int rings, Fabric ground) {
        return new RosetteSetting(columns, rows, rings, ground);
    }

    /** Equilateral triangles in rows, with half triangles of the fabric at the ends. */
    static TriangleSetting triangles(int columns, int rows, Fabric ends) {
        return new TriangleSetting(columns, rows, ends, false);
    }

    /** Melons along the sides of squares, four meeting at each corner, with middles of the fabric between them; the edge is scalloped. */
    static RingSetting rings(int columns, int rows, Fabric middle) {
        return new RingSetting(columns, rows, middle);
    }

    /** Shells in rows like scales, with partial shells of the fabric along the edge. */
    static ShellSetting shells(int columns, int rows, Fabric edge) {
        return new ShellSetting(columns, rows, edge, false);
    }

    /**
     * The top with a block in every place. All must be square where they stand on point, and of one
     * width by column and one height by row otherwise; hexagon, triangle, ring and shell settings want blocks of that shape.
     *
     * @throws DesignException naming the block that doesn't fit, its size and the repair
     */
    Assembly of(BlockAt blocks);

    /** The top with the same block in every place. */
    default Assembly of(Patchwork block) {
        return of((column, row) -> block);
    }

    /** Two blocks in turn, as on a chequerboard; the first stands top left. */
    default Assembly alternating(Patchwork first, Patchwork second) {
        return of((column, row) -> (column + row) % 2 == 0 ? first : second);
    }

    /** Blocks side by side and row by row: what every setting checks first. */
    static void requireCounts(String setting, int columns, int rows) {
        if (columns < 1 || rows < 1) {
            throw new DesignException("a " + setting + " setting of " + columns + " x " + rows
                    + " has no blocks; use at least 1 x 1");
        }
    }
}
