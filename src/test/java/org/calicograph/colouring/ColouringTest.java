package org.calicograph.colouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourVision;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.fabric.Stash;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.junit.jupiter.api.Test;

class ColouringTest {

    private static final Fabric INK = Fabric.of("ink", "#14202e");
    private static final Fabric SLATE = Fabric.of("slate", "#4a5a68");
    private static final Fabric TIDE = Fabric.of("tide", "#7f9fa3");
    private static final Fabric MIST = Fabric.of("mist", "#d9e1e2");

    private static final Block GREY = Tops.squares(8, 8, 2, (x, y) -> TIDE);

    @Test
    void roles_get_their_fabrics_and_others_stay() {
        Block top = GREY.recoloured(Colouring.byRole(Map.of(Role.DARK, INK)));
        assertThat(top.patches()).allSatisfy(p -> assertThat(p.fabric()).isEqualTo(p.role().equals(Role.DARK) ? INK : TIDE));
    }

    @Test
    void chance_depends_on_seed_and_patch_alone() {
        Colouring one = Colouring.random(4, List.of(INK, SLATE, TIDE, MIST));
        Block top = GREY.recoloured(one);
        assertThat(top).isEqualTo(GREY.recoloured(one)).isNotEqualTo(GREY.recoloured(Colouring.random(5, List.of(INK, SLATE, TIDE, MIST))));
        Block part = Tops.squares(8, 3, 2, (x, y) -> TIDE).recoloured(one);
        assertThat(part.patches()).allSatisfy(p -> assertThat(top.patches()).contains(p));
        Block large = Tops.squares(80, 80, 1, (x, y) -> TIDE).recoloured(one);
        for (Fabric f : List.of(INK, SLATE, TIDE, MIST)) {
            // 1600 of 6400 expected; four standard deviations are 139.
            assertThat(large.patches().stream().filter(p -> p.fabric().equals(f)).count()).isBetween(1461L, 1739L);
        }
    }

    @Test
    void a_gradient_steps_across_around_and_outward() {
        Block across = GREY.recoloured(Colouring.along(Gradient.leftToRight(GREY), List.of(INK, SLATE, TIDE, MIST)));
        assertThat(across.patches()).allSatisfy(p -> assertThat(p.fabric())
                .isEqualTo(List.of(INK, SLATE, TIDE, MIST).get((int) (p.shape().bounds().left() / 4))));
        Gradient around = Gradient.around(GREY);
        assertThat(around.at(new Point(8.0001, 0))).isCloseTo(0, within(1e-4));
        assertThat(around.at(new Point(16, 8))).isCloseTo(0.25, within(1e-9));
        assertThat(Gradient.outward(GREY).at(new Point(8, 8))).isZero();
        assertThat(Gradient.outward(GREY).at(new Point(16, 16))).isCloseTo(1, within(1e-9));
    }

    @Test
    void one_fabric_spreads_over_several_blocks() {
        Block top = GREY.recoloured(Colouring.spread(INK, Region.of(Path.circle(new Point(8, 8), 4))));
        assertThat(top.patches().stream().filter(p -> p.fabric().equals(INK)))
                .isNotEmpty().allSatisfy(p -> assertThat(p.shape().bounds().centre().distance(new Point(8, 8))).isLessThan(4));
        Block named = GREY.recoloured(Colouring.spread(SLATE, Set.of("1.1", "2.1")));
        assertThat(named.patches()).filteredOn(p -> p.fabric().equals(SLATE)).extracting(Patch::id).containsExactlyInAnyOrder("1.1", "2.1");
    }

    @Test
    void rules_follow_one_another_and_can_be_kept_to_roles() {
        Colouring rule = Colouring.along(Gradient.leftToRight(GREY), List.of(MIST, TIDE)).then(Colouring.random(1, List.of(INK)).forRoles(Role.DARK));
        assertThat(GREY.recoloured(rule).patches()).allSatisfy(p ->
                assertThat(p.fabric()).isEqualTo(p.role().equals(Role.DARK) ? INK : p.shape().bounds().left() < 8 ? MIST : TIDE));
        assertThatThrownBy(() -> Colouring.random(1, List.of()))
                .hasMessage("the random colouring has no fabrics to choose from; give it one or more");
    }

    @Test
    void a_shadow_splits_what_it_crosses_and_the_patches_still_cover_the_top() {
        Region cast = Region.of(Path.circle(new Point(7.3, 7.9), 4.6));
        Patchwork shaded = Lighting.shadow(cast, 0.5).split(GREY);
        double dark = shaded.patches().stream().filter(p -> p.fabric().name().equals("tide in shadow")).mapToDouble(p -> p.shape().area().squareInches()).sum();
        double all = shaded.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(all).isCloseTo(256, within(1e-3));
        // A circle of 4.6 in, less slivers under a quarter inch that stay with their neighbours.
        assertThat(dark).isCloseTo(Math.PI * 4.6 * 4.6, within(1.5));
        assertThat(shaded.patchCount()).isGreaterThan(64);
    }

    @Test
    void curved_patches_split_too() {
        // A quarter circle in a square, cut slantwise close to where its chords meet: edges nearly coincide.
        Region square = Region.rectangle(new Box(0, 0, 6, 6));
        Region quarter = Region.of(Path.from(0, 0).lineTo(4.5, 0).arcAbout(Point.ORIGIN, org.calicograph.measure.Angle.QUARTER).close());
        Block path = Block.of("path", square, List.of(Patch.of("1", Role.DARK, quarter), Patch.of("2", Role.LIGHT, square.minus(quarter).get(0))));
        for (double x = 0.3; x < 6; x += 0.1) {
            Region cast = Region.polygon(Point.of(x, -1), Point.of(9, -1), Point.of(9, 9), Point.of(x - 1.7, 9));
            Patchwork shaded = Lighting.shadow(cast, 0.5).split(path);
            assertThat(shaded.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum()).isCloseTo(36, within(1e-3));
        }
    }

    @Test
    void a_shadow_takes_its_part_of_the_light() {
        Colour dim = Lighting.shadow(GREY.outline(), 0.5).on(Colour.WHITE);
        assertThat(dim.linear().red()).isCloseTo(0.5, within(1e-9));
        assertThat(Lighting.light(GREY.outline(), 0.5).on(Colour.BLACK).linear().green()).isCloseTo(0.5, within(1e-9));
        assertThatThrownBy(() -> Lighting.shadow(GREY.outline(), 0)).hasMessage("a shadow has a depth of 0.0; use a number above 0, up to 1");
    }

    @Test
    void a_shadow_can_choose_the_nearest_darker_fabric_in_hand_and_leave_patches_whole() {
        Region left = Region.rectangle(new Box(0, 0, 8.2, 16));
        Patchwork shaded = Lighting.shadow(left, 0.6).choose(GREY, Stash.of(INK, SLATE, TIDE, MIST));
        assertThat(shaded.patches()).allSatisfy(p -> assertThat(p.fabric()).isEqualTo(p.shape().bounds().left() < 8 ? SLATE : TIDE));
        assertThat(Lighting.shadow(left, 0.6).choose(GREY, Stash.of(MIST))).isEqualTo(GREY);
    }

    @Test
    void where_two_sheer_shapes_cross_a_third_fabric_shows() {
        Fabric rose = Fabric.of("rose", "#d98a9a");
        Region one = Region.rectangle(new Box(1, 1, 9, 9));
        Region other = Region.rectangle(new Box(6, 6, 15, 15));
        Patchwork top = GREY.recoloured(p -> rose);
        Patchwork crossed = Transparency.glass(one, TIDE, other, rose).split(top);
        Map<String, Double> areas = new java.util.TreeMap<>();
        crossed.patches().forEach(p -> areas.merge(p.fabric().name(), p.shape().area().squareInches(), Double::sum));
        assertThat(areas.get("tide over rose")).isCloseTo(9, within(1e-6));
        assertThat(areas.get("tide")).isCloseTo(64 - 9, within(1e-6));
        assertThat(areas.get("rose")).isCloseTo(256 - 64, within(1e-6));
        Transparency veil = Transparency.veil(one, TIDE, other, rose);
        // Midway in OKLab, to the nearest of what a screen shows.
        assertThat(veil.crossing().oklab().distance(TIDE.colour().oklab()))
                .isCloseTo(veil.crossing().oklab().distance(rose.colour().oklab()), within(1e-6));
        assertThat(veil.choose(GREY, Stash.of(SLATE, MIST)).patches()).extracting(p -> p.fabric().name()).contains("rose", "tide");
    }

    @Test
    void neighbours_share_a_seam_and_corners_do_not_count() {
        List<Seam> seams = Neighbours.of(GREY.patches());
        assertThat(seams).hasSize(2 * 8 * 7).allSatisfy(s -> assertThat(s.length()).isCloseTo(2, within(1e-9)));
    }

    @Test
    void a_seam_may_run_along_a_part_of_an_edge_or_a_curve() {
        Region whole = Region.rectangle(new Box(0, 0, 4, 4));
        Region disc = Region.of(Path.circle(new Point(2, 2), 1));
        Block porthole = Block.of("porthole", whole, List.of(Patch.of("1", Role.LIGHT, disc),
                Patch.of("2", Role.DARK, new Region(whole.outer(), List.of(disc.outer())))));
        assertThat(Neighbours.of(porthole.patches())).singleElement().satisfies(s -> assertThat(s.length()).isCloseTo(2 * Math.PI, within(0.01)));
        Block tee = Block.of("tee", whole, List.of(Patch.of("1", Role.LIGHT, Region.rectangle(new Box(0, 0, 4, 2))),
                Patch.of("2", Role.DARK, Region.rectangle(new Box(0, 2, 1, 4))), Patch.of("3", Role.MEDIUM, Region.rectangle(new Box(1, 2, 4, 4)))));
        assertThat(Neighbours.of(tee.patches())).extracting(Seam::length).containsExactly(1.0, 3.0, 2.0);
    }

    @Test
    void weak_seams_come_first_and_depend_on_the_eye() {
        Fabric red = Fabric.of("madder", "#b0503f");
        Fabric green = Fabric.of("samphire", "#6f7a3a");
        Block top = Tops.squares(6, 6, 2, (x, y) -> y == 5 ? INK : (x + y) % 2 == 0 ? red : green);
        Contrast usual = Contrast.of(top);
        assertThat(usual.weak()).isEmpty();
        assertThat(usual.pairs()).extracting(Contrast.Pair::difference).isSorted();
        Contrast.Pair pair = Contrast.of(top, ColourVision.DEUTERANOPIA).pairs().get(0);
        assertThat(Set.of(pair.one(), pair.other())).isEqualTo(Set.of(red, green));
        assertThat(pair.difference()).isLessThan(red.colour().difference(green.colour()) / 2);
        assertThat(pair.seams()).hasSize(5 * 5 + 6 * 4);
    }

    @Test
    void a_value_study_sorts_every_patch_into_a_band() {
        Block top = Tops.squares(4, 4, 1, (x, y) -> List.of(INK, SLATE, TIDE, MIST).get(x));
        ValueStudy study = ValueStudy.of(top);
        assertThat(study.shares()).containsExactly(Map.entry(ValueStudy.Band.LIGHT, 0.25), Map.entry(ValueStudy.Band.MEDIUM, 0.25),
                Map.entry(ValueStudy.Band.DARK, 0.5));
        assertThat(study.grey().patches()).allSatisfy(p -> assertThat(p.fabric().colour().oklch().chroma()).isLessThan(1e-3));
        assertThat(study.strip().keySet()).containsExactly(MIST, TIDE, SLATE, INK);
        assertThatThrownBy(() -> study.banded(70, 40)).hasMessageContaining("use two values in rising order");
    }
}
