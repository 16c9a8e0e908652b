package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.Golden;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class StencilTest {

    private static List<Path> rosette() {
        List<Path> lines = new ArrayList<>(List.of(Path.circle(Point.ORIGIN, 2), Path.circle(Point.ORIGIN, 4)));
        for (int i = 0; i < 6; i++) {
            lines.add(Path.circle(new Point(2.6 * Math.cos(i * Math.PI / 3), 2.6 * Math.sin(i * Math.PI / 3)), 1.3));
        }
        return lines;
    }

    /** By a raster of the sheet: from one corner everything that is no slot can be reached. */
    private static boolean holdsTogether(Stencil stencil) {
        double grid = 1.0 / 32;
        int columns = (int) (stencil.sheet().width() / grid);
        int rows = (int) (stencil.sheet().height() / grid);
        boolean[][] cut = new boolean[columns][rows];
        for (Path slot : stencil.slots()) {
            Geometry line = Polygons.FACTORY.createLineString(Polygons.coordinates(slot.flattened(1e-3)));
            Geometry hole = line.buffer(stencil.width().inInches() / 2, 8, 2);
            var box = hole.getEnvelopeInternal();
            for (int c = Math.max(0, (int) ((box.getMinX() - stencil.sheet().left()) / grid) - 1); c < columns && stencil.sheet().left() + c * grid < box.getMaxX() + grid; c++) {
                for (int r = Math.max(0, (int) ((box.getMinY() - stencil.sheet().top()) / grid) - 1); r < rows && stencil.sheet().top() + r * grid < box.getMaxY() + grid; r++) {
                    cut[c][r] |= hole.contains(Polygons.point(new Point(stencil.sheet().left() + (c + 0.5) * grid, stencil.sheet().top() + (r + 0.5) * grid)));
                }
            }
        }
        int left = 0;
        for (boolean[] column : cut) {
            for (boolean each : column) {
                left += each ? 0 : 1;
            }
        }
        List<int[]> open = new ArrayList<>(List.of(new int[] {0, 0}));
        boolean[][] seen = new boolean[columns][rows];
        seen[0][0] = true;
        int reached = 0;
        while (!open.isEmpty()) {
            int[] at = open.remove(open.size() - 1);
            reached++;
            for (int[] d : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                int c = at[0] + d[0];
                int r = at[1] + d[1];
                if (c >= 0 && r >= 0 && c < columns && r < rows && !cut[c][r] && !seen[c][r]) {
                    seen[c][r] = true;
                    open.add(new int[] {c, r});
                }
            }
        }
        return reached == left;
    }

    @Test
    void every_stencil_holds_together_and_no_two_slots_meet() {
        Random chance = new Random(4);
        List<List<Path>> designs = new ArrayList<>(List.of(rosette(), Fills.ribbons(Region.rectangle(new Box(0, 0, 8, 6)), Length.inches(4), Length.inches(2))));
        for (int k = 0; k < 6; k++) {
            List<Path> lines = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                lines.add(Path.circle(new Point(chance.nextDouble() * 5, chance.nextDouble() * 5), 0.8 + chance.nextDouble() * 2));
            }
            designs.add(lines);
        }
        for (List<Path> lines : designs) {
            Stencil stencil = Stencil.of(lines);
            assertThat(holdsTogether(stencil)).isTrue();
            List<Geometry> holes = stencil.slots().stream().map(s -> (Geometry) Polygons.FACTORY.createLineString(Polygons.coordinates(s.flattened(1e-3)))).toList();
            for (int i = 0; i < holes.size(); i++) {
                for (int j = i + 1; j < holes.size(); j++) {
                    assertThat(holes.get(i).distance(holes.get(j))).isGreaterThan(0.25 - 0.05);
                }
            }
            double marked = stencil.slots().stream().mapToDouble(Path::length).sum();
            assertThat(marked).as("most of the lines are marked").isGreaterThan(0.45 * lines.stream().mapToDouble(Path::length).sum());
        }
    }

    @Test
    void a_stencil_looks_as_it_was_accepted() {
        Golden.picture("quilting/stencil", Picture.group(Stencil.of(rosette()).picture()).scaled(0.5));
        assertThatThrownBy(() -> Stencil.of(List.of())).hasMessageContaining("0 lines");
    }
}
