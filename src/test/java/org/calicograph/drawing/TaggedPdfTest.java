package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.stranger.Heard;
import org.junit.jupiter.api.Test;

class TaggedPdfTest {

    private static final Picture SQUARE = Picture.of(Region.rectangle(new Box(1, 1, 2, 2))).filled(Colour.hex("#1f3a5f"));
    private static final Picture GROUND = Picture.of(Region.rectangle(new Box(0, 0, 8, 10))).filled(Colour.WHITE);

    private static Picture words(String words, double y) {
        return Picture.text(words, new Point(3, y), 0.2);
    }

    private static Picture words(Tag.Role role, String words) {
        return words(words, 1).tagged(Tag.of(role));
    }

    private static Picture row(Tag.Role cells, String... entries) {
        return Picture.group(java.util.Arrays.stream(entries).map(e -> words(cells, e)).toList()).tagged(Tag.of(Tag.Role.ROW));
    }

    private static Heard heard(Picture... pages) {
        Heard heard = Heard.of(PdfWriter.write("Saltmarsh Reach", List.of(pages), Length.inches(8), Length.inches(10)));
        assertThat(heard.objections()).isEmpty();
        return heard;
    }

    private static List<String> told(Heard heard) {
        return heard.parts().stream().map(p -> p.type() + " " + (p.alt().isEmpty() ? p.text() : p.alt())).toList();
    }

    @Test
    void a_drawing_without_tags_is_a_figure_that_says_what_it_shows_and_its_white_ground_says_nothing() {
        assertThat(told(heard(Picture.group(GROUND, SQUARE.labelled("p1", "navy"), SQUARE.labelled("p2", "navy"), words("A", 3))))).containsExactly("Figure 2 parts: 2 navy. Lettering: A.");
        Heard all = heard(Scene.everything(), Picture.EMPTY);
        assertThat(all.parts()).hasSize(1);
        assertThat(all.parts().get(0).alt()).contains("A ring <navy>").contains("Saltmarsh Reach, 7 3/8 in");
    }

    @Test
    void parts_are_read_in_the_order_of_painting_and_headings_go_down_one_level_at_a_time() {
        Heard heard = heard(Picture.group(GROUND.tagged(Tag.of(Tag.Role.FURNITURE)), words(Tag.Role.CHAPTER, "Cutting"), words(Tag.Role.HEADING, "Navy"),
                Picture.group(words("All sizes are", 2), words("cut sizes.", 2.3)).tagged(Tag.of(Tag.Role.PARAGRAPH)), SQUARE,
                words(Tag.Role.FURNITURE, "7"), words(Tag.Role.CHAPTER, "Sewing")),
                Picture.group(words(Tag.Role.TITLE, "Harbour Light"), words(Tag.Role.HEADING, "Foam")));
        assertThat(told(heard)).containsExactly("H1 Cutting", "H2 Navy", "P All sizes are cut sizes.", "Figure One plain shape: 1 dark blue.", "H1 Sewing", "H1 Harbour Light", "H2 Foam");
        assertThat(heard.words()).isEqualTo("Cutting Navy All sizes are cut sizes. Sewing Harbour Light Foam");
    }

    @Test
    void a_table_and_a_list_go_on_over_the_page_and_rows_keep_empty_cells() {
        Tag table = Tag.of(Tag.Role.TABLE, "Strips");
        Tag list = Tag.of(Tag.Role.LIST);
        Picture point = Picture.group(words(Tag.Role.MARK, "•"), words(Tag.Role.WORDS, "Wash it")).tagged(Tag.of(Tag.Role.ITEM));
        Picture paragraph = words("One half", 5).tagged(Tag.of(Tag.Role.PARAGRAPH));
        Picture rest = words("and the other", 1).tagged(Tag.of(Tag.Role.PARAGRAPH).goingOn());
        Heard heard = heard(Picture.group(Picture.group(row(Tag.Role.COLUMN, "Letter", "Cut"), row(Tag.Role.CELL, "A", "")).tagged(table), point.tagged(list), paragraph),
                Picture.group(rest, Picture.group(SQUARE.tagged(Tag.of(Tag.Role.FURNITURE)), row(Tag.Role.CELL, "B", "4")).tagged(table.goingOn()), point.tagged(list.goingOn())));
        assertThat(told(heard)).containsExactly("TH Letter", "TH Cut", "TD A", "TD ", "TD B", "TD 4", "Lbl •", "LBody Wash it", "Lbl •", "LBody Wash it", "P One half and the other");
        assertThat(heard.parts().stream().map(Heard.Part::within).map(w -> String.join(" ", w)).distinct().toList())
                .containsExactly("Document Table TR", "Document L LI", "Document");
    }

    @Test
    void what_no_leaf_holds_in_a_table_is_a_figure_beside_it() {
        Heard heard = heard(Picture.group(row(Tag.Role.CELL, "A"), SQUARE).tagged(Tag.of(Tag.Role.TABLE, "Strips")));
        assertThat(heard.parts().stream().map(p -> String.join(" ", p.within()) + " " + p.type()).toList()).containsExactly("Document Table TR TD", "Document Figure");
    }

    @Test
    void every_file_has_a_title_and_it_is_escaped_where_it_stands_in_xml() {
        byte[] pdf = PdfWriter.write("Tide & <Table>", SQUARE);
        assertThat(Heard.of(pdf).title()).isEqualTo("Tide & <Table>");
        assertThat(new String(pdf, StandardCharsets.UTF_8)).contains("Tide &amp; &lt;Table&gt;</rdf:li>").doesNotContain("pdfuaid");
        assertThat(Heard.of(PdfWriter.write(" ", SQUARE.labelled(Picture.Label.CHAPTER, "Harbour Light"))).title()).isEqualTo("Harbour Light");
        assertThat(Heard.of(PdfWriter.write(" ", SQUARE)).title()).isEqualTo("Drawing");
    }
}
