package org.calicograph.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Angle;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.patchwork.Block;
import org.calicograph.covering.Cover;
import org.calicograph.patchwork.Patchwork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurningsTest {

    private static final Block HALF = Block.onGrid("Half", 1, inches(4)).halvesRising(0, 0, 1, Role.LIGHT, Role.DARK).block();
    private static final Block LOPSIDED = Block.onGrid("Lopsided", 3, inches(6)).rectangle(Role.DARK, 0, 0, 1, 1).rectangle(Role.LIGHT, 1, 0, 2, 1)
            .rectangle(Role.MEDIUM, 0, 1, 3, 2).block();
    private static final Set<Turn> EIGHT = Set.copyOf(Turn.all());

    @Test
    void the_symmetry_of_a_block_is_found_from_its_patches() {
        assertThat(BlockSymmetry.of(HALF)).containsExactlyInAnyOrder(Turn.NONE, new Turn(3, true));
        assertThat(BlockSymmetry.of(LOPSIDED)).containsExactly(Turn.NONE);
        Block hourglass = Block.onGrid("Hourglass", 1, inches(4)).quarters(0, 0, 1, Role.DARK, Role.LIGHT, Role.DARK, Role.LIGHT).block();
        assertThat(BlockSymmetry.of(hourglass)).containsExactlyInAnyOrder(Turn.NONE, new Turn(2, false), new Turn(0, true), new Turn(2, true));
        assertThat(BlockSymmetry.of(Block.plain(Role.DARK.standIn(), inches(4), inches(4)))).hasSize(8);
    }

    @Property
    void turns_of_a_block_compose_as_turns_do(@ForAll @IntRange(max = 7) int a, @ForAll @IntRange(max = 7) int b) {
        Turn one = Turn.all().get(a);
        Turn two = Turn.all().get(b);
        Patchwork inTwo = two.of(one.of(LOPSIDED));
        Patchwork atOnce = one.then(two).of(LOPSIDED);
        for (int i = 0; i < inTwo.patches().size(); i++) {
            assertThat(inTwo.patches().get(i).shape().centroid().near(atOnce.patches().get(i).shape().centroid(), 1e-9)).isTrue();
        }
        assertThat(one.then(one.inverse())).isEqualTo(Turn.NONE);
    }

    /** Half-square triangle tile, four ways to lie, up to rotation and reflection: OEIS A302484 (2 x 2: 43, 4 x 4: 536911936). */
    @ParameterizedTest
    @CsvSource({"2,256,43", "4,4294967296,536911936"})
    void half_square_triangles_are_counted_as_published(int n, String raw, String count) {
        Turnings turnings = Turnings.of(HALF, n, n);
        assertThat(turnings.raw()).hasToString(raw);
        assertThat(turnings.count()).hasToString(count);
    }

    /** A block without symmetry, four turns, up to rotation of the whole: OEIS A367532 (1, 65536 for 3 x 3). */
    @ParameterizedTest
    @CsvSource({"1,1", "3,65536"})
    void turned_blocks_without_symmetry_are_counted_as_published(int n, String count) {
        assertThat(Turnings.of(LOPSIDED, n, n).unmirrored().count()).hasToString(count);
    }

    /** Eight ways to lie, up to rotation and reflection: 1 for one block, 16777216 for 3 x 3, by the formula. */
    @Test
    void all_eight_ways_are_counted_by_the_formula() {
        assertThat(Turnings.of(LOPSIDED, 1, 1).count()).hasToString("1");
        assertThat(Turnings.of(LOPSIDED, 3, 3).count()).hasToString("16777216");
    }

    /** A diagonal line in a square: OEIS A295229 (3 x 3: 84). A tile with level and upright mirrors: OEIS A367522 (2 x 2: 4, 4 x 4: 8292). */
    @Test
    void tiles_with_symmetry_are_counted_as_published() {
        Set<Turn> diagonal = Set.of(Turn.NONE, new Turn(2, false), new Turn(1, true), new Turn(3, true));
        assertThat(new Turnings(1, 1, Turn.all(), diagonal, EIGHT).count()).hasToString("1");
        assertThat(new Turnings(3, 3, Turn.all(), diagonal, EIGHT).count()).hasToString("84");
        Set<Turn> plus = Set.of(Turn.NONE, new Turn(2, false), new Turn(0, true), new Turn(2, true));
        assertThat(new Turnings(2, 2, Turn.all(), plus, EIGHT).count()).hasToString("4");
        assertThat(new Turnings(4, 4, Turn.all(), plus, EIGHT).count()).hasToString("8292");
    }

    @Test
    void the_list_has_as_many_layouts_as_the_count_and_no_two_alike() {
        assertThat(Turnings.of(HALF, 2, 2).distinct()).hasSize(43).doesNotHaveDuplicates();
        Turnings wide = Turnings.of(LOPSIDED, 3, 1).unmirrored();
        assertThat(wide.distinct()).hasSize(wide.count().intValueExact());
        Turnings lines = new Turnings(3, 3, Turn.all(), Set.of(Turn.NONE, new Turn(2, false), new Turn(1, true), new Turn(3, true)), EIGHT);
        assertThat(lines.distinct()).hasSize(84);
        assertThatThrownBy(() -> Turnings.of(LOPSIDED, 4, 4).distinct()).hasMessageContaining("too many to list");
    }

    /** Plane groups of simple repeats of a block without symmetry, by hand from any table of the seventeen groups. */
    @ParameterizedTest
    @CsvSource({"1,1,0,p1", "2,1,'0 M',pm", "1,2,'0 2',p2", "2,2,'0 M 2M 2',pmm", "2,2,'0 1 3 2',p4", "2,2,'0 M M 0',cm", "1,2,'0 M',pg"})
    void plane_groups_of_repeats_are_named(int columns, int rows, String turns, String group) {
        List<Turn> lying = java.util.Arrays.stream(turns.split(" ")).map(TurningsTest::turn).toList();
        assertThat(new Repeat(columns, rows, lying, Set.of(Turn.NONE)).planeGroup()).isEqualTo(group);
    }

    private static Turn turn(String text) {
        boolean mirrored = text.endsWith("M");
        String digits = mirrored ? text.substring(0, text.length() - 1) : text;
        return new Turn(digits.isEmpty() ? 0 : Integer.parseInt(digits), mirrored);
    }

    @Test
    void symmetric_blocks_make_symmetric_repeats() {
        assertThat(new Repeat(1, 1, List.of(Turn.NONE), EIGHT).planeGroup()).isEqualTo("p4m");
        assertThat(new Repeat(1, 1, List.of(Turn.NONE), BlockSymmetry.of(HALF)).planeGroup()).isEqualTo("cm");
        // Four half-square triangles round the middle: a pinwheel has quarter turns and no mirrors in it, a diamond has all.
        assertThat(new Repeat(2, 2, List.of(new Turn(0, false), new Turn(1, false), new Turn(3, false), new Turn(2, false)), BlockSymmetry.of(HALF)).planeGroup())
                .startsWith("p4");
    }

    /** The seven frieze groups, from any table of them. */
    @ParameterizedTest
    @CsvSource({"0,p1", "'0 2M',p11g", "'0 M',p1m1", "'0 2',p2", "'0 M 2M 2',p2mg"})
    void frieze_groups_of_borders_are_named(String turns, String group) {
        List<Turn> lying = java.util.Arrays.stream(turns.split(" ")).map(TurningsTest::turn).toList();
        assertThat(new Frieze(lying, Set.of(Turn.NONE)).group()).isEqualTo(group);
    }

    @Test
    void units_with_mirrors_make_borders_with_mirrors() {
        assertThat(new Frieze(List.of(Turn.NONE), Set.of(Turn.NONE, new Turn(2, true))).group()).isEqualTo("p11m");
        assertThat(new Frieze(List.of(Turn.NONE), EIGHT).group()).isEqualTo("p2mm");
    }

    @Test
    void quarter_circles_turned_together_make_a_full_circle() {
        double r = 0.75;
        Point corner = new Point(0, 1);
        Block path = Block.onGrid("Quarter", 1, inches(4))
                .patch(Role.DARK, Path.from(0, 1 - r).arcAbout(corner, Angle.QUARTER).lineTo(corner).close())
                .patch(Role.LIGHT, Path.from(0, 1 - r).arcAbout(corner, Angle.QUARTER).lineTo(1, 1).lineTo(1, 0).lineTo(0, 0).close()).block();
        Repeat repeat = new Repeat(2, 2, List.of(new Turn(3, false), Turn.NONE, new Turn(2, false), new Turn(1, false)), Set.of(Turn.NONE));
        Emergence found = Emergence.in(repeat.of(path, 2, 2));
        assertThat(found.figures()).isNotEmpty();
        Emergence.Figure best = found.figures().stream().filter(f -> f.fabric().name().equals("dark")).findFirst().orElseThrow();
        assertThat(best.patches()).isEqualTo(4);
        assertThat(best.roundness()).isGreaterThan(0.99);
        assertThat(best.turns()).isEqualTo(8);
        Patchwork top = repeat.of(path, 2, 2);
        Cover.check("the top", top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
    }
}
