package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.calicograph.Golden;
import org.calicograph.book.Templates;
import org.calicograph.drawing.SvgOutline;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patch;
import org.calicograph.setting.Setting;
import org.calicograph.show.PatchworkPicture;
import org.calicograph.cutting.Cutting;
import org.calicograph.piecing.Laying;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StdlibAppliqueTest {

    private static final Comparator<Double> NEAR = (a, b) -> Math.abs(a - b) < 1e-3 ? 0 : Double.compare(a, b);

    private static Applique applique(String name, Length side) {
        return (Applique) CompiledStdlib.call(CompiledStdlib.named(name), "applique", side);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "6 1/2", "12", "30 cm", "25.3333"})
    void what_shows_covers_the_block_at_every_size(String side) {
        for (String name : List.of("HoneyBee", "LaurelWreath")) {
            Block block = applique(name, Length.parse(side)).block();
            double sum = block.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
            assertThat(sum).as(name).isCloseTo(block.outline().area().squareInches(), within(1e-3 * sum));
        }
    }

    @Test
    void blocks_and_placements_look_as_they_were_accepted() {
        for (String name : List.of("HoneyBee", "LaurelWreath")) {
            Applique applique = applique(name, inches(12));
            Golden.picture("stdlib/" + name.toLowerCase(java.util.Locale.ROOT), PatchworkPicture.of(applique.block()));
            Golden.picture("stdlib/" + name.toLowerCase(java.util.Locale.ROOT) + "-laying", Laying.of(applique).placement());
        }
    }

    /** Common practice: the ground is cut whole, and shapes have 3/16 in to turn under where seams have 1/4 in. */
    @Test
    void the_ground_is_cut_whole_and_shapes_have_their_own_allowance() {
        Applique bee = applique("HoneyBee", inches(14));
        List<Piece> pieces = Pieces.of(bee, CuttingRules.INCH, inches(3, 16));
        List<Piece> laid = pieces.stream().filter(p -> p.method() instanceof CutMethod.Laid).toList();
        assertThat(laid).hasSize(2).extracting(Piece::count).containsExactlyInAnyOrder(4, 8);
        assertThat(pieces.stream().filter(p -> !(p.method() instanceof CutMethod.Laid)).mapToInt(Piece::count).sum()).isEqualTo(17);
        assertThat(pieces.stream().filter(p -> !(p.method() instanceof CutMethod.Laid))).allMatch(p -> p.method() instanceof CutMethod.Blanks);
        Piece petal = laid.get(0);
        double across = petal.cutOutline(inches(1, 4)).bounds().height() - petal.finished().bounds().height();
        assertThat(across).isCloseTo(2 * 3 / 16.0, within(0.02));
        Templates templates = Templates.of(bee);
        assertThat(templates.templates()).hasSize(2);
        assertThat(templates.templates().get(0).cut().bounds().height() - templates.templates().get(0).finished().bounds().height()).isCloseTo(2 * 3 / 16.0, within(0.02));
        assertThat(templates.pages()).isNotEmpty();
        assertThat(Templates.of(bee, CuttingRules.INCH, Length.ZERO).templates().get(0).cut()).isEqualTo(petal.finished());
        assertThat(Cutting.of(bee).fabrics()).hasSize(4);
        assertThat(Cutting.of(bee).fabrics().stream().flatMap(f -> f.pieces().stream()).mapToInt(Piece::count).sum()).isEqualTo(17 + 12);
        assertThat(Laying.of(bee).table().rows()).hasSize(12);
    }

    /** Common practice: in a quilt too the ground is cut whole and the shapes are laid on it, whichever way a block is turned. */
    @Test
    void a_quilt_of_laid_blocks_is_cut_as_grounds_and_shapes() {
        Block bee = applique("HoneyBee", inches(7)).block().scaledTo(inches(14)).with(Role.DARK, Fabric.of("slate", "#4a5a66"));
        Assembly top = Setting.straight(2, 2).alternating(bee, bee.turned(1));
        Map<Boolean, List<Piece>> pieces = Pieces.of(top, CuttingRules.INCH).stream()
                .collect(Collectors.partitioningBy(p -> p.method() instanceof CutMethod.Laid));
        assertThat(pieces.get(true)).extracting(Piece::count).containsExactlyInAnyOrder(4 * 4, 4 * 8);
        assertThat(pieces.get(true).stream().filter(p -> p.count() == 16).findFirst().orElseThrow().fabric().name()).isEqualTo("slate");
        assertThat(pieces.get(false)).allMatch(p -> p.method() instanceof CutMethod.Blanks);
        assertThat(pieces.get(false).stream().mapToDouble(p -> p.sewn().squareInches()).sum()).isCloseTo(28 * 28, within(1e-6));
        assertThat(Templates.of(top).templates()).hasSize(2);
        assertThat(Cutting.of(top).fabrics().stream().flatMap(f -> f.pieces().stream()).mapToInt(Piece::count).sum()).isEqualTo(4 * (17 + 12));
    }

    @Test
    void a_quilt_of_laid_blocks_is_sewn_ground_first_and_then_laid() {
        Block bee = applique("HoneyBee", inches(14)).block();
        SewingPlan plan = SewingPlan.of(Setting.straight(3, 2).of(bee));
        assertThat(plan.stages()).extracting(s -> s.name() + " " + s.count()).contains("Honey Bee ground 6").noneMatch(n -> n.startsWith("Honey Bee 6"));
        assertThat(plan.layings()).hasSize(1);
        assertThat(plan.layings().get(0).caption()).isEqualTo("Honey Bee, laid 6 times, shapes in the order of their numbers");
        assertThat(plan.layings().get(0).laying().applique()).isEqualTo(applique("HoneyBee", inches(14)));
    }

    @Test
    void a_turned_block_knows_its_shapes_where_they_show() {
        Block wreath = applique("LaurelWreath", inches(12)).block().turned(1).mirrored();
        Applique laid = wreath.applique().orElseThrow();
        List<Patch> again = laid.block().patches();
        assertThat(again).hasSameSizeAs(wreath.patches());
        for (int i = 0; i < again.size(); i++) {
            assertThat(again.get(i).fabric()).isEqualTo(wreath.patches().get(i).fabric());
            Box a = again.get(i).shape().bounds();
            Box b = wreath.patches().get(i).shape().bounds();
            assertThat(List.of(a.left(), a.top(), a.right(), a.bottom())).usingElementComparator(NEAR)
                    .containsExactly(b.left(), b.top(), b.right(), b.bottom());
        }
    }

    @Test
    void an_outline_from_svg_is_laid_at_a_size_and_what_it_hides_does_not_show() {
        Region kite = SvgOutline.ofPath("M0 0h40l20 30l-20 30h-40z").scaledTo(inches(3)).region();
        Applique two = Applique.on("Kites", Block.plain(Role.LIGHT.standIn(), inches(8), inches(8))).lay(Role.DARK, kite)
                .lay(Role.ACCENT, kite.transformed(org.calicograph.geometry.Transform.move(1, 1)));
        List<Patch> shown = two.block().patches();
        assertThat(shown).hasSize(3);
        assertThat(shown.get(2).shape()).isEqualTo(two.laid().get(1).shape());
        assertThat(shown.get(1).shape().area().squareInches()).isLessThan(kite.area().squareInches() - 1);
        assertThat(two.block().outline().area().squareInches()).isCloseTo(shown.stream().mapToDouble(p -> p.shape().area().squareInches()).sum(), within(1e-6));
    }

    @Test
    void a_shape_within_one_patch_keeps_its_curve() {
        Applique moon = Applique.on("Moon", Block.plain(Role.DARK.standIn(), inches(8), inches(8))).lay(Role.LIGHT, Region.of(Path.circle(new Point(4, 4), 2)));
        assertThat(moon.block().patches().get(0).shape().area().squareInches()).isCloseTo(64 - 4 * Math.PI, within(1e-9));
    }

    @Test
    void a_shape_beyond_the_ground_is_refused_with_the_repair() {
        assertThatThrownBy(() -> Applique.on("Moon", Block.plain(Role.DARK.standIn(), inches(8), inches(8))).lay(Role.LIGHT, Region.of(Path.circle(new Point(7, 4), 2))))
                .isInstanceOf(DesignException.class).hasMessageContaining("reaches beyond its ground").hasMessageContaining("move it inwards");
    }
}
