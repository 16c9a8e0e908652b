package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drafting lessons, gone through from the first step to the last. */
class DraftingLessonsTest {

    @TempDir
    static Path cache;
    private static LessonWalk lesson;

    @BeforeAll
    static void start() throws Exception {
        lesson = new LessonWalk(cache);
    }

    @AfterEach
    void forget() {
        lesson.forget();
    }

    /** A lesson that nobody has gone through here would be drawn by no test at all. */
    @Test
    void every_lesson_of_the_folder_is_gone_through() throws Exception {
        String these = Files.readString(Path.of("src/test/java/org/calicograph/kernel/DraftingLessonsTest.java"));
        try (Stream<Path> files = Files.list(Path.of("notebooks/lessons"))) {
            assertThat(files.map(f -> f.getFileName().toString()).toList()).hasSizeGreaterThanOrEqualTo(12)
                    .allSatisfy(f -> assertThat(these).contains("walk(\"" + f + "\""));
        }
    }

    private static void walk(String file, Map<String, String> right, Map<String, String> wrong) throws Exception {
        lesson.walk(file, right, wrong);
    }

    private static String told(String expression) throws Exception {
        return lesson.told(expression);
    }

    private static double distance(String draft, String one, String other) throws Exception {
        return lesson.distance(draft, one, other);
    }

    /** Euclid I.46: four sides alike; by I.47 a right angle at each corner, since both diagonals' squares are twice the side's. */
    @Test
    void the_square_is_true_and_its_grid_even() throws Exception {
        walk("the-square-and-its-grid.json", Map.of("corner", "5 5/8 in", "unit", "1 in", "cut", "1 1/2 in", "sewn", "4 1/2 in"),
                Map.of("corner", "5 in", "unit", "2 in", "cut", "1 1/4 in", "sewn", "6 in"));
        for (String side : List.of("AB", "BC", "CD", "DA")) {
            assertThat(distance("square", side.substring(0, 1), side.substring(1))).as(side).isCloseTo(4, within(1e-9));
        }
        assertThat(distance("square", "A", "C")).isCloseTo(Math.sqrt(32), within(1e-9));
        assertThat(distance("square", "B", "D")).isCloseTo(Math.sqrt(32), within(1e-9));
        // D carried up 3 7/8 in, not 4: the mistake is D's, and C only inherits it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(square, sheet.perpendicular("left", "base", "A").perpendicular("right", "base", "B").circle("swing", "A", inches("3 7/8"))
                    .crossing("D", "swing", "left", "O").parallel("top", "base", "D").crossing("C", "top", "right").ink("square", "A", "B", "C", "D", "A"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere() + d.matters()).toList())""")).contains("swingtruetrue", "Dfalsetrue", "Cfalsetrue").doesNotContain("left");
    }

    /** Common practice: half the diagonal, swung from each corner. Its corners lie on one circle, with eight sides alike. */
    @Test
    void the_octagon_is_regular() throws Exception {
        walk("the-octagon-in-a-square.json", Map.of("corner", "135", "leg", "1 3/16 in", "small", "1 11/16 in"), Map.of("corner", "45", "leg", "1 in", "small", "1 3/16 in"));
        // What is left of a side beside the octagon's own, halved; a seam from corner to corner of the small square is as long as the octagon's side, 1/4 in in from its edges.
        double leg = (4 - 4 * (Math.sqrt(2) - 1)) / 2;
        assertThat(distance("octagon", "A", "P1")).isCloseTo(leg, within(1e-9));
        assertThat((1 + 11.0 / 16 - 0.5) * Math.sqrt(2)).isCloseTo(4 * (Math.sqrt(2) - 1), within(1.0 / 32));
        for (int i = 1; i <= 8; i++) {
            assertThat(distance("octagon", "P" + i, "P" + (i % 8 + 1))).as("side " + i).isCloseTo(4 * (Math.sqrt(2) - 1), within(1e-9));
            assertThat(distance("octagon", "O", "P" + i)).as("corner " + i).isCloseTo(Math.hypot(2, 2 * (Math.sqrt(2) - 1)), within(1e-9));
        }
        // One swing opened to 2 3/4 in: the swing is named, its two marks inherit it, all other marks are right.
        assertThat(told("""
                String.join("\\n", DraftReview.of(swings, middle.circle("a", "A", inches("2 3/4")).circle("b", "B", "O").circle("c", "C", "O").circle("d", "D", "O")
                    .crossing("P1", "b", "AB", "A").crossing("P2", "a", "AB", "B").crossing("P3", "c", "BC", "B").crossing("P4", "b", "BC", "C")
                    .crossing("P5", "d", "CD", "C").crossing("P6", "c", "CD", "D").crossing("P7", "a", "DA", "D").crossing("P8", "d", "DA", "A"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("atrue", "P2false", "P7false");
    }

    /** Euclid IV.15: the side of the hexagon is the radius of its circle. */
    @Test
    void the_hexagon_is_regular() throws Exception {
        walk("the-hexagon.json", Map.of("corner", "120", "flat", "3 7/16 in", "cloth", "3 15/16 in"), Map.of("corner", "60", "flat", "4 in", "cloth", "3 11/16 in"));
        // From flat to flat by I.47: twice the height of an equal-sided triangle.
        assertThat(distance("hexagon", "P2", "P6")).isCloseTo(2 * Math.sqrt(2 * 2 - 1), within(1e-9)).isCloseTo(3 + 7.0 / 16, within(1.0 / 32));
        List<String> corners = List.of("R", "P2", "P3", "L", "P5", "P6", "R");
        for (int i = 0; i < 6; i++) {
            assertThat(distance("hexagon", corners.get(i), corners.get(i + 1))).as(corners.get(i)).isCloseTo(2, within(1e-9));
            assertThat(distance("hexagon", "O", corners.get(i))).as(corners.get(i)).isCloseTo(2, within(1e-9));
        }
        // The right swing opened to 1 7/8 in: its two marks inherit it, the left swing's are right.
        assertThat(told("""
                String.join("\\n", DraftReview.of(swings, sheet.circle("right", "R", inches("1 7/8")).circle("left", "L", "O")
                    .crossing("P2", "right", "rim", "T").crossing("P3", "left", "rim", "T").crossing("P5", "left", "rim", "U").crossing("P6", "right", "rim", "U"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("righttrue", "P2false", "P6false");
    }

    /** Common practice: each line joins marks three eighths of a turn apart; the chord is twice the radius times the sine of 67 1/2 degrees. */
    @Test
    void the_star_has_eight_lines_alike() throws Exception {
        walk("the-eight-pointed-star.json", Map.of("tip", "45", "high", "2 1/2 in", "strip", "3 in", "square", "4 in"),
                Map.of("tip", "60", "high", "3 1/2 in", "strip", "2 3/4 in", "square", "3 1/2 in"));
        // The lines from P1 and P2 that cross above the side run at 45 degrees: they meet half of P1 P2 above it, at the inner corner of two diamonds.
        double half = 2 * (Math.sqrt(2) - 1);
        assertThat(2 - half).as("from the middle to the inner corner").isCloseTo(half * Math.sqrt(2), within(1e-9)).isCloseTo(distance("star", "A", "P1"), within(1e-9));
        assertThat(told("""
                "" + EightPointedStar.block(inches(12)).patches().stream().flatMap(p -> p.shape().outer().corners().stream()).filter(c ->
                    IntStream.rangeClosed(1, 8).anyMatch(i -> star.at("P" + i).minus(Point.of(1, 1)).times(3).near(c, 1e-9))).map(c -> Math.round(c.x() * 1e6) + "," + Math.round(c.y() * 1e6))
                    .distinct().count()""")).as("tips of the block where the draft has them").isEqualTo("8");
        double radius = Math.hypot(2, 2 * (Math.sqrt(2) - 1));
        for (int i = 0; i < 8; i++) {
            assertThat(distance("star", "P" + (i + 1), "P" + ((i + 3) % 8 + 1))).as("line " + i).isCloseTo(2 * radius * Math.sin(Math.toRadians(67.5)), within(1e-9));
        }
        // Joined to the second mark on instead of the third: the ink itself is at fault.
        assertThat(told("""
                String.join("\\n", DraftReview.of(star, swings.ink("star", "P1", "P3", "P5", "P7", "P1"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("startrue");
    }

    /** Euclid VI.10: a line is cut as another was cut, by parallels; heights of the marks by I.47, from the side and the slant alone. */
    @Test
    void the_slanted_ruler_parts_the_square_in_five_and_seven() throws Exception {
        walk("five-and-seven-patches.json", Map.of("sixteenths", "2", "rise", "2 3/16 in", "pieces", "9",
                "longest", "6 3/8 in", "seventh", "5 1/4 in", "middle", "1 1/2 in", "cut", "3 1/2 in"),
                Map.of("sixteenths", "1", "rise", "2 in", "pieces", "25", "longest", "7 in", "seventh", "7 in", "middle", "1 in", "cut", "3 in"));
        assertThat(distance("five", "B", "E")).isCloseTo(Math.sqrt(25 - 20.25), within(1e-9));
        assertThat(distance("seven", "B", "E")).isCloseTo(Math.sqrt(5.25 * 5.25 - 20.25), within(1e-9));
        for (int i = 1; i <= 4; i++) {
            for (String foot : List.of("AF", "DT", "AL", "BM")) {
                assertThat(distance("five", foot.substring(0, 1), foot.substring(1) + i)).as(foot + i).isCloseTo(0.9 * i, within(1e-9));
            }
            assertThat(distance("five", "F" + i, "T" + i)).as("column " + i).isCloseTo(4.5, within(1e-9));
            assertThat(distance("five", "L" + i, "M" + i)).as("row " + i).isCloseTo(4.5, within(1e-9));
        }
        for (int i = 1; i <= 6; i++) {
            assertThat(distance("seven", "A", "F" + i)).as("seventh " + i).isCloseTo(4.5 * i / 7, within(1e-9));
            assertThat(distance("seven", "D", "T" + i)).as("seventh " + i).isCloseTo(4.5 * i / 7, within(1e-9));
        }
        // Seven whole inches do not lie in the square: the slant would leave it, since its diagonal is shorter.
        assertThat(distance("square", "A", "C")).isCloseTo(4.5 * Math.sqrt(2), within(1e-9)).isLessThan(7);
        // The compass opened to 4 7/8 in: the swing is named, and the mark on BC inherits it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(slant, square.circle("swing", "A", inches("4 7/8")).crossing("E", "swing", "BC", "B").segment("AE", "A", "E"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).contains("swingtrue", "Efalse").doesNotContain("BCtrue", "BCfalse");
    }

    /** Euclid IV.6: the lines from middle to middle cross at right angles and halve each other, so that their ends are a square's corners; its side by I.47. */
    @Test
    void the_square_on_point_is_true_and_half_as_large() throws Exception {
        walk("the-square-on-point.json", Map.of("side", "2 13/16 in", "corner", "90", "triangles", "4", "block", "4 1/4 in", "cut", "3 in", "squares", "2", "whole", "3 1/2 in"),
                Map.of("side", "2 in", "corner", "45", "triangles", "2", "block", "6 in", "cut", "2 5/8 in", "squares", "4", "whole", "3 in"));
        for (String side : List.of("MN", "NK", "KL", "LM")) {
            assertThat(distance("square", side.substring(0, 1), side.substring(1))).as(side).isCloseTo(Math.sqrt(2 * 2 + 2 * 2), within(1e-9));
        }
        assertThat(distance("square", "M", "K")).isCloseTo(4, within(1e-9));
        assertThat(distance("square", "N", "L")).isCloseTo(4, within(1e-9));
        // Four triangles with two sides of 2 in have the area of the square on point.
        assertThat(Math.pow(distance("square", "M", "N"), 2)).isCloseTo(4 * (2 * 2 / 2.0), within(1e-9));
        // A line 1/4 in outside each side of a half-square triangle makes its short side longer by 1/4 in times 2 and the root of 2: plain trigonometry.
        assertThat(4.25 / 2 + 0.25 * (1 + 1 / Math.tan(Math.PI / 8))).isCloseTo(3, within(1.0 / 32));
        // M set by eye, 1/8 in off: the mark and the ink that ends on it differ, K and L and N do not.
        assertThat(told("""
                String.join("\\n", DraftReview.of(square, sheet.bisector("upright", "A", "B").point("M", inches("3 1/8"), inches(5)).crossing("K", "upright", "CD")
                    .bisector("level", "B", "C").crossing("N", "level", "BC").crossing("L", "level", "DA")
                    .ink("edge", "A", "B", "C", "D", "A").ink("onpoint", "M", "N", "K", "L", "M"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("Mtrue", "onpointfalse");
    }

    /** Ptolemy, Almagest I.10, and Euclid XIII.10: OQ is the side of the ten-sided figure, TQ of the five-sided; both by plain trigonometry. */
    @Test
    void the_pentagon_is_regular() throws Exception {
        walk("the-pentagon.json", Map.of("along", "1 9/16 in", "side", "2 15/16 in", "corner", "108", "pieces", "11", "cut", "3 5/16 in"),
                Map.of("along", "1 1/4 in", "side", "2 1/2 in", "corner", "72", "pieces", "6", "cut", "3 7/16 in"));
        assertThat(distance("opening", "O", "Q")).isCloseTo(2 * 2.5 * Math.sin(Math.toRadians(18)), within(1e-9));
        List<String> corners = List.of("T", "P2", "P3", "P4", "P5", "T");
        for (int i = 0; i < 5; i++) {
            assertThat(distance("pentagon", corners.get(i), corners.get(i + 1))).as(corners.get(i)).isCloseTo(2 * 2.5 * Math.sin(Math.toRadians(36)), within(1e-9));
            assertThat(distance("pentagon", "O", corners.get(i))).as(corners.get(i)).isCloseTo(2.5, within(1e-9));
        }
        // A pentagon 1/4 in wider all round has its flat sides 1/4 in further from the middle, and all its lengths grow alike: Euclid VI.4.
        double flat = 2.5 * Math.cos(Math.toRadians(36));
        assertThat(2 * 2.5 * Math.sin(Math.toRadians(36)) * (flat + 0.25) / flat).isCloseTo(3 + 5.0 / 16, within(1.0 / 32));
        // M set by eye, 1/8 in off: the swing about it and all that comes of it inherit the fault.
        assertThat(told("""
                String.join("\\n", DraftReview.of(opening, sheet.bisector("half", "O", "R").point("M", inches("4 3/8"), inches(3))
                    .circle("swing", "M", "T").crossing("Q", "swing", "LR", "L").segment("TQ", "T", "Q"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("Mtrue", "swingfalse", "Qfalse", "TQfalse");
    }

    /** Euclid VI.3: the line that halves the angle at A parts BC as AB is to AC; the corners of the ray by I.32. */
    @Test
    void the_ray_stands_even_about_its_spine() throws Exception {
        walk("a-ray-of-the-compass-rose.json", Map.of("foot", "1 11/16 in", "tip", "45", "shoulder", "112.5", "size", "8 1/2 in", "shapes", "4"),
                Map.of("foot", "2 in", "tip", "60", "shoulder", "135", "size", "8 in", "shapes", "8"));
        double foot = 4 / (1 + Math.sqrt(2));
        assertThat(distance("ray", "B", "P")).isCloseTo(foot, within(1e-9)).isCloseTo(4 * Math.tan(Math.toRadians(22.5)), within(1e-9));
        assertThat(distance("ray", "D", "Q")).isCloseTo(foot, within(1e-9));
        assertThat(distance("ray", "P", "C")).isCloseTo(foot * Math.sqrt(2), within(1e-9)).isCloseTo(distance("ray", "Q", "C"), within(1e-9));
        assertThat(Double.parseDouble(told("\"\" + ray.angle(\"A\", \"P\", \"C\").degrees()"))).isCloseTo(180 - (90 - 22.5), within(1e-9));
        // The draft's shape is the block's: every corner of the ray stands in the rose, a fourth of it, with the tip in the corner.
        assertThat(told("""
                "" + rose.patches().stream().filter(p -> p.role() == Role.DARK && p.shape().outer().corners().stream().allMatch(c ->
                    List.of("A", "P", "C", "Q").stream().anyMatch(n -> ray.at(n).minus(Point.of(1, 1)).near(Point.of(c.x(), c.y() - 4), 1e-9)))).count()""")).isEqualTo("1");
        // P marked at the middle of the side: the mark alone is at fault, the ink inherits it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(ray, spine.angleBisector("lower", "B", "A", "C").point("P", inches(5), inches(3))
                    .angleBisector("upper", "C", "A", "D").crossing("Q", "upper", "CD").ink("square", "A", "B", "C", "D", "A").ink("ray", "A", "P", "C", "Q", "A"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("Ptrue", "rayfalse");
    }

    /** Euclid IV.15 twice, a right angle apart; the tips by III.20, half of the arc that they look at; chords by plain trigonometry. */
    @Test
    void the_clock_of_twelve_is_even_and_so_are_its_stars() throws Exception {
        walk("the-twelve-pointed-star.json", Map.of("hour", "30", "step", "1 5/16 in", "blunt", "90", "sharp", "30", "high", "1 1/2 in", "strip", "2 in", "along", "4 in", "strips", "2"),
                Map.of("hour", "12", "step", "2 1/2 in", "blunt", "60", "sharp", "60", "high", "3 in", "strip", "1 1/2 in", "along", "2 in", "strips", "1"));
        for (int i = 1; i <= 12; i++) {
            for (int on : List.of(1, 3, 5)) {
                assertThat(distance("star", "H" + i, "H" + ((i + on - 1) % 12 + 1))).as(i + " and " + on + " on").isCloseTo(2 * 2.5 * Math.sin(Math.toRadians(15 * on)), within(1e-9));
            }
        }
        for (String side : List.of("O-U", "U-W", "W-V", "V-O")) {
            assertThat(distance("diamond", side.split("-")[0], side.split("-")[1])).as(side).isCloseTo(1.25, within(1e-9));
        }
        assertThat(Double.parseDouble(told("\"\" + diamond.angle(\"U\", \"O\", \"V\").degrees()"))).isCloseTo(30, within(1e-9));
        // Twelve and no more come from two strips: the cut diamond is 2 in high and leans by 2 in over the tangent of 30 degrees.
        double each = 2 / Math.sin(Math.toRadians(30));
        double first = each + 2 / Math.tan(Math.toRadians(30));
        assertThat(first).isCloseTo(7.5, within(0.05));
        assertThat(1 + Math.floor((40 - first) / each)).isEqualTo(9);
        assertThat(told("Pieces.of(Block.plain(\"one\", Role.DARK.standIn(), inRow.get(0).shape()), CuttingRules.INCH).get(0).toString()")).contains("strip=2 in", "each=4 in").contains(String.format(java.util.Locale.ROOT, "first=%.4f in", first));
        // Joined to the fourth mark on instead of the fifth: the ink itself is at fault.
        assertThat(told("""
                String.join("\\n", DraftReview.of(star, hours.ink("star", "H12", "H4", "H8", "H12"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("startrue");
    }

    /** Archimedes, Measurement of a Circle, prop. 3: round and width are as 3 10/71 to 3 1/7 to one; the templates' ends by Euclid I.47. */
    @Test
    void the_quarter_curve_has_its_length_and_its_templates_lie_a_seam_outside() throws Exception {
        walk("the-quarter-curve.json", Map.of("seam", "4 5/16 in", "disc", "3 in", "hollow", "2 1/2 in", "longer", "13/16 in", "sewn", "4 1/2 in"),
                Map.of("seam", "5 1/2 in", "disc", "2 1/2 in", "hollow", "3 in", "longer", "1/2 in", "sewn", "4 1/4 in"));
        for (Map.Entry<String, Double> round : Map.of("unit seam", 2.75, "quarter disc round", 3.0, "hollowed hollow round", 2.5).entrySet()) {
            String[] of = round.getKey().split(" ", 2);
            double length = Double.parseDouble(told("\"\" + ((Figure.Ink) " + of[0] + ".figures().get(\"" + of[1] + "\")).path().length()"));
            // The cut arcs run on a little beyond a quarter, to the lines 1/4 in outside.
            double beyond = of[0].equals("unit") ? 0 : 2 * round.getValue() * Math.asin(0.25 / round.getValue());
            assertThat((length - beyond) * 4).as(round.getKey()).isBetween(2 * round.getValue() * 223 / 71, 2 * round.getValue() * 22 / 7);
        }
        assertThat(distance("quarter", "K", "K1")).isCloseTo(0.25 + Math.sqrt(3 * 3 - 0.25 * 0.25), within(1e-9)).isCloseTo(distance("quarter", "K", "K2"), within(1e-9));
        assertThat(distance("hollowed", "J1", "J3")).isCloseTo(4.5 - 0.25 - Math.sqrt(2.5 * 2.5 - 0.25 * 0.25), within(1e-9)).isCloseTo(distance("hollowed", "J2", "J4"), within(1e-9));
        assertThat(distance("quarter", "G", "K3")).isCloseTo(0.25, within(1e-9));
        assertThat(distance("hollowed", "G", "J5")).isCloseTo(0.25, within(1e-9));
        assertThat(distance("hollowed", "J1", "J2")).isCloseTo(4.5 * Math.sqrt(2), within(1e-9));
        // The allowance put on the wrong side of the hollow: its circle is at fault, the marks and the ink inherit it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(hollowed, unit.point("K", inches("3/4"), inches("5 1/4")).parallel("left", "DA", "K").parallel("low", "AB", "K")
                    .point("J", inches("5 1/4"), inches("3/4")).parallel("right", "BC", "J").parallel("high", "CD", "J").crossing("J1", "low", "right").crossing("J2", "high", "left")
                    .circle("hollow edge", "A", inches(3)).crossing("J3", "hollow edge", "low", "B").crossing("J4", "hollow edge", "left", "D")
                    .crossing("J5", "hollow edge", "AC").arc("hollow cut", "J3", "J5", "J4").ink("hollow sides", "J3", "J1", "J", "J2", "J4").inkCurve("hollow round", "hollow cut"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines())
                .containsExactly("hollow edgetrue", "J3false", "J4false", "J5false", "hollow cutfalse", "hollow sidesfalse", "hollow roundfalse");
    }

    /** Euclid VII.2: 9 taken from 66 again and again leaves 3, which measures both; the spacer by trying every count. */
    @Test
    void the_border_fits_with_the_spacer_and_no_other() throws Exception {
        walk("a-border-that-fits.json", Map.of("whole", "7", "left", "1/4 in", "smaller", "8 1/4 in", "spacer", "3 in", "units", "36", "outside", "90 in", "strip", "3 1/2 in",
                "first", "66 1/2 in", "second", "72 1/2 in", "unit", "9 1/2 in"), Map.of("whole", "8", "left", "3/4 in", "smaller", "7 1/4 in", "spacer", "6 in", "units", "32",
                "outside", "81 in", "strip", "3 in", "first", "66 in", "second", "66 1/2 in", "unit", "9 in"));
        List<Double> spacers = new ArrayList<>();
        for (int count = 1; count < 20; count++) {
            double each = (9 * count - 66) / 2.0;
            if (each >= 1 && each <= 6) {
                spacers.add(each);
                assertThat(count).isEqualTo(8);
            }
        }
        assertThat(spacers).containsExactly(3.0);
        assertThat(told("\"\" + fit.nearest()")).contains("8 on each side").contains("spacer of 3 in");
        assertThat(distance("tried", "U7", "B") * 12).isCloseTo(66 % 9, within(1e-9));
        assertThat(distance("spaced", "V7", "F")).isCloseTo(0.75, within(1e-9));
        assertThat(distance("border", "P", "Q") * 12).isCloseTo(66 + 2 * 3 + 2 * 9, within(1e-9));
        // The drawn border's cells: eight along the side drawn, each as wide as the border is high.
        for (int i = 1; i <= 7; i++) {
            assertThat(distance("border", "V" + i, "W" + i)).as("unit " + i).isCloseTo(0.75, within(1e-9));
        }
        // All that is missing given to one side: the corners of the spacer are at fault, and what hangs on them inherits it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(spaced, sheet.point("E", inches("1 1/4"), inches("7 1/2")).point("F", inches("7 1/2"), inches("7 1/2"))
                    .point("G", inches("7 1/2"), inches("1 1/2")).point("H", inches("1 1/4"), inches("1 1/2")).ink("middle", "A", "B", "C", "D", "A")
                    .ink("spacer", "E", "F", "G", "H", "E").segment("EF", "E", "F").stepOff("V", "E", "F", inches("3/4"), 7))
                    .differences().stream().filter(d -> d.isMadeHere()).map(d -> d.figure()).toList())""").lines()).containsExactly("E", "H");
    }

    /** Euclid I.47 for the slant and X.117, that side and diagonal have no common measure; which number of teeth comes nearest, by trying each. */
    @Test
    void the_teeth_are_whole_on_the_straight_side_and_nearly_on_the_slant() throws Exception {
        walk("the-teeth-of-the-feathered-star.json", Map.of("pieces", "18", "slant", "5 11/16 in", "along", "6", "part", "15/16 in", "straight", "1 7/8 in", "dark", "4", "slanted", "1 13/16 in"),
                Map.of("pieces", "10", "slant", "5 in", "along", "5", "part", "1 in", "straight", "1 1/2 in", "dark", "8", "slanted", "1 7/8 in"));
        double slant = Math.sqrt(4 * 4 + 4 * 4);
        assertThat(distance("slanting", "B", "D")).isCloseTo(slant, within(1e-9));
        assertThat(java.util.stream.IntStream.rangeClosed(1, 12).boxed().min(java.util.Comparator.comparingDouble(n -> Math.abs(slant / n - 1))).orElseThrow()).isEqualTo(6);
        assertThat(distance("slanting", "B", "V1")).isCloseTo(slant / 6, within(1e-9));
        for (List<String> zigzag : List.of(List.of("B", "S1", "S2", "S3", "C"), List.of("D", "T1", "T2", "T3", "C"), List.of("E", "Q1", "Q2", "Q3", "H"), List.of("G", "R1", "R2", "R3", "J"))) {
            for (int i = 1; i < zigzag.size(); i++) {
                assertThat(distance("teeth", zigzag.get(i - 1), zigzag.get(i))).as(zigzag.get(i)).isCloseTo(1, within(1e-9));
            }
        }
        // A line 1/4 in outside each side makes the short side of a half-square triangle longer by 0.854 in: plain trigonometry, cut as 7/8.
        assertThat(0.25 * (1 + 1 / Math.tan(Math.PI / 8))).isCloseTo(7.0 / 8, within(1.0 / 32));
        assertThat(slant / 6 + 7.0 / 8).isCloseTo(1 + 13.0 / 16, within(1.0 / 32));
        // The block to be cut is the draft: each of its dark triangles has its corners on the zigzags.
        assertThat(told("""
                "" + block.patches().stream().filter(p -> p.role() == Role.DARK).filter(p -> p.shape().outer().corners().stream().allMatch(c ->
                    List.of("B", "C", "D", "S1", "S2", "S3", "T1", "T2", "T3", "Q1", "Q2", "Q3", "R1", "R2", "R3", "H", "J").stream()
                        .anyMatch(n -> teeth.at(n).minus(Point.of(1, 1)).near(c, 1e-9)))).count()""")).isEqualTo("8");
        // A zigzag begun at E instead of B: the ink itself is at fault.
        assertThat(told("""
                String.join("\\n", DraftReview.of(teeth, marks.ink("edge", "A", "B", "E", "F", "G", "D", "A").ink("inner", "B", "C", "D").ink("corner", "H", "C", "J")
                    .ink("right teeth", "E", "S1", "Q1", "S2", "Q2", "S3", "Q3", "C").ink("upper teeth", "D", "R1", "T1", "R2", "T2", "R3", "T3", "J"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("right teethtrue");
    }

    /** Euclid III.12 for the line from middle to middle, III.16 for the tip; Archimedes, Measurement of a Circle, prop. 3, for the edge. */
    @Test
    void the_orange_peel_is_as_wide_as_its_swings_overlap() throws Exception {
        walk("the-orange-peel.json", Map.of("wide", "2 3/8 in", "tip", "90", "edge", "6 5/16 in", "outer", "4 1/4 in", "inner", "3 3/4 in", "across", "8 in"),
                Map.of("wide", "2 in", "tip", "45", "edge", "5 11/16 in", "outer", "4 in", "inner", "4 1/4 in", "across", "4 in"));
        assertThat(distance("peel", "M", "N")).isCloseTo(4 + 4 - Math.sqrt(32), within(1e-9));
        assertThat(Double.parseDouble(told("\"\" + ((Figure.Ink) peel.figures().get(\"upper edge\")).path().length()"))).isBetween(2.0 * 223 / 71, 2.0 * 22 / 7)
                .isCloseTo(Double.parseDouble(told("\"\" + ((Figure.Ink) peel.figures().get(\"lower edge\")).path().length()")), within(1e-9));
        // The tip between the first thousandths of both edges.
        double tip = Double.parseDouble(told("""
                "" + Stream.of("upper edge", "lower edge").map(n -> ((Figure.Ink) peel.figures().get(n)).path().flattened(1e-9).get(1).minus(peel.at("A")))
                    .mapToDouble(p -> Math.toDegrees(Math.atan2(-p.y(), p.x()))).reduce(0, (one, other) -> Math.abs(one - other))"""));
        assertThat(tip).isCloseTo(90, within(0.5));
        assertThat(distance("cut", "M", "Q")).isCloseTo(0.25, within(1e-9));
        assertThat(distance("cut", "N", "R")).isCloseTo(0.25, within(1e-9));
        assertThat(distance("cut", "A", "K")).isCloseTo(Math.sqrt(4.25 * 4.25 - 8) - Math.sqrt(8), within(1e-9)).isCloseTo(distance("cut", "C", "L"), within(1e-9)).isCloseTo(1 / 3.0, within(1.0 / 64));
        // The second swing from C instead of D: that circle is at fault, N inherits it, M does not.
        assertThat(told("""
                String.join("\\n", DraftReview.of(swings, sheet.circle("aboutB", "B", "A").circle("aboutD", "C", "D").segment("BD", "B", "D")
                    .crossing("M", "aboutB", "BD", "D").crossing("N", "aboutD", "BD", "B"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("aboutDtrue", "Nfalse");
    }

    /** Euclid I.1 for the thirds and I.9 for the halves; every step along the rim by plain trigonometry. */
    @Test
    void the_blades_of_the_fan_are_alike() throws Exception {
        walk("the-fan.json", Map.of("third", "30", "blade", "15", "pieces", "8", "width", "15/16 in", "outside", "3 3/4 in", "inside", "3/4 in", "lost", "5/16 in"),
                Map.of("third", "45", "blade", "18", "pieces", "7", "width", "1/2 in", "outside", "3 1/4 in", "inside", "1 1/4 in", "lost", "3/16 in"));
        List<String> outer = List.of("E", "P1", "P2", "P3", "P4", "P5", "F");
        List<String> inner = List.of("G", "Q1", "Q2", "Q3", "Q4", "Q5", "H");
        for (int i = 1; i < 7; i++) {
            assertThat(distance("fan", outer.get(i - 1), outer.get(i))).as(outer.get(i)).isCloseTo(2 * 3.5 * Math.sin(Math.toRadians(7.5)), within(1e-9));
            assertThat(distance("fan", inner.get(i - 1), inner.get(i))).as(inner.get(i)).isCloseTo(2 * Math.sin(Math.toRadians(7.5)), within(1e-9));
            assertThat(distance("fan", inner.get(i), outer.get(i))).as(outer.get(i)).isCloseTo(2.5, within(1e-9));
        }
        // The block that the templates are cut for has its blades where the draft has them.
        assertThat(told("""
                "" + GrandmothersFan.block(inches(4)).patches().stream().filter(p -> p.shape().outer().corners().size() == 4 && p.shape().outer().corners().stream().allMatch(c ->
                    List.of("E", "P1", "P2", "P3", "P4", "P5", "F", "G", "Q1", "Q2", "Q3", "Q4", "Q5", "H").stream().anyMatch(n -> fan.at(n).minus(Point.of(1, 1)).near(c, 1e-9)))).count()"""))
                .isEqualTo("6");
        // The first third swung 1/8 in too wide: that swing is at fault, its mark inherits it, the other third is right.
        assertThat(told("""
                String.join("\\n", DraftReview.of(thirds, rims.circle("fromE", "E", inches("3 5/8")).crossing("P4", "fromE", "outer", "D").circle("fromF", "F", "A").crossing("P2", "fromF", "outer", "B"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("fromEtrue", "P4false");
    }
}
