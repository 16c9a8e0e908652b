package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.calicograph.Golden;
import org.calicograph.drafting.Draft;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.patchwork.Block;
import org.junit.jupiter.api.Test;

class StarAnglesTest {

    private static double number(Object star, String method) {
        return (double) CompiledStdlib.call(star, method);
    }

    /** Star polygons {n/k} on a circle of radius 1, computed from geometry in double precision. */
    @Test
    void stars_have_the_tabled_angles_lengths_and_areas() throws Exception {
        List<String[]> rows;
        try (InputStream in = Draft.class.getResourceAsStream("star_polygons.csv")) {
            rows = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).map(l -> l.split(",")).toList();
        }
        assertThat(rows).hasSizeGreaterThan(60);
        for (String[] row : rows) {
            Object star = star(Integer.parseInt(row[0]), Integer.parseInt(row[1]));
            String name = row[0] + "/" + row[1];
            assertThat(CompiledStdlib.call(star, "figures")).as(name).isEqualTo(Integer.parseInt(row[2]));
            assertThat(((Angle) CompiledStdlib.call(star, "tip")).degrees()).as(name).isCloseTo(Double.parseDouble(row[3]), within(1e-8));
            assertThat(number(star, "lineShare")).as(name).isCloseTo(Double.parseDouble(row[4]), within(1e-9));
            assertThat(number(star, "innerShare")).as(name).isCloseTo(Double.parseDouble(row[5]), within(1e-9));
            assertThat(number(star, "edgeShare")).as(name).isCloseTo(Double.parseDouble(row[6]), within(1e-9));
            assertThat(number(star, "areaShare")).as(name).isCloseTo(Double.parseDouble(row[7]), within(1e-9));
        }
    }

    private static Object star(int points, int skip) {
        return CompiledStdlib.call(CompiledStdlib.call(CompiledStdlib.named("Star"), "of", points), "skipping", skip);
    }

    /** The angles within a simple polygon of 2 n corners add up to (2 n - 2) x 180 degrees (any textbook of geometry). */
    @Test
    void every_star_from_five_to_thirty_two_points_is_drawn_with_the_angles_it_reports() {
        int stars = 0;
        for (int n = 5; n <= 32; n++) {
            for (int k = 2; 2 * k < n; k++) {
                Object star = star(n, k);
                double tip = ((Angle) CompiledStdlib.call(star, "tip")).degrees();
                double notch = ((Angle) CompiledStdlib.call(star, "notch")).degrees();
                assertThat(n * (tip + 360 - notch)).isCloseTo((2 * n - 2) * 180, within(1e-8));
                Block block = (Block) CompiledStdlib.call(star, "across", inches(10));
                List<Point> c = block.outline().outer().corners();
                assertThat(c).hasSize(2 * n);
                double[] found = new double[2];
                for (int i = 0; i < 2; i++) {
                    Point u = c.get((i + 1) % c.size()).minus(c.get(i));
                    Point v = c.get((i + c.size() - 1) % c.size()).minus(c.get(i));
                    found[i] = Math.toDegrees(Math.atan2(Math.abs(u.cross(v)), u.dot(v)));
                }
                double first = Math.min(found[0], found[1]);
                double second = Math.max(found[0], found[1]);
                assertThat(first).as(n + "/" + k).isCloseTo(Math.min(tip, notch), within(1e-6));
                assertThat(second).as(n + "/" + k).isCloseTo(Math.max(tip, notch), within(1e-6));
                stars++;
            }
        }
        assertThat(stars).isEqualTo(210);
        Golden.text("stdlib/star-of-eleven.csv", ((Table) CompiledStdlib.call(star(11, 4), "report", inches(12))).csv());
    }
}
