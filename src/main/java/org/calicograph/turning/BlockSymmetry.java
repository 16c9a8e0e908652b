package org.calicograph.turning;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Segment;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/** The turns that leave a square block as it is: the same shapes in the same fabrics. */
public final class BlockSymmetry {

    private BlockSymmetry() { }

    /** @throws DesignException if the block is not square */
    public static Set<Turn> of(Patchwork block) {
        if (!block.isRectangular() || block.width().minus(block.height()).abs().inInches() > 0.001) {
            throw new DesignException("'" + block.name() + "' is " + block.width() + " x " + block.height() + " and can't be turned in its place; use a square block");
        }
        Set<String> look = look(block);
        return Turn.all().stream().filter(t -> look(t.of(block)).equals(look)).collect(Collectors.toUnmodifiableSet());
    }

    private static Set<String> look(Patchwork block) {
        Set<String> patches = new HashSet<>();
        for (Patch patch : block.patches()) {
            TreeSet<String> points = new TreeSet<>();
            for (Path path : patch.shape().paths()) {
                for (Segment s : path.segments()) {
                    points.add(near(s.from().x()) + "," + near(s.from().y()));
                    points.add(near(s.middle().x()) + "," + near(s.middle().y()));
                }
            }
            patches.add(patch.fabric().name() + patch.fabric().colour() + List.copyOf(points));
        }
        return patches;
    }

    private static long near(double inches) {
        return Math.round(inches * 2000 + 0.25);
    }
}
