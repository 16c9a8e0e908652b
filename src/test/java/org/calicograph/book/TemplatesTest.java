package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.calicograph.Golden;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.cutting.Figures;
import org.calicograph.cutting.pieces.CutOutline;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;
import org.calicograph.seams.Notch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {

    private static final Length SEAM = CuttingRules.INCH.seam();

    private static Paper paper(String name) {
        return List.of(Paper.A4, Paper.A3, Paper.LETTER).stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    }

    /** Measured on the rendering: 25.4 mm to an inch (international yard, 1959), 72 points (ISO 32000), both from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "A3", "Letter"})
    void a_test_square_measures_one_inch_on_the_rendered_page(String name) throws Exception {
        Paper paper = paper(name);
        byte[] pdf = PdfWriter.write("Saltmarsh Reach", Templates.of(CurvedBlock.shell(6)).on(paper).pages().subList(0, 1), paper.width(), paper.height());
        int dpi = 1200;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, dpi);
            assertThat(image.getWidth() / (double) dpi).isCloseTo(paper.width().inInches(), within(0.001));
            assertThat(square(image, dpi)).as("the square's side in inches").isCloseTo(1.0, within(0.001));
        }
    }

    /** The distance between the two dark upright lines that stand an inch apart, line middle to line middle. */
    private static double square(BufferedImage image, int dpi) {
        for (int y = dpi / 2; y < image.getHeight(); y += dpi / 20) {
            java.util.List<Double> lines = new java.util.ArrayList<>();
            int start = -1;
            for (int x = 0; x < image.getWidth(); x++) {
                boolean dark = (image.getRGB(x, y) & 255) < 128;
                if (dark && start < 0) {
                    start = x;
                } else if (!dark && start >= 0) {
                    lines.add((start + x - 1) / 2.0);
                    start = -1;
                }
            }
            for (int i = 0; i < lines.size(); i++) {
                for (int j = i + 1; j < lines.size(); j++) {
                    double side = (lines.get(j) - lines.get(i)) / dpi;
                    if (Math.abs(side - 1) < 0.02 && isUpright(image, lines.get(i), y, dpi) && isUpright(image, lines.get(j), y, dpi)) {
                        return side;
                    }
                }
            }
        }
        return Double.NaN;
    }

    private static boolean isUpright(BufferedImage image, double x, int y, int dpi) {
        for (int dy = 0; dy < dpi / 3; dy += 10) {
            if (y + dy >= image.getHeight() || (image.getRGB((int) x, y + dy) & 255) > 160) {
                return false;
            }
        }
        return true;
    }

    /** ISO 216 and ANSI/ASME Y14.1, as in paper_sizes.csv; a page in points within 0.001, which is 0.00035 mm. */
    @Test
    void pages_have_the_published_size_of_their_paper() throws Exception {
        for (Map<String, String> row : Figures.of("paper_sizes")) {
            Paper paper = paper(row.get("name"));
            Length w = Length.parse(row.get("w") + " " + row.get("unit"));
            Length h = Length.parse(row.get("h") + " " + row.get("unit"));
            assertThat(List.of(paper.width(), paper.height())).as(row.toString()).containsExactly(w, h);
            byte[] pdf = PdfWriter.write("Saltmarsh Reach", Templates.of(CurvedBlock.shell(6)).on(paper).pages(), paper.width(), paper.height());
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat((double) document.getPage(0).getMediaBox().getWidth()).as(row.toString())
                        .isCloseTo(Double.parseDouble(row.get("w_pt")), within(0.001));
                assertThat((double) document.getPage(0).getMediaBox().getHeight()).as(row.toString())
                        .isCloseTo(Double.parseDouble(row.get("h_pt")), within(0.001));
            }
        }
    }

    @Test
    void templates_that_fit_a_page_stand_whole_on_one() {
        // The key, and one page for both: 4 1/2 and 6 1/2 in high.
        assertThat(Templates.of(CurvedBlock.shell(6)).on(Paper.A3).pages()).hasSize(2);
    }

    /** Thirty inches each way: printed, laid cross on cross, and measured from the rendered sheets. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void sheets_laid_cross_on_cross_give_back_the_template(String name) throws Exception {
        Paper paper = paper(name);
        Templates templates = Templates.of(CurvedBlock.shell(30)).on(paper);
        Template rest = templates.templates().stream().filter(t -> t.letters().contains("B")).findFirst().orElseThrow();
        Templates one = new Templates("rest", List.of(rest), paper, false);
        List<Picture> pages = one.pages();
        LaidSheets laid = LaidSheets.of(PdfWriter.write("Saltmarsh Reach", pages.subList(1, pages.size()), paper.width(), paper.height()));
        Tiling tiling = Tiling.on(paper);
        Box box = rest.picture().bounds();
        int across = (int) Math.ceil((box.width() + 0.5) / tiling.stepAcross());
        int down = (int) Math.ceil((box.height() + 0.5) / tiling.stepDown());
        // A margin of 1/2 in and half the overlap before the first sheet's step begins.
        Point middle = new Point((across / 2.0 - laid.column()) * tiling.stepAcross() + 0.75, (down / 2.0 - laid.row()) * tiling.stepDown() + 0.75);
        List<Double> offsets = laid.offsets(rest, middle);
        assertThat(offsets.size()).isGreaterThan(200);
        assertThat(offsets.stream().mapToDouble(d -> d).max().orElseThrow()).as("inches between the line on paper and the template").isLessThan(0.01);
    }

    @Test
    void a_template_of_ten_feet_each_way_can_be_printed() {
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER)) {
            List<Picture> pages = Templates.of(CurvedBlock.shell(119)).on(paper).pages();
            assertThat(pages.size()).as(paper.name()).isBetween(60, 601);
        }
    }

    /** A sample of the hundreds of sheets: the first in the top row, two in the middle and the last, laid cross on cross and measured. */
    @Test
    void sampled_sheets_of_a_template_of_ten_feet_give_it_back() throws Exception {
        Paper paper = Paper.A4;
        Template rest = Templates.of(CurvedBlock.shell(119)).on(paper).templates().stream().filter(t -> t.letters().contains("B")).findFirst().orElseThrow();
        List<Picture> pages = new Templates("rest", List.of(rest), paper, false).pages();
        Tiling tiling = Tiling.on(paper);
        Box box = rest.picture().bounds();
        int across = (int) Math.ceil((box.width() + 0.5) / tiling.stepAcross());
        int down = (int) Math.ceil((box.height() + 0.5) / tiling.stepDown());
        for (int from : new int[] {1, pages.size() / 2, pages.size() - 2}) {
            LaidSheets laid = LaidSheets.of(PdfWriter.write("Saltmarsh Reach", pages.subList(from, from + 2), paper.width(), paper.height()));
            Point middle = new Point((across / 2.0 - laid.column()) * tiling.stepAcross() + 0.75, (down / 2.0 - laid.row()) * tiling.stepDown() + 0.75);
            List<Double> offsets = laid.offsets(rest, middle);
            assertThat(offsets.size()).as("points on sheets from " + from).isGreaterThan(20);
            assertThat(offsets.stream().mapToDouble(d -> d).max().orElseThrow()).as("sheets from " + from).isLessThan(0.01);
        }
    }

    /** Both sides of a curved seam: as far along it, measured on the two templates. */
    @Test
    void notches_match_across_a_curved_seam() {
        for (double side : new double[] {2, 6, 30}) {
            List<Piece> pieces = Pieces.of(CurvedBlock.shell(side), CuttingRules.INCH);
            List<double[]> reaches = pieces.stream().map(TemplatesTest::reaches).toList();
            assertThat(reaches.get(0)).hasSize(side > 3 ? 3 : 1);
            assertThat(reaches.get(0)).containsExactly(reaches.get(1), within(1e-6));
        }
    }

    /** The distances of the notches from the two ends of the arc, sorted; the arc's ends are where it meets a straight edge. */
    private static double[] reaches(Piece piece) {
        var arc = piece.finished().outer().segments().stream().filter(s -> !(s instanceof org.calicograph.geometry.Line)).findFirst().orElseThrow();
        return piece.notches().stream().mapToDouble(n -> n.at().distance(arc.from())).sorted().toArray();
    }

    @Test
    void notches_run_from_the_seam_line_outwards() {
        for (Piece p : Pieces.of(CurvedBlock.shell(6), CuttingRules.INCH)) {
            for (Notch n : p.notches()) {
                assertThat(p.finished().contains(n.at().plus(n.outward().times(-0.05)))).isTrue();
                assertThat(p.finished().contains(n.at().plus(n.outward().times(0.05)))).isFalse();
                Point end = n.at().plus(n.outward().times(SEAM.inInches()));
                double off = Polygons.of(p.cutOutline(SEAM), 1e-4).getBoundary().distance(Polygons.point(end));
                assertThat(off).isLessThan(2e-3);
            }
        }
    }

    /** A 45 degree point, trimmed square to both seams one allowance out: nothing reaches beyond either seam's end by more. */
    @Test
    void points_are_trimmed_where_a_square_neighbour_ends() {
        Region half = Region.polygon(new Point(0, 0), new Point(4, 0), new Point(4, 4));
        Region cut = CutOutline.of(half, SEAM);
        assertThat(cut.bounds().left()).isCloseTo(-0.25, within(1e-6));
        assertThat(cut.bounds().bottom()).isCloseTo(4.25, within(1e-6));
        Point slant = new Point(1, 1).unit();
        double least = cut.outer().corners().stream().mapToDouble(c -> c.dot(slant)).min().orElseThrow();
        assertThat(least).isCloseTo(-0.25, within(1e-6));
    }

    /** Turning allowance, common practice: 3/16 in all round, so a circle grows by 3/8 in. */
    @Test
    void a_shape_to_turn_under_has_its_allowance_all_round() {
        Template quarter = Templates.turned(CurvedBlock.shell(6), Templates.TURNING).templates().stream()
                .filter(t -> t.finished().area().squareInches() < 13).findFirst().orElseThrow();
        assertThat(quarter.cut().bounds().width()).isCloseTo(4.375, within(1e-3));
        // A quarter disc grown by d: area + perimeter d + pi d d (Steiner's formula for convex shapes).
        double d = 0.1875;
        assertThat(quarter.cut().area().squareInches()).isCloseTo(4 * Math.PI + (8 + 2 * Math.PI) * d + Math.PI * d * d, within(5e-3));
        assertThatThrownBy(() -> Templates.turned(CurvedBlock.shell(6), Length.ZERO)).hasMessageContaining("turning allowance of 0");
    }

    @Test
    void one_template_serves_a_shape_and_its_mirror_image() {
        Block left = CurvedBlock.shell(6);
        Templates both = Templates.of(org.calicograph.setting.Setting.straight(2, 1).alternating(left, left.mirrored()));
        assertThat(both.templates()).hasSize(2);
    }

    @Test
    void a_sheet_of_templates_looks_as_it_was_accepted() {
        Golden.picture("book/template-sheet", Templates.of(CurvedBlock.shell(6)).on(Paper.A4).pages().get(1));
    }
}
