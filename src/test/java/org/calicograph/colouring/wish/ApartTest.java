package org.calicograph.colouring.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.colour.Colour;
import org.calicograph.colouring.Neighbours;
import org.calicograph.colouring.Seam;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

class ApartTest {

    private static List<Fabric> fabrics(Random chance, int n) {
        List<Fabric> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            all.add(Fabric.of("cloth " + i, Colour.packed(chance.nextInt(1 << 24))));
        }
        return all;
    }

    private static Block block(Random chance, int grid) {
        BlockDraft draft = Block.onGrid("Drift", grid, Length.inches(6));
        for (int y = 0; y < grid; y++) {
            for (int x = 0; x < grid; x++) {
                draft = chance.nextInt(3) == 0 ? draft.halvesRising(x, y, 1, Role.DARK, Role.LIGHT) : draft.square(chance.nextInt(5) == 0 ? Role.ACCENT : Role.DARK, x, y, 1);
            }
        }
        return draft.block();
    }

    /** The weakest seam of a top that has a free patch at one side, reckoned anew. */
    private static double weakest(Patchwork top, boolean accentsFixed) {
        double least = Double.POSITIVE_INFINITY;
        for (Seam s : Neighbours.of(top.patches())) {
            if (!accentsFixed || !s.one().role().equals(Role.ACCENT) || !s.other().role().equals(Role.ACCENT)) {
                least = Math.min(least, s.one().fabric().name().equals(s.other().fabric().name()) ? 0 : s.one().fabric().colour().difference(s.other().fabric().colour()));
            }
        }
        return least;
    }

    /** Every choice there is, tried one after the other. */
    private static double byTrying(Patchwork top, List<Fabric> fabrics, int most, boolean accentsFixed) {
        List<String> free = top.patches().stream().filter(p -> !accentsFixed || !p.role().equals(Role.ACCENT)).map(p -> p.id()).toList();
        double best = 0;
        long all = Math.round(Math.pow(fabrics.size(), free.size()));
        for (long k = 0; k < all; k++) {
            int[] digits = new int[free.size()];
            int[] used = new int[fabrics.size()];
            long rest = k;
            boolean enough = true;
            for (int i = 0; i < digits.length; i++) {
                digits[i] = (int) (rest % fabrics.size());
                rest /= fabrics.size();
                enough &= ++used[digits[i]] <= (digits[i] == 0 ? most : 99);
            }
            if (enough) {
                best = Math.max(best, weakest(top.recoloured(p -> free.contains(p.id()) ? fabrics.get(digits[free.indexOf(p.id())]) : p.fabric()), accentsFixed));
            }
        }
        return best;
    }

    @Test
    void the_weakest_seam_is_as_strong_as_any_choice_can_make_it() {
        Random chance = new Random(41);
        int none = 0;
        for (int k = 0; k < 60; k++) {
            Block top = block(chance, 2);
            List<Fabric> fabrics = fabrics(chance, 3 + chance.nextInt(2));
            boolean fixed = chance.nextBoolean() && top.patches().stream().anyMatch(p -> !p.role().equals(Role.ACCENT));
            int most = 1 + chance.nextInt(3);
            double best = byTrying(top, fabrics, most, fixed);
            Apart wish = Apart.likesApart(top, fabrics).atMost("cloth 0", most);
            Apart asked = fixed ? wish.only(Role.DARK, Role.LIGHT) : wish;
            if (best == 0) {
                none++;
                assertThatThrownBy(asked::solve).hasMessageContaining("every way was tried");
                continue;
            }
            Apart.Found found = asked.solve();
            assertThat(found.weakest()).as("case " + k).isCloseTo(best, within(1e-9));
            assertThat(found.proved()).isTrue();
            if (!Double.isInfinite(best)) {
                assertThat(weakest(found.top(), fixed)).isCloseTo(best, within(1e-9));
            }
            assertThat(found.used().get(fabrics.get(0))).isLessThanOrEqualTo(most);
        }
        assertThat(none).isBetween(0, 30);
    }

    @Test
    void a_large_top_is_laid_with_no_two_alike_and_every_fabric_used() {
        Random chance = new Random(7);
        Patchwork top = Setting.straight(10, 10).of(block(chance, 4));
        List<Fabric> fabrics = fabrics(chance, 6);
        Apart.Found found = Apart.noTwoAlike(top, fabrics).solve();
        for (Seam s : Neighbours.of(found.top().patches())) {
            assertThat(s.one().fabric().name()).isNotEqualTo(s.other().fabric().name());
        }
        assertThat(found.used().values()).allMatch(n -> n > top.patchCount() / 20);
        assertThat(found.used().values().stream().mapToInt(n -> n).sum()).isEqualTo(top.patchCount());
    }

    @Test
    void what_cannot_be_laid_is_said_with_its_proof() {
        Block nine = Block.onGrid("Nine", 3, Length.inches(6)).square(Role.DARK, 0, 0, 1).square(Role.DARK, 1, 0, 1).square(Role.DARK, 2, 0, 1)
                .square(Role.DARK, 0, 1, 1).square(Role.DARK, 1, 1, 1).square(Role.DARK, 2, 1, 1).square(Role.DARK, 0, 2, 1).square(Role.DARK, 1, 2, 1)
                .square(Role.DARK, 2, 2, 1).block();
        List<Fabric> two = List.of(Fabric.of("tide", "#224466"), Fabric.of("foam", "#eeeedd"));
        assertThat(Apart.noTwoAlike(nine, two).solve().used().values()).containsExactlyInAnyOrder(4, 5);
        assertThatThrownBy(() -> Apart.noTwoAlike(nine, two).atMost("tide", 4).atMost("foam", 4).solve()).hasMessageContaining("every way was tried");
        assertThatThrownBy(() -> Apart.noTwoAlike(nine, two.subList(0, 1)).solve()).hasMessageContaining("1 fabrics can't be laid");
        assertThatThrownBy(() -> Apart.noTwoAlike(nine, two).atMost("sand", 4)).hasMessageContaining("'sand'");
        assertThatThrownBy(() -> Apart.noTwoAlike(nine, two).only(Role.ACCENT).solve()).hasMessageContaining("no patch");
    }
}
