package org.calicograph.stranger;

import java.util.List;
import java.util.Random;
import org.calicograph.border.Border;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Print;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;

/** Quilts as evenings make them: straight, on point, sashed, with borders; of cloths narrow and wide, plain and directed. */
final class EveningQuilt {

    private static final List<Role> ROLES = List.of(Role.BACKGROUND, Role.LIGHT, Role.MEDIUM, Role.DARK, Role.ACCENT);

    private EveningQuilt() { }

    static Quilt of(Random random) {
        Block block = block(random);
        int across = 2 + random.nextInt(3);
        int down = 2 + random.nextInt(3);
        Fabric frame = Fabric.of("frame", "#445566").wide(Length.inches(30 + random.nextInt(30)));
        Patchwork top = switch (random.nextInt(3)) {
            case 0 -> Setting.straight(across, down).of(block);
            case 1 -> Setting.onPoint(across, down, Fabric.of("sky", "#c8d8e8")).of(block);
            default -> Setting.sashed(across, down, Length.inches(1 + random.nextInt(3)), Fabric.of("sash", "#86745e"), Fabric.of("corner", "#5e3d2b")).of(block);
        };
        Fabric reeds = Fabric.of("reeds", "#7a8f5a").printed(Print.of(Print.Scale.SMALL).running(Print.Direction.values()[random.nextInt(3)]));
        Patchwork dressed = random.nextInt(3) == 0 ? top.recoloured(p -> p.role().equals(Role.DARK) ? reeds : p.fabric()) : top;
        if (random.nextBoolean()) {
            Border border = Border.plain(frame, Length.inches(2 + random.nextInt(8), 2));
            Quilt framed = Medallion.around(dressed).with(random.nextBoolean() ? border : border).bound(frame);
            return framed.titled("Framed");
        }
        return Quilt.of("Evening", dressed);
    }

    private static Block block(Random random) {
        int grid = 2 + random.nextInt(4);
        BlockDraft draft = Block.onGrid("Drift", grid, Length.inches((long) grid * (2 + random.nextInt(6)), 2));
        for (int y = 0; y < grid; y++) {
            for (int x = 0; x < grid; x++) {
                Role a = ROLES.get(random.nextInt(ROLES.size()));
                Role b = ROLES.get(random.nextInt(ROLES.size()));
                draft = switch (random.nextInt(5)) {
                    case 0 -> draft.halvesRising(x, y, 1, a, b);
                    case 1 -> draft.halvesFalling(x, y, 1, a, b);
                    case 2 -> draft.quarters(x, y, 1, a, b, a, b);
                    default -> draft.square(a, x, y, 1);
                };
            }
        }
        return draft.block();
    }
}
