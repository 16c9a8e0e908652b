package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class TagTest {

    private static final Picture SQUARE = Picture.of(Region.rectangle(new Box(0, 0, 1, 1))).filled(Colour.hex("#1f3a5f"));

    private static Picture words(String words) {
        return Picture.text(words, new Point(0, 0), 0.2);
    }

    private static List<Element> groups(Picture picture) throws Exception {
        NodeList found = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(SvgWriter.write(picture).getBytes(StandardCharsets.UTF_8))).getElementsByTagName("g");
        return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
    }

    @Test
    void svg_tells_the_parts_of_a_page_by_their_roles() throws Exception {
        Picture page = Picture.group(words("Harbour Light").tagged(Tag.of(Tag.Role.TITLE)), words("Cutting").tagged(Tag.of(Tag.Role.CHAPTER)),
                words("Navy").tagged(Tag.of(Tag.Role.HEADING)), SQUARE.tagged(Tag.of(Tag.Role.FIGURE, "A \"navy\" square & <nothing> else")),
                words("7").tagged(Tag.of(Tag.Role.FURNITURE)), Picture.group(words("4").tagged(Tag.of(Tag.Role.CELL))).tagged(Tag.of(Tag.Role.ROW)));
        List<Element> groups = groups(page);
        // WAI-ARIA 1.2, 5.3: the roles of headings, tables and images; aria-level is a heading's depth.
        assertThat(groups.stream().map(g -> g.getAttribute("role") + g.getAttribute("aria-level")).toList())
                .containsExactly("heading1", "heading2", "heading3", "img", "", "row", "cell");
        assertThat(groups.get(3).getAttribute("aria-label")).isEqualTo("A \"navy\" square & <nothing> else");
        assertThat(groups.get(4).getAttribute("aria-hidden")).isEqualTo("true");
        assertThat(groups.get(5).getElementsByTagName("g").item(0)).isSameAs(groups.get(6));
    }

    @Test
    void every_role_is_written_as_svg_that_can_be_read() throws Exception {
        List<Picture> all = new ArrayList<>();
        for (Tag.Role role : Tag.Role.values()) {
            all.add(SQUARE.labelled("a", "square").tagged(new Tag(role, "]]>\u0001 \ud800", role.ordinal() % 2 == 0)));
        }
        assertThat(groups(Picture.group(all))).hasSize(2 * Tag.Role.values().length);
    }

    @Test
    void a_tag_stays_where_the_picture_is_moved_labelled_or_laid_over_another() {
        Tag figure = Tag.of(Tag.Role.FIGURE, "a square");
        Picture moved = Picture.group(SQUARE.tagged(figure).moved(1, 2).labelled("a", "named").moved(3, 4), SQUARE);
        List<String> told = new ArrayList<>();
        Walk.over(moved, Transform.IDENTITY, new Surface() {
            @Override
            public void shape(Picture.Shape shape, Transform onto) {
                told.add(shape.onto(onto).paths().get(0).bounds().left() + "");
            }

            @Override
            public void lettering(Picture.Lettering text, Transform onto) {
                told.add(text.text());
            }

            @Override
            public void begin(Tag tag) {
                told.add("begin " + tag.said());
            }

            @Override
            public void end(Tag tag) {
                told.add("end " + tag.said());
            }
        });
        assertThat(told).containsExactly("begin a square", "4.0", "end a square", "0.0");
    }

    @Test
    void a_figure_without_words_is_refused() {
        assertThatThrownBy(() -> Tag.of(Tag.Role.FIGURE, " \t")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("say what it shows");
    }

    @Test
    void only_headings_have_a_rank_and_they_go_down_by_one() {
        assertThat(java.util.Arrays.stream(Tag.Role.values()).filter(r -> r.rank() > 0).map(r -> r + " " + r.rank()).collect(Collectors.joining(", ")))
                .isEqualTo("TITLE 1, CHAPTER 2, HEADING 3");
    }

    @Test
    void what_a_picture_shows_is_said_by_its_named_parts_its_colours_and_its_letters() {
        Picture block = Picture.group(SQUARE.labelled("p1", "navy"), SQUARE.labelled("p2", "navy"), SQUARE.labelled("p3", "sand"));
        assertThat(Said.of(block)).isEqualTo("3 parts: 2 navy; 1 sand.");
        assertThat(Said.of("The block", block)).isEqualTo("The block. 3 parts: 2 navy; 1 sand.");
        assertThat(Said.of(Picture.group(words("4 in"), words("4 in"), words("A")))).isEqualTo("Lettering: 4 in, 2 times; A.");
        assertThat(Said.of(Picture.EMPTY)).isEqualTo("A blank drawing.");
        assertThat(Said.of(SQUARE)).startsWith("One plain shape: 1 ");
        List<Picture> many = IntStream.range(0, 14).mapToObj(i -> SQUARE.labelled("p" + i, "cloth " + i)).collect(Collectors.toList());
        assertThat(Said.of(Picture.group(many))).startsWith("14 parts: 1 cloth 0; ").endsWith("1 cloth 11; and 2 other kinds of part.");
    }
}
