package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class TilingTest {

    private static final Picture PLATE = Picture.of(Path.circle(new Point(10, 8), 9.5))
            .over(Picture.of(Region.rectangle(new Box(1, 1, 19, 15))).filled(Colour.hex("#cfdcd6")).outlined(Pen.SEAM));

    @Test
    void every_page_is_exactly_the_paper() {
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER, Paper.LETTER.turned())) {
            for (Picture page : Tiling.on(paper).pages("Plate", PLATE)) {
                assertThat(page.bounds().left()).isCloseTo(0, within(1e-9));
                assertThat(page.bounds().top()).isCloseTo(0, within(1e-9));
                assertThat(page.bounds().width()).isCloseTo(paper.width().inInches(), within(1e-9));
                assertThat(page.bounds().height()).isCloseTo(paper.height().inInches(), within(1e-9));
            }
        }
    }

    /** ISO 216: A4 is 210 x 297 mm; ANSI A is 8 1/2 x 11 in. */
    @Test
    void paper_has_its_published_size() {
        assertThat(Paper.A4.width().inMm()).isEqualTo(210);
        assertThat(Paper.A3.height().inMm()).isEqualTo(420);
        assertThat(Paper.LETTER.width()).isEqualTo(Length.parse("8 1/2"));
    }

    /** The pages' steps: every bit of line shows on a page, and what shows lies in the window. */
    @Test
    void no_line_is_lost_between_pages() {
        Tiling bare = new Tiling(Paper.A4, Length.inches(1, 2), Length.ZERO, false);
        Path circle = Path.circle(new Point(10, 8), 9.5);
        Picture ring = new Picture.Shape(List.of(circle), Paint.NONE, Pen.of(Colour.hex("#123456"), 0.013));
        double drawn = 0;
        List<Picture> pages = bare.pages("Ring", ring);
        for (Picture page : pages.subList(1, pages.size())) {
            for (Picture part : page.flattened()) {
                if (part instanceof Picture.Shape s && s.pen().colour().equals(Colour.hex("#123456"))) {
                    drawn += s.paths().stream().mapToDouble(Path::length).sum();
                }
            }
        }
        assertThat(drawn).isCloseTo(circle.length(), within(1e-4));
    }

    @Test
    void every_page_has_a_square_of_one_inch_clear_of_all_else_and_says_what_to_heed() {
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER, Paper.LETTER.turned())) {
            for (Picture page : Tiling.on(paper).pages("Plate", PLATE)) {
                Picture.Group square = ((Picture.Group) page).parts().stream().filter(Picture.Group.class::isInstance).map(Picture.Group.class::cast)
                        .filter(g -> g.label().map(l -> l.id().equals("test-square")).orElse(false)).findFirst().orElseThrow();
                Box box = square.flattened().stream().filter(Picture.Shape.class::isInstance).map(q -> ((Picture.Shape) q).paths().get(0).bounds()).findFirst().orElseThrow();
                assertThat(box.width()).isCloseTo(1, within(1e-12));
                assertThat(box.height()).isCloseTo(1, within(1e-12));
                List<String> words = page.flattened().stream().filter(Picture.Lettering.class::isInstance).map(l -> ((Picture.Lettering) l).text()).toList();
                assertThat(words).anyMatch(w -> w.contains("100 %")).anyMatch(w -> w.contains("fingers clear of the blade")).anyMatch(w -> w.contains("makers' instructions"));
                for (Picture each : page.flattened()) {
                    Box other = each.bounds();
                    boolean own = box.grownBy(0.01).contains(other.topLeft()) || other.width() > 7;
                    assertThat(own || other.right() < box.left() || other.left() > box.right() || other.bottom() < box.top() || other.top() > box.bottom())
                            .as(paper.name() + ": " + each).isTrue();
                }
            }
        }
    }

    @Test
    void mirrored_pages_show_the_left_on_the_right() {
        Picture flag = Picture.of(Path.through(Point.of(0, 0), Point.of(4, 0), Point.of(0, 1)));
        Picture page = Tiling.on(Paper.A4).mirrored(true).pages("Flag", flag).get(1);
        Picture.Shape drawn = page.flattened().stream().filter(Picture.Shape.class::isInstance).map(Picture.Shape.class::cast)
                .filter(s -> s.pen().equals(Pen.SEAM)).findFirst().orElseThrow();
        Path p = drawn.paths().get(0);
        assertThat(p.start().x() - p.segments().get(0).to().x()).isCloseTo(4, within(1e-9));
    }

    @Test
    void too_many_pages_are_refused_with_the_count() {
        Picture huge = Picture.of(Path.rectangle(new Box(0, 0, 400, 400)));
        assertThatThrownBy(() -> Tiling.on(Paper.A4).pages("Sail", huge))
                .hasMessageContaining("'Sail'").hasMessageContaining("larger paper");
    }

    @Test
    void trimming_keeps_arcs_and_leaves_out_the_edge() {
        Trim trim = Trim.within(Region.rectangle(new Box(0, 0, 4, 4)));
        List<Path> cut = trim.of(Path.circle(new Point(0, 0), 2));
        assertThat(cut).hasSize(1);
        assertThat(cut.get(0).length()).isCloseTo(Math.PI, within(1e-9));
        assertThat(cut.get(0).segments()).allMatch(s -> s instanceof org.calicograph.geometry.Arc);
        assertThat(trim.of(Path.through(Point.of(-1, 0), Point.of(5, 0)))).isEmpty();
        assertThat(trim.of(Path.through(Point.of(-1, 2), Point.of(5, 2))).get(0).length()).isCloseTo(4, within(1e-9));
    }
}
