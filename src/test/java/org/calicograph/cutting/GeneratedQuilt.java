package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.border.Border;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;

/** Quilts as drafting evenings make them: a drafted block repeated, sometimes with borders. */
final class GeneratedQuilt {

    private static final List<Role> ROLES = List.of(Role.BACKGROUND, Role.LIGHT, Role.MEDIUM, Role.DARK, Role.ACCENT);

    private GeneratedQuilt() { }

    static Quilt of(Random random) {
        Block block = block(random);
        return of(block, random, 3 + random.nextInt(4), 3 + random.nextInt(5));
    }

    /** A few blocks each way: as many kinds of piece, but fewer of each. */
    static Quilt small(Random random) {
        Block block = block(random);
        return of(block, random, 1 + random.nextInt(3), 2 + random.nextInt(3));
    }

    private static Quilt of(Block block, Random random, int across, int down) {
        var top = Setting.straight(across, down).of(block);
        if (random.nextBoolean()) {
            var framed = Medallion.around(top).with(Border.plain(Fabric.of("frame", "#445566"), Length.inches(2 + random.nextInt(8), 2)));
            return framed.bound(Fabric.of("frame", "#445566"));
        }
        return Quilt.of("Tide Table", top);
    }

    private static Block block(Random random) {
        int grid = 3 + random.nextInt(3);
        BlockDraft draft = Block.onGrid("block", grid, Length.inches((long) grid * (1 + random.nextInt(6)), 2).plus(Length.inches(grid)));
        for (int y = 0; y < grid; y++) {
            for (int x = 0; x < grid; x++) {
                Role a = ROLES.get(random.nextInt(ROLES.size()));
                Role b = ROLES.get(random.nextInt(ROLES.size()));
                draft = switch (random.nextInt(4)) {
                    case 0 -> draft.halvesRising(x, y, 1, a, b);
                    case 1 -> draft.quarters(x, y, 1, a, b, a, b);
                    default -> draft.square(a, x, y, 1);
                };
            }
        }
        return draft.block();
    }

    /** What is cut from one fabric of a small generated quilt. */
    static List<Blank> blanks(Random random) {
        List<Piece> pieces = Pieces.of(small(random).top(), CuttingRules.INCH);
        String fabric = pieces.get(random.nextInt(pieces.size())).fabric().name();
        List<Blank> blanks = new ArrayList<>();
        for (Piece p : pieces) {
            if (p.fabric().name().equals(fabric)) {
                for (CutMethod.Run r : p.method().runs(p.count(), Fabric.USABLE_WIDTH)) {
                    blanks.add(Blank.of(p.letter(), r.across(), r.along()));
                }
            }
        }
        return blanks;
    }
}
