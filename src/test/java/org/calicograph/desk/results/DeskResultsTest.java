package org.calicograph.desk.results;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.View;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class DeskResultsTest {

    private static Picture square(String name, double left, double side) {
        return new Picture.Shape(List.of(Path.rectangle(new Box(left, 0, left + side, side))), Paint.of(Colour.BLACK), Pen.NONE)
                .labelled(name, "patch " + name);
    }

    private static Optional<String> at(Picture picture, double x, double y) {
        return PartFinder.of(picture).at(new Point(x, y)).map(Picture.Label::id);
    }

    @Test
    void the_topmost_part_under_a_point_is_named() {
        Picture picture = Picture.group(square("below", 0, 4), square("above", 1, 1));
        assertThat(at(picture, 1.5, 0.5)).contains("above");
        assertThat(at(picture, 3, 3)).contains("below");
        assertThat(at(picture, 5, 1)).isEmpty();
        assertThat(at(picture.moved(10, 0), 11.5, 0.5)).contains("above");
    }

    @Test
    void a_hole_in_a_part_shows_what_lies_beneath() {
        Picture ring = new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, 4, 4)), Path.rectangle(new Box(1, 1, 3, 3))),
                Paint.of(Colour.BLACK), Pen.NONE).labelled("ring", "ring");
        assertThat(at(ring, 2, 2)).isEmpty();
        assertThat(at(ring, 0.5, 2)).contains("ring");
    }

    @Test
    void a_view_fits_the_picture_and_zooms_about_a_point() {
        View view = View.fitting(new Box(0, 0, 10, 5), 224, 424);
        assertThat(view.scale()).isEqualTo(20);
        assertThat(view.toInches(112, 212)).isEqualTo(new Point(5, 2.5));
        View nearer = view.zoomed(3, 50, 60);
        assertThat(nearer.toInches(50, 60).near(view.toInches(50, 60), 1e-9)).isTrue();
        assertThat(nearer.scale()).isEqualTo(60);
    }

    @Test
    void entries_sort_by_size_and_words_come_last() {
        List<String> sorted = Stream.of("ebb", Length.inches("10 1/2"), "Flow", Length.inches(9)).map(Table.Entry::of).sorted(TableGrid.order())
                .map(Table.Entry::text).toList();
        assertThat(sorted).containsExactly("9 in", "10 1/2 in", "ebb", "Flow");
    }

    @Test
    void a_table_is_copied_as_lines_of_tab_separated_entries() {
        Table table = Table.of("Cut", "piece", "count").row("A\tcorner", 4).row("B", 12);
        assertThat(TableGrid.lines(table.columns(), table.rows())).isEqualTo("piece\tcount\nA corner\t4\nB\t12\n");
    }

    @Test
    void no_column_is_narrower_than_its_head_and_what_is_wanting_comes_from_the_others() {
        assertThat(ColumnWidths.shared(new double[] {50, 900, 400, 40}, new double[] {50, 60, 150, 40}, 390)).containsExactly(50, 150, 150, 40);
        assertThat(ColumnWidths.shared(new double[] {300, 300}, new double[] {40, 40}, 200)).containsExactly(100, 100);
        assertThat(ColumnWidths.shared(new double[] {300, 300}, new double[] {120, 130}, 200)).as("moved sideways").containsExactly(120, 130);
    }

    @Test
    void narrow_columns_get_what_they_need_and_wide_ones_share_the_rest() {
        assertThat(ColumnWidths.shared(new double[] {50, 60}, 200)).containsExactly(95, 105);
        assertThat(ColumnWidths.shared(new double[] {50, 900, 400, 40}, 390)).containsExactly(50, 180, 120, 40);
    }

    /** Common practice: a quilter's ruler parts the inch into halves, quarters and eighths, never into fifths; a metric one the centimetre into tenths. */
    @Test
    void an_inch_is_parted_as_a_quilters_ruler_parts_it_and_ticks_never_crowd() {
        for (double per = 4; per < 400; per *= 1.13) {
            assertThat(Rulers.ticks(1, per, true)).isIn(1, 2, 4, 8);
            assertThat(Rulers.ticks(1, per, false)).isIn(1, 2, 5, 10);
            for (double step : new double[] {1, 2, 5, 10, 20, 50, 100}) {
                for (boolean inches : new boolean[] {true, false}) {
                    int parts = Rulers.ticks(step, per, inches);
                    assertThat(parts == 1 || step * per / parts >= 5).isTrue();
                    assertThat(step == 1 || step % parts == 0).as("%s in %s", step, parts).isTrue();
                }
            }
        }
        assertThat(Rulers.ticks(1, 43, true)).isEqualTo(8);
        assertThat(Rulers.ticks(1, 34, true)).isEqualTo(4);
    }
}
