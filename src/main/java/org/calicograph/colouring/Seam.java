package org.calicograph.colouring;

import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.patchwork.Patch;

/**
 * Where two patches meet.
 *
 * @param lines the stretches that both share
 */
public record Seam(Patch one, Patch other, List<Path> lines) {

    public Seam {
        lines = List.copyOf(lines);
    }

    /** In inches. */
    public double length() {
        return lines.stream().mapToDouble(Path::length).sum();
    }
}
