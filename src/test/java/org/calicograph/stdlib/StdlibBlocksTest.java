package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.calicograph.Golden;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.covering.Cover;
import org.calicograph.quilt.Medallion;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.show.PatchworkPicture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StdlibBlocksTest {

    /** Every routine of stdlib that makes a block from a finished size alone, and the others at usual settings. */
    static Stream<Patchwork> blocks(Length side) {
        List<Patchwork> blocks = new ArrayList<>();
        for (String name : CompiledStdlib.names()) {
            Class<?> type = CompiledStdlib.named(name);
            for (String method : List.of("block", "unit", "tooth")) {
                if (Stream.of(type.getMethods()).anyMatch(m -> m.getName().equals(method) && m.getParameterCount() == 1)) {
                    blocks.add((Patchwork) CompiledStdlib.call(type, method, side));
                }
            }
        }
        blocks.add((Block) CompiledStdlib.call(CompiledStdlib.named("OceanWaves"), "block", side, 4));
        blocks.add(star(5, 2, side));
        blocks.add(star(16, 6, side).inSquare(side.times(1.1)));
        blocks.add((Block) CompiledStdlib.call(CompiledStdlib.named("CompassStar"), "of", 32, side));
        blocks.add(((Block) CompiledStdlib.call(CompiledStdlib.named("CompassStar"), "of", 16, side)).inSquare(side.times(1.25)));
        return blocks.stream();
    }

    static Block star(int points, int skip, Length across) {
        Object star = CompiledStdlib.call(CompiledStdlib.named("Star"), "of", points);
        return (Block) CompiledStdlib.call(CompiledStdlib.call(star, "skipping", skip), "across", across);
    }

    static Stream<Patchwork> atFiveSizes() {
        return Stream.of("3", "6 1/2", "12", "30 cm", "25.3333").map(Length::parse).flatMap(StdlibBlocksTest::blocks);
    }

    @ParameterizedTest
    @MethodSource("atFiveSizes")
    void patches_cover_the_block_without_overlap(Patchwork block) {
        double sum = block.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(sum).isCloseTo(block.outline().area().squareInches(), within(1e-6 * sum));
        Cover.check(block.name(), block.outline(), block.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
    }

    static Stream<Patchwork> atTwelveInches() {
        return blocks(inches(12));
    }

    @ParameterizedTest
    @MethodSource("atTwelveInches")
    void every_block_looks_as_it_was_accepted(Patchwork block) {
        String name = block.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "-" + block.patchCount();
        Golden.picture("stdlib/" + name, PatchworkPicture.of(block));
    }

    /** Every border routine that needs a size alone goes round a square of 48 in with units of 4 in. */
    @Test
    void every_border_goes_round_and_there_are_fifteen() {
        List<String> names = CompiledStdlib.names().stream().filter(n -> n.endsWith("Border")).toList();
        assertThat(names).hasSizeGreaterThanOrEqualTo(15);
        for (String name : names) {
            Class<?> type = CompiledStdlib.named(name);
            boolean one = Stream.of(type.getMethods()).anyMatch(m -> m.getName().equals("of") && m.getParameterCount() == 1);
            Object second = name.equals("WavesBorder") ? (Object) 2 : inches(1);
            Border border = (Border) (one ? CompiledStdlib.call(type, "of", inches(4)) : CompiledStdlib.call(type, "of", inches(4), second));
            Patchwork top = Medallion.around(Block.plain(org.calicograph.fabric.Role.LIGHT.standIn(), inches(24), inches(24))).with(border).top();
            Cover.check(name, top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
            Golden.picture("stdlib/" + name.toLowerCase(Locale.ROOT), PatchworkPicture.of(top));
        }
    }

    /** Borders and motifs are not counted; every routine says where its drafting rule comes from. */
    @Test
    void there_are_at_least_64_blocks_and_each_names_the_source_of_its_drafting() throws java.io.IOException {
        List<String> names = CompiledStdlib.names().stream().filter(n -> !n.endsWith("Border") && !n.endsWith("Motifs")).toList();
        assertThat(names).hasSizeGreaterThanOrEqualTo(64);
        for (String name : names) {
            String source = java.nio.file.Files.readString(CompiledStdlib.FOLDER.resolve(name + ".java"));
            assertThat(source).as(name).containsPattern("Drafting:(?s).*(common practice|[Tt]extbook|from memory)");
        }
    }

    @Test
    void there_are_at_least_twelve_traditional_blocks_and_a_border() {
        assertThat(blocks(inches(12)).map(Patchwork::name).distinct().count()).isGreaterThanOrEqualTo(18);
        Object sawtooth = CompiledStdlib.call(CompiledStdlib.named("SawtoothBorder"), "of", inches(2));
        Patchwork top = Medallion.around(Block.plain(org.calicograph.fabric.Role.LIGHT.standIn(), inches(24), inches(20)))
                .with((Border) sawtooth).top();
        assertThat(top.width()).isEqualTo(inches(28));
    }

    /**
     * Eight-point star: corner squares of 4.3936 in for a 15 in block and 5.2724 in for an 18 in block ('Drafting for the
     * Creative Quilter', C&T Publishing, 2010, p. 67; 'Draw-on-the-line 8-pointed star' tutorial). The books round the
     * factor; the exact values differ from them by at most 0.0003 in.
     */
    @ParameterizedTest
    @CsvSource({"15,4.3936", "18,5.2724"})
    void the_eight_pointed_star_has_the_textbook_corner_square(int side, double published) {
        Block star = (Block) CompiledStdlib.call(CompiledStdlib.named("EightPointedStar"), "block", inches(side));
        Patch corner = star.patches().stream().filter(p -> p.shape().outer().corners().size() == 4 && p.shape().bounds().right() > side - 1e-9
                && p.shape().bounds().top() < 1e-9).findFirst().orElseThrow();
        assertThat(corner.shape().bounds().width()).isCloseTo(published, within(0.0004));
        assertThat(corner.shape().bounds().height()).isCloseTo(published, within(0.0004));
    }

    /** A true diamond has four equal sides and tips of 45 degrees (common practice). */
    @Test
    void the_eight_pointed_star_has_true_45_degree_diamonds() {
        Block star = (Block) CompiledStdlib.call(CompiledStdlib.named("EightPointedStar"), "block", inches(12));
        double side = 12 / (2 + Math.sqrt(2));
        List<Patch> diamonds = star.patches().stream().filter(p -> p.role().name().equals("dark") || p.role().name().equals("medium")).toList();
        assertThat(diamonds).hasSize(8).allSatisfy(d -> {
            assertThat(d.shape().outer().segments()).hasSize(4).allSatisfy(s -> assertThat(s.length()).isCloseTo(side, within(1e-9)));
            assertThat(d.shape().area().squareInches()).isCloseTo(side * side * Math.sin(Math.PI / 4), within(1e-9));
        });
    }

    /** Star polygons: tip angle and inner radius of {n/k}, computed from geometry on a circle of radius 1. */
    @ParameterizedTest
    @CsvSource({"5,2,36,0.3819660113", "7,3,25.71428571,0.3568958679", "8,2,90,0.7653668647", "8,3,45,0.5411961001",
        "9,4,20,0.3472963553", "10,3,72,0.7265425280", "12,2,120,0.8965754722"})
    void stars_have_the_tabled_tips_and_inner_corners(int points, int skip, double tip, double inner) {
        Object star = CompiledStdlib.call(CompiledStdlib.call(CompiledStdlib.named("Star"), "of", points), "skipping", skip);
        assertThat(((Angle) CompiledStdlib.call(star, "tip")).degrees()).isCloseTo(tip, within(1e-8));
        assertThat((double) CompiledStdlib.call(star, "innerShare")).isCloseTo(inner, within(1e-9));
        Region outline = star(points, skip, inches(2)).outline();
        double nearest = outline.outer().corners().stream().mapToDouble(c -> c.distance(outline.centroid())).min().orElseThrow();
        assertThat(nearest).isCloseTo(inner, within(1e-6));
    }

    /** The corner of a snowball whose middle is a regular octagon is block / 3.414 ('Drafting for the Creative Quilter', p. 67). */
    @Test
    void the_snowball_has_a_regular_octagon() {
        Patchwork snowball = (Patchwork) CompiledStdlib.call(CompiledStdlib.named("Snowball"), "block", inches(1));
        Patch octagon = snowball.patches().stream().filter(p -> p.shape().outer().segments().size() == 8).findFirst().orElseThrow();
        assertThat(octagon.shape().outer().segments()).allSatisfy(s -> assertThat(s.length()).isCloseTo(0.414214, within(1e-6)));
        assertThat(snowball.patches().get(0).shape().bounds().width()).isCloseTo(0.292893, within(1e-6));
    }

    /** Log cabin of 11 in with 1 in logs: logs of 1 to 10 and 11 in finished, cut 1/2 in larger (magazine pattern, 2013). */
    @Test
    void the_log_cabin_has_the_published_logs() {
        Patchwork cabin = (Patchwork) CompiledStdlib.call(CompiledStdlib.named("LogCabin"), "block", inches(11), 5);
        List<Long> lengths = cabin.patches().stream().map(p -> p.shape().bounds())
                .map(b -> Math.round(Math.max(b.width(), b.height()))).sorted().toList();
        assertThat(lengths).startsWith(1L, 1L, 2L, 2L, 3L, 3L).endsWith(9L, 9L, 10L, 10L, 11L).hasSize(21);
        assertThat(cabin.patches().stream().map(p -> p.shape().bounds())).allSatisfy((Box b) ->
                assertThat(Math.min(b.width(), b.height())).isCloseTo(1, within(1e-9)));
    }

    @Test
    void an_impossible_star_is_refused_with_the_repair() {
        assertThatThrownBy(() -> star(6, 3, inches(6))).hasMessageContaining("use 2 to 2");
        assertThatThrownBy(() -> CompiledStdlib.call(CompiledStdlib.named("OceanWaves"), "block", inches(8), 3))
                .hasMessageContaining("use 2, 4, 6");
    }

    /** A chequerboard's neighbours are never alike (fact of the pattern). */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 8, 11})
    void chequers_go_on_round_every_corner(int units) {
        Border border = (Border) CompiledStdlib.call(CompiledStdlib.named("CheckerBorder"), "of", inches(4));
        Patchwork top = Medallion.around(Block.plain(org.calicograph.fabric.Role.LIGHT.standIn(), inches(4L * units), inches(4L * (units + 3)))).with(border).top();
        List<Patch> ring = top.patches().stream().filter(p -> p.shape().area().squareInches() < 5).toList();
        assertThat(ring).hasSize(4 * (4 * units + 10));
        for (Patch a : ring) {
            for (Patch b : ring) {
                double apart = a.shape().centroid().distance(b.shape().centroid());
                if (Math.abs(apart - 2) < 0.01) {
                    assertThat(a.role()).as(a.id() + " beside " + b.id()).isNotEqualTo(b.role());
                }
            }
        }
    }

    /** Every edge of the wheel is alike, its diamonds are of 45 degrees, and thirty-two make it; the edge is 0.14645 of the side (geometry). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void a_wheel_of_diamonds_has_one_edge_throughout(int rows) {
        Block wheel = (Block) CompiledStdlib.call(CompiledStdlib.named("CarpentersWheel"), "block", inches(24), rows);
        Cover.check("wheel", wheel.outline(), wheel.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
        double edge = 24 * 0.1464466;
        List<Patch> diamonds = wheel.patches().stream().filter(p -> !p.role().equals(org.calicograph.fabric.Role.BACKGROUND)).toList();
        assertThat(diamonds).hasSize(32 * rows * rows);
        assertThat(diamonds).allSatisfy(d -> {
            assertThat(d.shape().outer().segments()).allSatisfy(s -> assertThat(s.length()).isCloseTo(edge / rows, within(1e-4)));
            assertThat(d.shape().area().squareInches()).isCloseTo(edge * edge / rows / rows * Math.sqrt(0.5), within(1e-3));
        });
        assertThat(wheel.patches()).hasSize(32 * rows * rows + 8 + 12 + 8);
        if (rows == 3) {
            Golden.picture("stdlib/broken-star", PatchworkPicture.of(wheel));
        }
    }
}
