package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/** Tops of squares for tests. */
final class Tops {

    private Tops() { }

    /** Squares of a side in inches, numbered 'column.row', in the fabric that the rule gives. */
    static Block squares(int across, int down, double side, BiFunction<Integer, Integer, Fabric> rule) {
        List<Patch> patches = new ArrayList<>();
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                patches.add(new Patch(x + "." + y, (x + y) % 2 == 0 ? Role.LIGHT : Role.DARK, rule.apply(x, y),
                        Region.rectangle(new Box(x * side, y * side, (x + 1) * side, (y + 1) * side))));
            }
        }
        return Block.of("squares", Region.rectangle(new Box(0, 0, across * side, down * side)), patches);
    }
}
