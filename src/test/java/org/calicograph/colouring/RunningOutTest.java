package org.calicograph.colouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Price;
import org.calicograph.fabric.Stash;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.junit.jupiter.api.Test;

class RunningOutTest {

    private static final Fabric BLUE = Fabric.of("harbour blue", "#2a5f99");
    private static final Fabric NAVY = Fabric.of("navy", "#1f3a5f");
    private static final Fabric RUST = Fabric.of("rust", "#b5553c");
    private static final Fabric CREAM = Fabric.of("cream", "#f3ecdd");

    private static Block chequers(int across) {
        return Tops.squares(across, across, 2, (x, y) -> (x + y) % 2 == 0 ? BLUE : CREAM);
    }

    private static double taken(Substitution s, Fabric fabric) {
        return s.after().patches().stream().filter(p -> p.fabric().name().equals(fabric.name()))
                .mapToDouble(p -> s.asked().allowance().need(p.shape()).squareInches()).sum();
    }

    @Test
    void a_two_inch_square_needs_its_cut_size_and_the_waste() {
        // 2 in finished is cut 2 1/2 in (common practice): 6.25 sq in, and 15 % for cutting.
        assertThat(CuttingAllowance.USUAL.need(Region.rectangle(Length.inches(2), Length.inches(2))).squareInches())
                .isCloseTo(6.25 * 1.15, within(1e-9));
    }

    @Test
    void enough_cloth_changes_nothing() {
        Substitution s = RunningOut.of(chequers(6), Stash.of(BLUE.inHand(Length.inches(18)), CREAM, RUST)).solve();
        assertThat(s.after()).isEqualTo(chequers(6).recoloured(p -> p.fabric().name().equals("cream") ? CREAM : BLUE.inHand(Length.inches(18))));
        assertThat(s.change().exact()).isTrue();
        assertThat(s.change().seen()).isZero();
        assertThat(s.changes().rows()).isEmpty();
    }

    @Test
    void the_nearest_cloth_steps_in_and_no_more_than_needed() {
        // 18 blue squares at 7.1875 sq in; 100 sq in cut 13 of them.
        Fabric blue = BLUE.inHand(new Area(100));
        Substitution s = RunningOut.of(chequers(6), Stash.of(blue, CREAM, RUST, NAVY)).solve();
        assertThat(s.change().exact()).isTrue();
        assertThat(s.after().patches()).filteredOn(p -> p.fabric().equals(blue)).hasSize(13);
        assertThat(s.after().patches()).filteredOn(p -> p.fabric().equals(NAVY)).hasSize(5);
        assertThat(s.change().seen()).isCloseTo(5 * 4 * BLUE.colour().difference(NAVY.colour()), within(1e-9));
        assertThat(s.toBuy()).isEmpty();
    }

    @Test
    void what_is_replaced_lies_outermost_unless_asked_otherwise() {
        Fabric blue = BLUE.inHand(new Area(100));
        Block top = chequers(6);
        Stash stash = Stash.of(blue, CREAM, NAVY);
        RunningOut outward = RunningOut.of(top, stash);
        Gradient order = outward.order();
        double kept = outward.solve().after().patches().stream().filter(p -> p.fabric().equals(blue))
                .mapToDouble(p -> order.at(p.shape().bounds().centre())).max().orElseThrow();
        double replaced = outward.solve().after().patches().stream().filter(p -> p.fabric().equals(NAVY))
                .mapToDouble(p -> order.at(p.shape().bounds().centre())).min().orElseThrow();
        assertThat(kept).isLessThanOrEqualTo(replaced + 1e-12);

        Substitution down = outward.towards(Gradient.topToBottom(top)).solve();
        assertThat(down.after().patches()).filteredOn(p -> p.fabric().equals(NAVY))
                .allSatisfy(p -> assertThat(p.shape().bounds().top()).isGreaterThanOrEqualTo(8));
    }

    @Test
    void a_blend_scatters_the_border_but_takes_no_more_cloth() {
        Fabric blue = BLUE.inHand(new Area(1500));
        Block top = chequers(24);
        RunningOut clean = RunningOut.of(top, Stash.of(blue, CREAM, NAVY)).towards(Gradient.topToBottom(top));
        Substitution one = clean.solve();
        Substitution two = clean.blended(0.4, 7).solve();
        assertThat(two.change()).isEqualTo(one.change());
        assertThat(two.after()).isNotEqualTo(one.after());
        assertThat(two.after()).isEqualTo(clean.blended(0.4, 7).solve().after());
        assertThat(taken(two, blue)).isCloseTo(taken(one, blue), within(1e-6));
        assertThat(rowsWithBoth(two)).isGreaterThan(rowsWithBoth(one));
    }

    private static long rowsWithBoth(Substitution s) {
        Map<Long, java.util.Set<String>> rows = new HashMap<>();
        s.after().patches().forEach(p -> rows.computeIfAbsent(Math.round(p.shape().bounds().top()), r -> new java.util.HashSet<>())
                .add(p.fabric().name()));
        return rows.values().stream().filter(names -> names.contains("navy") && names.contains("harbour blue")).count();
    }

    @Test
    void never_is_more_cloth_taken_than_is_in_hand() {
        Random random = new Random(11);
        for (int i = 0; i < 25; i++) {
            Fabric[] cloths = {BLUE.inHand(new Area(random.nextDouble() * 600)), NAVY.inHand(Length.inches(random.nextDouble() * 10)),
                RUST.inHand(new Area(random.nextDouble() * 500)), CREAM.inHand(new Area(random.nextDouble() * 1500))};
            Block top = Tops.squares(12, 12, 1.5, (x, y) -> cloths[random.nextInt(4)]);
            Substitution s = RunningOut.of(top, Stash.of(cloths)).solve();
            Map<String, Double> bought = s.toBuy();
            for (Fabric cloth : cloths) {
                double hand = cloth.areaInHand().orElseThrow().squareInches();
                assertThat(taken(s, cloth) - bought.getOrDefault(cloth.name(), 0.0)).isLessThanOrEqualTo(hand + 1e-6);
                assertThat(s.used().getOrDefault(cloth.name(), 0.0)).isLessThanOrEqualTo(hand + 1e-6);
            }
        }
    }

    @Test
    void what_must_be_bought_is_named_up_to_the_next_eighth_of_a_yard() {
        Fabric blue = BLUE.inHand(new Area(0)).at(Price.perYard("12", "GBP"));
        Fabric cream = CREAM.inHand(new Area(0));
        Substitution s = RunningOut.of(chequers(6), Stash.of(blue, cream)).solve();
        assertThat(s.toBuy()).containsOnlyKeys("harbour blue", "cream");
        // 18 squares at 7.1875 sq in are 129.4 sq in, 3.2 in of 40 in cloth: an eighth of a yard.
        assertThat(s.lengthOf("harbour blue", s.toBuy().get("harbour blue"))).isEqualTo(Length.parse("4 1/2"));
        assertThat(s.cloth().csv()).contains("1.50 GBP");
    }

    @Test
    void a_patch_keeps_its_role_and_its_shape() {
        Block top = chequers(6);
        Substitution s = RunningOut.of(top, Stash.of(BLUE.inHand(new Area(50)), CREAM, NAVY)).solve();
        assertThat(s.after().patches()).extracting(Patch::id, Patch::role, Patch::shape)
                .containsExactlyElementsOf(top.patches().stream().map(p -> org.assertj.core.groups.Tuple.tuple(p.id(), p.role(), p.shape())).toList());
    }

    @Test
    void impossible_allowances_are_refused() {
        assertThatThrownBy(() -> new CuttingAllowance(Length.inches(1, 4), -0.2))
                .hasMessage("the waste in cutting is -0.2 of the cloth used; use 0 or more, such as 0.15");
    }
}
