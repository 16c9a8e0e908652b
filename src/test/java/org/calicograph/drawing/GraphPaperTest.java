package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import org.calicograph.Golden;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Path;
import org.junit.jupiter.api.Test;

class GraphPaperTest {

    private static List<Path> lines(GraphPaper paper) {
        return paper.picture().flattened().stream().skip(1).flatMap(p -> ((Picture.Shape) p).paths().stream()).toList();
    }

    /** Four to the inch on ten inches: 41 lines each way, eleven of them on whole inches (common practice). */
    @Test
    void squares_lie_a_step_apart_from_the_corner() {
        List<Path> lines = lines(GraphPaper.squares(inches(1, 4)));
        List<Double> upright = lines.stream().filter(p -> p.bounds().width() < 1e-9).map(p -> p.start().x()).sorted().toList();
        assertThat(upright.size()).isBetween(39, 41);
        for (int i = 1; i < upright.size(); i++) {
            assertThat(upright.get(i) - upright.get(i - 1)).isCloseTo(0.25, within(1e-9));
        }
    }

    /** Triangles of 60 degrees with a side of 1 are 0.866 high (any textbook of geometry); every crossing is one of all three families. */
    @Test
    void isometric_lines_are_half_the_root_of_three_apart_and_meet_in_threes() {
        List<Path> lines = lines(GraphPaper.triangles(inches(1)));
        List<Double> level = lines.stream().filter(p -> p.bounds().height() < 1e-9).map(p -> p.start().y()).sorted().toList();
        assertThat(level.get(1) - level.get(0)).isCloseTo(0.866025, within(1e-6));
        Path middle = lines.stream().filter(p -> p.bounds().height() < 1e-9 && Math.abs(p.start().y() - 5) < 1e-9).findFirst().orElseThrow();
        List<Path> slanted = lines.stream().filter(p -> p.bounds().height() > 1e-9 && p.bounds().width() > 1e-9).toList();
        List<Double> crossings = slanted.stream().flatMap(p -> middle.meetings(p).stream()).map(p -> p.x()).sorted().toList();
        for (double x : crossings) {
            assertThat(Math.abs(x - Math.rint(x))).isLessThan(1e-9);
        }
        assertThat(crossings.size()).isGreaterThanOrEqualTo(18);
    }

    @Test
    void polar_paper_has_its_rings_and_rays() {
        List<Path> lines = lines(GraphPaper.polar(16, inches(1, 2)));
        assertThat(lines.stream().filter(Path::isStraight)).hasSize(16);
        assertThat(lines.stream().filter(p -> !p.isStraight()).map(p -> ((Arc) p.segments().get(0)).radius()).map(r -> Math.rint(r * 1e6) / 1e6).distinct())
                .hasSize(14);
    }

    @Test
    void sheets_look_as_they_were_accepted_and_print_at_full_size() {
        Golden.picture("drawing/graph-squares", GraphPaper.squares(inches(1, 2)).sized(inches(5), inches(4)).picture());
        Golden.picture("drawing/graph-triangles", GraphPaper.triangles(inches(1, 2)).sized(inches(5), inches(4)).picture());
        Golden.picture("drawing/graph-polar", GraphPaper.polar(24, inches(1, 4)).sized(inches(5), inches(4)).picture());
        GraphPaper a4 = GraphPaper.squares(org.calicograph.measure.Length.cm(1)).on(Paper.A4);
        assertThat(a4.width().inMm()).isCloseTo(210 - 25.4, within(1e-6));
        assertThat(SvgWriter.write(a4.picture())).contains("in\"");
    }

    @Test
    void paper_that_cannot_be_ruled_is_refused_with_the_repair() {
        assertThatThrownBy(() -> GraphPaper.squares(inches(0))).hasMessageContaining("use sizes above 0");
        assertThatThrownBy(() -> GraphPaper.squares(inches(1, 1000))).hasMessageContaining("use a larger step");
        assertThatThrownBy(() -> GraphPaper.polar(1, inches(1))).hasMessageContaining("use 2 or more");
    }
}
