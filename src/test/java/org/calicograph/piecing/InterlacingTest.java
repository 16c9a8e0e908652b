package org.calicograph.piecing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.Golden;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class InterlacingTest {

    private static final Length NARROW = Length.inches(1, 4);

    /** A trefoil: x = sin t + 2 sin 2t, y = cos t - 2 cos 2t (the usual curve). */
    private static Path trefoil(double size) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            double t = 2 * Math.PI * i / 300;
            points.add(new Point(size * (Math.sin(t) + 2 * Math.sin(2 * t)), size * (Math.cos(t) - 2 * Math.cos(2 * t))));
        }
        return Path.polygon(points);
    }

    private static List<Path> rings() {
        List<Path> rings = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            rings.add(Path.circle(Point.polar(2, Angle.degrees(90 + 120 * i)), 2.6));
        }
        return rings;
    }

    private static void isByTurns(Interlacing woven) {
        List<Interlacing.Pass> passes = woven.passes();
        int crossings = passes.size() / 2;
        int[] overs = new int[crossings];
        int[] all = new int[crossings];
        for (int i = 0; i < passes.size(); i++) {
            all[passes.get(i).crossing()]++;
            overs[passes.get(i).crossing()] += passes.get(i).over() ? 1 : 0;
            if (i > 0 && passes.get(i - 1).line() == passes.get(i).line()) {
                assertThat(passes.get(i).over()).isNotEqualTo(passes.get(i - 1).over());
            }
        }
        for (int c = 0; c < crossings; c++) {
            assertThat(all[c]).isEqualTo(2);
            assertThat(overs[c]).isEqualTo(1);
        }
    }

    /** A trefoil has three crossings (knot tables, from memory); three rings that each cross the two others have six. */
    @Test
    void a_trefoil_and_three_rings_go_over_and_under_by_turns() {
        Interlacing trefoil = Interlacing.of(NARROW, List.of(trefoil(1.5)));
        assertThat(trefoil.passes()).hasSize(6);
        assertThat(trefoil.pieces()).hasSize(3);
        isByTurns(trefoil);
        Interlacing rings = Interlacing.of(NARROW, rings());
        assertThat(rings.passes()).hasSize(12);
        assertThat(rings.pieces()).hasSize(6);
        isByTurns(rings);
        Golden.picture("piecing/interlacing", Picture.group(trefoil.picture(), rings.picture().moved(12, 0)).scaled(0.3));
    }

    @Test
    void the_pieces_are_as_long_as_the_lines_and_what_is_tucked_under() {
        Interlacing rings = Interlacing.of(NARROW, rings());
        double sum = rings.pieces().stream().mapToDouble(p -> p.along().length()).sum();
        assertThat(sum).isCloseTo(3 * 2 * Math.PI * 2.6, within(0.02));
        for (Interlacing.Piece p : rings.pieces()) {
            assertThat(p.length().inInches()).isBetween(p.along().length() + 0.75 - 1e-9, p.along().length() + 0.875 + 1e-9);
        }
        Interlacing alone = Interlacing.of(NARROW, List.of(Path.circle(Point.ORIGIN, 3)));
        assertThat(alone.pieces()).singleElement().satisfies(p -> assertThat(p.closed()).isTrue());
    }

    /** Closed curves can always go over and under by turns (the chequerboard colouring of a plane curve's faces). */
    @Test
    void closed_lines_always_can() {
        Random chance = new Random(8);
        int woven = 0;
        for (int k = 0; k < 200; k++) {
            List<Path> lines = new ArrayList<>();
            for (int l = 0; l < 1 + chance.nextInt(3); l++) {
                List<Point> corners = new ArrayList<>();
                for (int c = 0; c < 3 + chance.nextInt(4); c++) {
                    corners.add(new Point(chance.nextDouble() * 40, chance.nextDouble() * 40));
                }
                lines.add(Path.polygon(corners));
            }
            try {
                isByTurns(Interlacing.of(Length.inches(1, 16), lines));
                woven++;
            } catch (IllegalArgumentException e) {
                assertThat(e).hasMessageContaining("too near");
            }
        }
        assertThat(woven).isGreaterThan(170);
    }

    @Test
    void lines_that_meet_too_near_are_refused_with_the_place() {
        assertThatThrownBy(() -> Interlacing.of(Length.inches(3), rings())).hasMessageContaining("too near to go over and under");
        assertThatThrownBy(() -> Interlacing.of(Length.ZERO, rings())).hasMessageContaining("above 0");
    }
}
