package org.calicograph.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.border.Border;
import org.calicograph.border.Fitting;
import org.calicograph.border.PiecedBorder;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Medallion;
import org.junit.jupiter.api.Test;

/** The border drawn against the fit it was drawn from, by what lies on the sheet: no part's name is asked. */
class FittedBorderTest {

    private static final Role SPACER = Role.of("spacer");

    /** The one dark patch of a unit tells where it is, and which way it leans. */
    private static Block tooth(Length along, Length high) {
        return Block.onGrid("Tooth", 1, 1, along, high).halvesRising(0, 0, 1, Role.LIGHT, Role.DARK).block();
    }

    private static Patchwork inside(Length across, Length down) {
        return Block.plain(Role.ACCENT.standIn(), across, down);
    }

    @Test
    void drawn_borders_agree_with_1000_random_fits_unit_by_unit() {
        Random random = new Random(7);
        int[] seen = new int[4];
        for (int drawn = 0; drawn < 1_000; ) {
            Length q = inches(1, 4);
            Length across = q.times(8 + random.nextInt(160));
            Length down = random.nextInt(3) == 0 ? across : q.times(8 + random.nextInt(160));
            int unit = 4 + random.nextInt(16);
            Fit fit = Fit.around(across, down).units(q.times(unit)).between(q.times(unit - random.nextInt(3)), q.times(unit + random.nextInt(3)));
            fit = switch (random.nextInt(3)) {
                case 0 -> fit;
                case 1 -> fit.equalSpacers(q, q.times(12));
                default -> fit.spacers(q, q.times(12));
            };
            fit = random.nextInt(3) == 0 ? fit.mirroredAtMiddle() : fit;
            List<Fitting> all = fit.solutions();
            if (all.isEmpty()) {
                continue;
            }
            Fitting f = random.nextBoolean() ? fit.nearest() : all.get(random.nextInt(all.size()));
            boolean square = f.corners() == Fitting.Corners.UNIT || random.nextBoolean();
            requireDrawn(f, tooth(q.times(unit), square ? q.times(unit) : q.times(1 + random.nextInt(20))));
            seen[0] += f.corners() == Fitting.Corners.UNIT ? 1 : 0;
            seen[1] += f.mirrored() ? 1 : 0;
            seen[2] += f.hasSpacer() && f.spacerSides().equals(f.spacerEnds()) ? 1 : 0;
            seen[3] += !f.spacerSides().equals(f.spacerEnds()) ? 1 : 0;
            drawn++;
        }
        assertThat(java.util.Arrays.stream(seen).min().orElse(0)).isGreaterThan(60);
    }

    @Test
    void a_top_on_point_takes_spacers_although_its_sides_are_no_fraction_of_an_inch() {
        int odd = 0;
        for (int across = 2; across < 12; across++) {
            for (int down = across; down < 12; down++) {
                Length a = inches(10 * Math.sqrt(2) * across);
                Length d = inches(10 * Math.sqrt(2) * down);
                Fit fit = Fit.around(a, d).units(inches(2));
                assertThat(fit.solutions()).isEmpty();
                assertThat(fit.others()).as("%s x %s", a, d).isNotEmpty();
                Fitting f = fit.spacers(inches(1, 4), inches(9, 4)).mirroredAtMiddle().solutions().get(0);
                assertThat(f.across() * 2 - a.inInches()).isCloseTo(2 * f.spacerSides().inInches(), within(1e-5));
                assertThat(f.across() % 2 + f.down() % 2).isZero();
                requireDrawn(f, tooth(inches(2), inches(2)));
                odd += a.units() % 2 != 0 || d.units() % 2 != 0 ? 1 : 0;
            }
        }
        assertThat(odd).as("sides of an odd number of the finest units are among them").isGreaterThan(10);
    }

    private static void requireDrawn(Fitting f, Block unit) {
        Patchwork top = Medallion.around(inside(f.roundAcross(), f.roundDown()))
                .with(Border.of(unit).fitted(f).spacersOf(SPACER.standIn())).top();
        double u = f.unit().inInches();
        double high = u * unit.height().ratioTo(unit.width());
        assertThat(top.width().inInches()).as("%s", f).isCloseTo(f.across() * u + 2 * high, within(1e-5));
        assertThat(top.height().inInches()).as("%s", f).isCloseTo(f.down() * u + 2 * high, within(1e-5));
        List<Box> dark = new ArrayList<>();
        for (Patch p : top.patches()) {
            if (p.role().equals(Role.DARK)) {
                dark.add(p.shape().bounds());
            }
        }
        double w = top.width().inInches();
        double h = top.height().inInches();
        List<Box> upper = row(dark, b -> b.bottom() < high + 1e-5 && b.left() > high - 1e-5 && b.right() < w - high + 1e-5);
        List<Box> lower = row(dark, b -> b.top() > h - high - 1e-5 && b.left() > high - 1e-5 && b.right() < w - high + 1e-5);
        List<Box> left = row(dark, b -> b.right() < high + 1e-5 && b.top() > high - 1e-5 && b.bottom() < h - high + 1e-5);
        List<Box> right = row(dark, b -> b.left() > w - high - 1e-5 && b.top() > high - 1e-5 && b.bottom() < h - high + 1e-5);
        assertThat(List.of(upper.size(), lower.size(), left.size(), right.size())).as("%s", f).containsExactly(f.across(), f.across(), f.down(), f.down());
        assertThat(dark).as("%s", f).hasSize(f.total());
        for (int i = 0; i < f.across(); i++) {
            double place = high + i * u;
            assertThat(upper).as("%s", f).anyMatch(b -> Math.abs(b.left() - place) < 1e-5 && Math.abs(b.width() - u) < 1e-5);
        }
        if (f.mirrored()) {
            List<Point> middles = top.patches().stream().filter(p -> p.role().equals(Role.DARK)).map(p -> p.shape().centroid())
                    .filter(p -> p.y() < high && p.x() > high && p.x() < w - high).toList();
            for (Point p : middles) {
                assertThat(middles).as("%s", f).anyMatch(m -> m.near(new Point(w - p.x(), p.y()), 1e-5));
            }
        }
        double spacers = 2 * f.spacerSides().inInches() * f.roundDown().inInches() + 2 * f.spacerEnds().inInches() * (f.across() * u);
        double drawn = top.patches().stream().filter(p -> p.id().contains("spacer")).mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(drawn).as("%s", f).isCloseTo(spacers, within(1e-5 * (w + h)));
    }

    private static List<Box> row(List<Box> all, java.util.function.Predicate<Box> within) {
        return all.stream().filter(within).toList();
    }

    @Test
    void a_fit_with_a_unit_in_each_corner_is_drawn_with_52_units() {
        Fitting f = Fit.around(inches(72), inches(72)).units(inches(6)).count(52).nearest();
        Patchwork top = Medallion.around(inside(inches(72), inches(72))).with(Border.of(tooth(inches(6), inches(6))).fitted(f)).top();
        assertThat(top.patches().stream().filter(p -> p.role().equals(Role.DARK))).hasSize(52);
    }

    @Test
    void a_border_fitted_for_one_size_goes_round_no_other_and_says_what_fits_there() {
        PiecedBorder border = Border.of(tooth(inches(6), inches(6))).fitted(Fit.around(inches(72), inches(72)).units(inches(6)).nearest());
        assertThatThrownBy(() -> Medallion.around(inside(inches(78), inches(78))).with(border).top()).isInstanceOf(DesignException.class)
                .hasMessage("Border 1 was fitted round 72 in x 72 in but goes round 78 in x 78 in. There 13 units of 6 in go along each of two sides"
                        + " and 13 along each of the others. Fit it anew with Fit.around what is inside.");
        assertThatThrownBy(() -> Medallion.around(inside(inches(75), inches(75))).with(border).top()).hasMessageContaining("There 13 and 13 units of 5.7692 in fit");
        assertThatThrownBy(() -> Medallion.around(inside(inches(75), inches(71))).with(border).top())
                .hasMessageContaining("There 13 and 12 units of 6 in fit with spacers of 1 1/2 in on the sides and 1/2 in at the ends");
    }

    @Test
    void a_unit_in_each_corner_must_be_a_square_and_the_only_block_there() {
        Fitting f = Fit.around(inches(72), inches(72)).units(inches(6)).count(52).nearest();
        assertThatThrownBy(() -> Border.of(tooth(inches(6), inches(3))).fitted(f)).isInstanceOf(DesignException.class)
                .hasMessageContaining("'Tooth' is 6 in x 3 in there, no square");
        assertThatThrownBy(() -> Border.of(tooth(inches(6), inches(6))).corners(inside(inches(6), inches(6)).named("Star")).fitted(f))
                .hasMessageContaining("the border has 'Star' there; leave out its corners");
    }

    @Test
    void a_fitting_whose_units_do_not_come_to_its_sides_is_refused() {
        assertThatThrownBy(() -> new Fitting(inches(72), inches(72), 12, 11, Fitting.Corners.APART, false, inches(6), inches(6), Length.ZERO, Length.ZERO))
                .isInstanceOf(DesignException.class).hasMessage("11 units of 6 in make 66 in, not 72 in; use units of 6.5455 in");
    }
}
