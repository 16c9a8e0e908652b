package org.calicograph.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColourSpacesTest {

    private static List<String[]> rows(String resource) throws IOException {
        try (var in = ColourSpacesTest.class.getResourceAsStream(resource)) {
            return rows(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
        }
    }

    private static List<String[]> rows(List<String> lines) {
        return lines.stream().filter(l -> !l.startsWith("# ")).map(l -> l.split(",")).toList();
    }

    private static double[] numbers(String[] row, int from, int count) {
        return Arrays.stream(row, from, from + count).mapToDouble(Double::parseDouble).toArray();
    }

    private static void near(Oklab c, double l, double a, double b, double tolerance) {
        assertThat(new double[] {c.lightness(), c.a(), c.b()}).containsExactly(new double[] {l, a, b}, within(tolerance));
    }

    private static void near(Lab c, double l, double a, double b, double tolerance) {
        assertThat(new double[] {c.lightness(), c.a(), c.b()}).containsExactly(new double[] {l, a, b}, within(tolerance));
    }

    private static void near(LinearRgb light, double r, double g, double b, double tolerance) {
        assertThat(new double[] {LinearRgb.encoded(light.red()), LinearRgb.encoded(light.green()), LinearRgb.encoded(light.blue())})
                .containsExactly(new double[] {r, g, b}, within(tolerance));
    }

    @Test
    void ciede2000_gives_the_34_published_differences_both_ways() throws IOException {
        // Sharma, Wu and Dalal 2005, table 1.
        List<String[]> pairs = rows("ciede2000.csv");
        assertThat(pairs).hasSize(34);
        for (String[] row : pairs) {
            double[] n = numbers(row, 0, 7);
            Lab one = new Lab(n[0], n[1], n[2], Lab.White.D65);
            Lab two = new Lab(n[3], n[4], n[5], Lab.White.D65);
            assertThat(one.difference(two)).isCloseTo(n[6], within(5e-5));
            assertThat(two.difference(one)).isCloseTo(n[6], within(5e-5));
        }
    }

    @Test
    void colours_convert_as_the_web_platform_tests_say() {
        // W3C web-platform-tests, css/css-color: oklab-001, oklab-002, lab-006, oklch-004.
        near(Colour.hex("#008000").oklab(), 0.51975, -0.1403, 0.10768, 5e-6);
        near(Colour.BLACK.oklab(), 0, 0, 0, 1e-9);
        near(new Lab(70, 0, 70, Lab.White.D50).xyz().linear(), 0.7662, 0.6636, 0.0558, 1e-4);
        near(new Oklch(0.5, 0.2, 0).oklab().linear(), 0.70492, 0.02351, 0.37073, 1e-5);
        // lab-001 was published with an older Bradford matrix; 0.02 covers the difference.
        near(Colour.hex("#008000").lab(Lab.White.D50), 46.2775, -47.5621, 48.5837, 0.02);
    }

    @Test
    void colours_convert_as_other_libraries_publish() {
        // Test data of colorjs.io (test/conversions.js), attributed there to the OKLab reference code.
        near(Colour.hex("#ff0000").oklab(), 0.627955, 0.224863, 0.125846, 1e-4);
        near(Colour.hex("#0000ff").oklab(), 0.452014, -0.032457, -0.311528, 1e-4);
        near(Colour.hex("#ff00ff").oklab(), 0.701674, 0.274566, -0.169156, 1e-4);
        Oklch lime = Colour.hex("#00ff00").oklch();
        assertThat(lime.lightness()).isCloseTo(0.8664396175, within(1e-6));
        assertThat(lime.chroma()).isCloseTo(0.2948272245, within(1e-6));
        assertThat(lime.hue()).isCloseTo(142.4953450, within(1e-5));
        Lab slate = Colour.hex("#708090").lab(Lab.White.D50);
        assertThat(slate.chroma()).isCloseTo(11.234156441, within(1e-6));
        assertThat(slate.hue()).isCloseTo(253.002637669, within(1e-6));
        // Gold values of colorspacious, from independent converters; theirs takes 0.95047 1 1.08883 for white.
        LinearRgb light = new Colour(0.9, 0.8, 0.7).linear();
        assertThat(new double[] {light.red(), light.green(), light.blue()}).containsExactly(
                new double[] {0.787412289395617, 0.603827338855338, 0.447988412441883}, within(1e-9));
        near(new Xyz(0.10, 0.20, 0.30).lab(Lab.White.D65), 51.8372, -56.3591, -13.1812, 0.01);
        near(new Xyz(0.005, 0.006, 0.004).lab(Lab.White.D65), 5.4198, -2.8790, 3.6230, 0.01);
        Xyz white = Colour.WHITE.xyz();
        assertThat(new double[] {white.x(), white.y(), white.z()}).containsExactly(
                new double[] {0.9504559270516717, 1, 1.0890577507598784}, within(1e-9));
    }

    /**
     * Two npm libraries number the same colours. 500 stand beside this test; any number can be made with
     * src/test/node/colours.mjs and read with -Dcolour.samples=FILE.
     */
    @Test
    void colours_convert_and_differ_as_two_npm_libraries_say() throws IOException {
        String file = System.getProperty("colour.samples");
        List<String[]> all = file == null ? rows("colours.csv") : rows(Files.readAllLines(Path.of(file)));
        assertThat(all).hasSizeGreaterThanOrEqualTo(500);
        double worstMapping = 0;
        for (String[] row : all) {
            Colour one = Colour.hex(row[0]);
            double[] n = numbers(row, 2, 16);
            near(one.lab(Lab.White.D50), n[0], n[1], n[2], 1e-4);
            near(one.lab(Lab.White.D65), n[3], n[4], n[5], 1e-4);
            near(one.oklab(), n[6], n[7], n[8], 1e-6);
            assertThat(one.difference(Colour.hex(row[1]))).as("%s and %s", row[0], row[1]).isCloseTo(n[9], within(1e-4));
            Colour shown = new Oklch(n[10], n[11], n[12]).colour();
            Colour theirs = new Colour(clip(n[13]), clip(n[14]), clip(n[15]));
            worstMapping = Math.max(worstMapping, shown.oklab().distance(theirs.oklab()));
        }
        assertThat(worstMapping).as("distance in OKLab; 0.02 is just noticed").isLessThan(2e-3);
    }

    private static double clip(double part) {
        return Math.min(1, Math.max(0, part));
    }

    @Test
    void every_conversion_has_its_way_back() {
        for (int i = 0; i < 4096; i++) {
            Colour c = Colour.packed((i >> 8) * 17 << 16 | (i >> 4 & 15) * 17 << 8 | (i & 15) * 17);
            assertThat(c.oklch().colour().packed()).isEqualTo(c.packed());
            for (Lab.White white : Lab.White.values()) {
                near(c.lab(white).xyz().linear(), c.red(), c.green(), c.blue(), 1e-9);
            }
        }
    }

    @Test
    void the_grey_of_a_value_study_keeps_the_value() {
        for (String hex : List.of("#1f3a5f", "#b5553c", "#ffee00", "#0a7f3f")) {
            Colour c = Colour.hex(hex);
            assertThat(c.grey().value()).isCloseTo(c.value(), within(1e-6));
            assertThat(c.grey().oklch().chroma()).isLessThan(1e-4);
        }
    }

    @Test
    void differences_under_two_whites_are_refused() {
        assertThatThrownBy(() -> Colour.BLACK.lab(Lab.White.D50).difference(Colour.BLACK.lab(Lab.White.D65)))
                .hasMessage("a colour under D50 can't be compared with one under D65; convert both to the same white");
    }
}
