package org.calicograph.bench;

import java.util.List;
import java.util.Random;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.border.Border;
import org.calicograph.quilt.Medallion;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;

/**
 * Quilts such as a drafting evening brings: a block of squares and triangles on a grid of two to six,
 * patches of 1 to 4 in by quarter inches, set straight, with plain blocks between, sashed or on point,
 * and up to three borders, butted, mitred or with corner blocks. A seed gives one quilt.
 */
final class DraftedQuilts {

    private static final List<Role> ROLES = List.of(Role.BACKGROUND, Role.LIGHT, Role.MEDIUM, Role.DARK, Role.ACCENT);
    private static final Fabric FRAME = Fabric.of("frame", "#445566");
    private static final Fabric SASH = Fabric.of("sash", "#8899aa");

    private final Random random;

    private DraftedQuilts(long seed) {
        random = new Random(seed);
    }

    static Quilt of(long seed) {
        return new DraftedQuilts(seed).quilt();
    }

    private Quilt quilt() {
        Block block = block();
        double side = block.width().inInches();
        int across = count(40 + random.nextInt(50), side);
        int down = count(50 + random.nextInt(60), side);
        Medallion quilt = Medallion.around(set(block, across, down));
        int borders = random.nextInt(4);
        for (int i = 0; i < borders; i++) {
            quilt = quilt.with(border(i % 2 == 0 ? FRAME : SASH));
        }
        return quilt.bound(FRAME).titled("Tide Table");
    }

    private static int count(double inches, double side) {
        return Math.max(2, (int) Math.round(inches / side));
    }

    private Patchwork set(Block block, int across, int down) {
        return switch (random.nextInt(4)) {
            case 0 -> Setting.straight(across, down).of(block);
            case 1 -> Setting.straight(across, down).alternating(block, Block.plain(SASH, block.width(), block.height()));
            case 2 -> Setting.sashed(across, down, Length.inches(2 + random.nextInt(5), 2), SASH, FRAME).of(block);
            default -> Setting.onPoint(Math.max(2, across * 2 / 3), Math.max(2, down * 2 / 3), SASH).of(block);
        };
    }

    private Border border(Fabric fabric) {
        Length width = Length.inches(4 + random.nextInt(20), 4);
        var plain = Border.plain(fabric, width);
        return switch (random.nextInt(4)) {
            case 0 -> plain.mitred();
            case 1 -> plain.corners(Block.plain(fabric == FRAME ? SASH : FRAME, width, width));
            default -> plain;
        };
    }

    private Block block() {
        int grid = 2 + random.nextInt(5);
        int used = 2 + random.nextInt(4);
        BlockDraft draft = Block.onGrid("block", grid, Length.inches((long) grid * (4 + random.nextInt(13)), 4));
        for (int y = 0; y < grid; y++) {
            for (int x = 0; x < grid; x++) {
                Role a = ROLES.get(random.nextInt(used));
                Role b = ROLES.get(random.nextInt(used));
                draft = switch (random.nextInt(5)) {
                    case 0 -> draft.halvesRising(x, y, 1, a, b);
                    case 1 -> draft.quarters(x, y, 1, a, b, a, b);
                    default -> draft.square(a, x, y, 1);
                };
            }
        }
        return draft.block();
    }
}
