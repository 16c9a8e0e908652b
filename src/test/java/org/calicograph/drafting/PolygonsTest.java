package org.calicograph.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.calicograph.geometry.Point;
import org.junit.jupiter.api.Test;

class PolygonsTest {

    /** The rows of a table in the test resources, without its head. */
    static List<String[]> rows(String file) throws IOException {
        try (InputStream in = PolygonsTest.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).map(l -> l.split(",")).toList();
        }
    }

    /** Regular polygons of 3 sides and more, computed from geometry in double precision; the same formulas stand in any textbook. */
    @Test
    void regular_polygons_have_the_tabled_measures() throws IOException {
        for (String[] row : rows("regular_polygons.csv")) {
            int n = Integer.parseInt(row[0]);
            RegularPolygon one = new RegularPolygon(n, inches(1));
            assertThat(one.side().inInches()).as(n + " sides").isCloseTo(number(row[1]), within(2e-6));
            assertThat(one.apothem().inInches()).isCloseTo(number(row[2]), within(2e-6));
            assertThat(one.area().squareInches()).isCloseTo(number(row[3]), within(1e-9));
            assertThat(one.interior().degrees()).isCloseTo(number(row[7]), within(2e-6));
            assertThat(one.central().degrees()).isCloseTo(number(row[8]), within(2e-6));
            RegularPolygon side = RegularPolygon.ofSide(n, inches(1));
            assertThat(side.radius().inInches()).isCloseTo(number(row[4]), within(2e-6));
            assertThat(side.apothem().inInches()).isCloseTo(number(row[5]), within(2e-6));
            assertThat(side.area().squareInches()).isCloseTo(number(row[6]), within(1e-4));
            assertThat(Math.abs(one.about(Point.ORIGIN).signedArea())).isCloseTo(number(row[3]), within(1e-9));
        }
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    /**
     * An octagon in a square of 36 in: marks 10.545 in from the corners (a how-to article dividing by 3.414; exactly 10.5442); one 12 in
     * wide has sides of 4.97 in (an article, side / (1 + root 2)); a layout note after a builders' geometry of 1921 gives 0.4142 of the square.
     */
    @Test
    void octagons_have_the_published_sides() {
        RegularPolygon wide = RegularPolygon.ofHeight(8, inches(36));
        assertThat((36 - wide.side().inInches()) / 2).isCloseTo(10.545, within(1e-3));
        assertThat(RegularPolygon.ofHeight(8, inches(12)).side().inInches()).isCloseTo(4.97, within(1e-3));
        assertThat(RegularPolygon.ofHeight(8, inches(1)).side().inInches()).isCloseTo(0.4142, within(5e-5));
    }

    /** Equilateral triangles: the height is 0.866 of the side (two articles on 60 degree quilts); a pentagon in a circle of 1 has sides of 1.176. */
    @Test
    void triangles_and_pentagons_have_the_published_measures() {
        RegularPolygon triangle = RegularPolygon.ofSide(3, inches(1));
        assertThat(triangle.radius().plus(triangle.apothem()).inInches()).isCloseTo(0.866, within(5e-4));
        assertThat(RegularPolygon.ofHeight(3, triangle.radius().plus(triangle.apothem())).side().inInches()).isCloseTo(1, within(2e-6));
        assertThat(new RegularPolygon(5, inches(1)).side().inInches()).isCloseTo(1.176, within(5e-4));
        assertThatThrownBy(() -> new RegularPolygon(2, inches(1))).hasMessageContaining("use 3 sides or more");
    }
}
