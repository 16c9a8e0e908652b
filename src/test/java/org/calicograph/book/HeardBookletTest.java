package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.book.page.PageFlow;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.course.PaperBlocks;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.fabric.Fabric;
import org.calicograph.exhibition.Exhibition;
import org.calicograph.exhibition.ShowEntry;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.calicograph.stranger.Heard;
import org.junit.jupiter.api.Test;

/** The booklet as somebody hears it who can't see it. */
class HeardBookletTest {

    private static Quilt quilt() {
        return Quilt.of("Oyster Beds", Setting.sashed(2, 3, Length.inches(2), Fabric.of("sash", "#86745e"), Fabric.of("corner", "#5e3d2b")).of(CurvedBlock.shell(6)));
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    @Test
    void the_booklet_is_heard_whole_and_every_drawing_says_what_it_shows() throws IOException {
        byte[] pdf = Booklet.of(quilt()).pdf();
        Heard heard = Heard.of(pdf);
        assertThat(heard.objections()).isEmpty();
        assertThat(heard.title()).isEqualTo("Oyster Beds");
        assertThat(heard.parts().get(0)).isEqualTo(new Heard.Part("H1", List.of("Document"), "Oyster Beds", "", 1));
        assertThat(heard.parts().stream().filter(p -> p.type().equals("H2")).map(Heard.Part::text).toList())
                .containsExactly("At a glance", "Before cutting", "Cutting", "Sewing", "Quilting and finishing", "Time and cost", "All measures, for the teacher", "Templates: Oyster Beds");
        assertThat(heard.parts()).filteredOn(p -> p.text().equals("Take care")).hasSizeGreaterThan(2).allMatch(p -> p.within().equals(List.of("Document", "Div")));
        Map<Integer, List<String>> drawings = new java.util.TreeMap<>();
        heard.parts().stream().filter(p -> p.type().equals("Figure")).forEach(p -> drawings.computeIfAbsent(p.page(), n -> new ArrayList<>()).add(p.alt()));
        assertThat(drawings.get(1)).hasSize(1).allMatch(a -> a.startsWith("The quilt Oyster Beds, ") && a.contains("sash, "));
        assertThat(drawings).hasSizeGreaterThan(8);
    }

    /** Reckoned from the quilt itself: as many pieces are said to be cut from a cloth as there are patches of it. */
    @Test
    void a_layout_says_how_many_pieces_are_cut_from_what() {
        Map<String, Integer> patches = new java.util.TreeMap<>();
        quilt().top().patches().forEach(p -> patches.merge(p.fabric().name(), 1, Integer::sum));
        Map<String, Integer> told = new java.util.TreeMap<>();
        List<Heard.Part> parts = Heard.of(Booklet.of(quilt()).only(Part.CUTTING).pdf()).parts();
        for (Heard.Part p : parts) {
            Matcher layout = Pattern.compile("How it is laid and cut from ([a-z ]+): .* in of cloth, .* usable width\\. Cut from it: (.*)").matcher(p.alt());
            if (layout.matches()) {
                Matcher piece = Pattern.compile("(\\d+) [A-Z]+").matcher(layout.group(2));
                while (piece.find()) {
                    told.merge(layout.group(1), Integer.parseInt(piece.group(1)), Integer::sum);
                }
            }
        }
        assertThat(told).isEqualTo(patches);
        assertThat(parts.stream().filter(p -> p.alt().startsWith("A label to cut out: ")).count()).isEqualTo(parts.stream().filter(p -> p.type().equals("TD") && p.text().matches("[A-Z]{1,2}")).count());
    }

    /** Her tables: what is heard under each column is the plan's own, row by row. */
    @Test
    void the_cutting_list_is_heard_row_by_row_under_the_names_of_its_columns() {
        Booklet booklet = Booklet.of(quilt()).only(Part.CUTTING);
        Heard heard = Heard.of(booklet.pdf());
        assertThat(heard.objections()).isEmpty();
        List<String> cells = heard.parts().stream().filter(p -> p.type().matches("T[HD]")).map(p -> words(p.text())).toList();
        List<String> planned = new ArrayList<>();
        for (FabricCut f : Cutting.of(booklet.quilt()).by(booklet.rules()).fabrics()) {
            for (Table table : List.of(f.strips(booklet.rules()), f.table(booklet.rules()))) {
                planned.addAll(table.columns());
                table.rows().forEach(row -> row.forEach(e -> planned.add(words(e.text()))));
            }
        }
        assertThat(cells).isEqualTo(planned);
    }

    /** What is heard are the words that stand on the page, as often as they stand there, and in the order from the top down; drawings speak for themselves. */
    @Test
    void words_are_heard_in_the_order_in_which_a_person_reads_the_page() throws IOException {
        PageFlow flow = new PageFlow(Paper.A4, "the foot of every page");
        Fabric navy = Fabric.of("navy", "#1f3a5f");
        Picture square = Picture.of(Region.rectangle(new Box(0, 0, 2, 2))).filled(navy.colour()).labelled("p", "navy");
        StringBuilder told = new StringBuilder();
        Table long1 = Table.of("Strips", "Strip", "What it gives");
        for (int i = 1; i <= 60; i++) {
            long1 = long1.row("strip " + i, "pieces of the letter " + (char) ('A' + i % 26) + ", and what is left of it goes back to the pile of the same cloth, to be used for smaller ones");
        }
        String paragraph = "Press each seam before the next one crosses it, the way its arrow points; the size beside a step has its seam allowances on. ".repeat(12).strip();
        for (int i = 1; i <= 5; i++) {
            flow.chapter("Part " + i);
            flow.paragraph(paragraph);
            flow.heading("Under part " + i, 1);
            flow.points(List.of("First wash it. " + paragraph.substring(0, 300), "Then press it."));
            flow.caution("Mind the cutter and the iron in part " + i + ".");
            flow.picture(square, 2, "the cloth of part " + i);
            flow.grid(2, 1, List.of(new PageFlow.Figure(square, "Step one of " + i, "sew"), new PageFlow.Figure(square, "Step two of " + i, "and press")));
            told.append("Part ").append(i).append(" ").append(paragraph).append(" Under part ").append(i).append(" • First wash it. ").append(paragraph, 0, 300)
                    .append(" • Then press it. Take care Mind the cutter and the iron in part ").append(i).append(". the cloth of part ").append(i)
                    .append(" Step one of ").append(i).append(" sew Step two of ").append(i).append(" and press ");
        }
        flow.table(long1, true);
        told.append("Strip What it gives");
        long1.rows().forEach(row -> row.forEach(e -> told.append(" ").append(e.text())));
        byte[] pdf = PdfWriter.write("Saltmarsh Reach", flow.pages(), Paper.A4.width(), Paper.A4.height());
        Heard heard = Heard.of(pdf);
        assertThat(heard.objections()).isEmpty();
        assertThat(heard.words()).isEqualTo(words(told.toString()));
        assertThat(heard.parts().stream().filter(p -> p.type().equals("TH"))).as("the names of the columns stand on every page, and are heard once").hasSize(2);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(4);
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            assertThat(sorted(heard.words())).as("no word is lost and none told twice, but for what repeats")
                    .isEqualTo(sorted(stripper.getText(document).replaceAll("(?m)^the foot of every page.*$", "")));
        }
    }

    private static List<String> sorted(String text) {
        return Arrays.stream(text.strip().split("\\s+")).filter(w -> !List.of("Strip", "What", "it", "gives").contains(w)).sorted().toList();
    }

    @Test
    void each_part_of_a_booklet_alone_is_heard_without_objection() {
        Map<Part, List<String>> objections = new EnumMap<>(Part.class);
        for (Part part : List.of(Part.COVER, Part.SEWING, Part.TEMPLATES)) {
            List<String> found = Heard.of(Booklet.of(CurvedBlock.shell(6)).only(part).on(Paper.LETTER).pdf()).objections();
            if (!found.isEmpty()) {
                objections.put(part, found);
            }
        }
        assertThat(objections).isEmpty();
    }

    @Test
    void cards_labels_and_paper_blocks_are_heard_one_after_another() {
        Exhibition show = Exhibition.of("Saltmarsh Reach", "November").with(
                ShowEntry.of("Slack Water", "Hesper Tolland", Length.inches(88), Length.inches(100)).saying("Stars over still water."),
                ShowEntry.of("Nine Lamps", "Marn Ostley", Length.inches(42), Length.inches(42)));
        Heard cards = Heard.of(show.cards().pdf());
        assertThat(cards.objections()).isEmpty();
        assertThat(cards.parts().stream().map(p -> p.type() + " " + p.text()).toList()).containsExactly("H1 1  Slack Water", "P Hesper Tolland", "P 88 in x 100 in",
                "P Stars over still water.", "H1 2  Nine Lamps", "P Marn Ostley", "P 42 in x 42 in");
        Heard labels = Heard.of(show.labels().pdf());
        assertThat(labels.objections()).isEmpty();
        assertThat(labels.words()).startsWith("Slack Water made by Hesper Tolland November 88 in x 100 in Wash gently").contains("Nine Lamps made by Marn Ostley").endsWith("print again.");
        Heard blocks = Heard.of(PaperBlocks.of(CurvedBlock.shell(6)).copies(5).pages().pdf());
        assertThat(blocks.objections()).isEmpty();
        assertThat(blocks.title()).endsWith(", paper blocks");
        assertThat(blocks.parts().get(0).alt()).startsWith("5 copies of the block").contains("2 in wide", "arrow");
        assertThat(blocks.words()).startsWith("Cut along the outer lines.").endsWith("scissors and cutter.");
        Heard catalogue = Heard.of(show.catalogue().pdf());
        assertThat(catalogue.objections()).isEmpty();
        assertThat(catalogue.words()).contains("1 Slack Water Hesper Tolland, 88 in x 100 in. Stars over still water. 2 Nine Lamps");
    }
}
