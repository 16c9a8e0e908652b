package org.calicograph.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.calicograph.Golden;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.finishing.Finishing;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.show.PatchworkPicture;
import org.calicograph.stdlib.CompiledStdlib;
import org.junit.jupiter.api.Test;

/** Rings of melons, and shells in rows. */
class CurvedSettingsTest {

    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");
    private static final Fabric RUST = Fabric.of("rust", "#a0522d");

    private static Patchwork block(String name, Length width) {
        return (Patchwork) CompiledStdlib.call(CompiledStdlib.named(name), "block", width);
    }

    private static double area(Assembly top, String id) {
        return top.parts().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow().work().outline().area().squareInches();
    }

    /** A ring's outer circle goes through the corners of its square (Euclid IV.9): middle and four melons fill pi d d / 2. */
    @Test
    void rings_cover_their_scallops_and_each_is_a_circle() {
        for (int columns = 1; columns <= 2; columns++) {
            for (int rows = columns; rows <= 3; rows += 2) {
                double d = 5 + 3 * columns + rows;
                Assembly top = Setting.rings(columns, rows, SAND).of(block("DoubleWeddingRing", inches(d)));
                Cover.check("rings", top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
                assertThat(top.parts()).hasSize(columns * (rows + 1) + rows * (columns + 1) + columns * rows);
                assertThat(area(top, "middle1-1") + 4 * area(top, "level1-1")).isCloseTo(Math.PI * d * d / 2, within(1e-3));
                assertThat(top.width().inInches()).isCloseTo(columns * d + (Math.sqrt(2) - 1) * d, within(1e-6));
                assertThat(top.outline().perimeter()).isCloseTo(2 * (columns + rows) * Math.PI / 2 * d / Math.sqrt(2), within(1e-6));
            }
        }
    }

    /** Common practice: the four ends that meet make a four-patch of two cloths. */
    @Test
    void where_melons_meet_the_ends_are_of_two_cloths_by_turns() {
        double d = 10;
        Assembly top = Setting.rings(3, 4, SAND).of(block("DoubleWeddingRing", inches(d)));
        Point first = new Point((Math.sqrt(2) - 1) * d / 2, (Math.sqrt(2) - 1) * d / 2);
        for (int j = 1; j < 4; j++) {
            for (int i = 1; i < 3; i++) {
                Point node = first.plus(new Point(i * d, j * d));
                Map<Boolean, List<Patch>> ends = top.patches().stream().filter(p -> p.id().endsWith("/left") || p.id().endsWith("/right"))
                        .filter(p -> p.shape().centroid().distance(node) < 0.2 * d).collect(Collectors.partitioningBy(p -> p.id().startsWith("level")));
                assertThat(ends.get(true)).hasSize(2);
                assertThat(ends.get(false)).hasSize(2);
                List<Role> roles = new ArrayList<>();
                ends.values().forEach(two -> {
                    assertThat(two.get(0).role()).isEqualTo(two.get(1).role());
                    roles.add(two.get(0).role());
                });
                assertThat(roles).doesNotHaveDuplicates();
            }
        }
    }

    /** A shell fills what its square's two shoulders take away: half of the square, since shells fill the plane, one to w x w / 2. */
    @Test
    void shells_cover_a_rectangle_and_each_fills_half_its_square() {
        for (int columns = 1; columns <= 3; columns++) {
            for (int rows = 1; rows <= 3; rows += 2) {
                double w = 2 + columns + rows;
                ShellSetting setting = Setting.shells(columns, rows, SAND);
                SettingShapesTest.covers(setting.of(block("Clamshell", inches(w))));
                Assembly top = setting.partialBlocks().of(block("Clamshell", inches(w)));
                SettingShapesTest.covers(top);
                assertThat(top.width()).isEqualTo(inches(columns * w));
                assertThat(top.height()).isEqualTo(inches((rows + 1) * w / 2));
                assertThat(area(top, "r1c1")).isCloseTo(w * w / 2, within(1e-4));
            }
        }
    }

    @Test
    void blocks_of_another_shape_are_refused_with_the_repair() {
        assertThatThrownBy(() -> Setting.rings(2, 2, SAND).of(block("Clamshell", inches(6)))).isInstanceOf(DesignException.class)
                .hasMessageContaining("'Clamshell'").hasMessageContaining("two quarter arcs");
        assertThatThrownBy(() -> Setting.rings(2, 2, SAND).of(block("DoubleWeddingRing", inches(6)).turned(1))).isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> Setting.rings(2, 2, SAND).of((c, r) -> block("DoubleWeddingRing", inches(c == 3 ? 7 : 6)))).isInstanceOf(DesignException.class)
                .hasMessageContaining("column 3, row 0");
        assertThatThrownBy(() -> Setting.shells(2, 2, SAND).of(block("Clamshell", inches(6)).turned(2))).isInstanceOf(DesignException.class)
                .hasMessageContaining("turn it upright");
        assertThatThrownBy(() -> Setting.shells(0, 2, SAND)).isInstanceOf(DesignException.class);
    }

    /** Arcs of a quarter are a quarter of two pi r long; a square of side s gives no more bias strip than its area over the strip's width. */
    @Test
    void a_scalloped_edge_is_bound_on_the_bias_along_its_curves() {
        Quilt quilt = Quilt.of("Mooring Rings", Setting.rings(4, 5, SAND).of(block("DoubleWeddingRing", inches(12)))).bound(RUST);
        Finishing f = Finishing.of(quilt, CuttingRules.INCH);
        double round = 18 * Math.PI / 2 * 12 / Math.sqrt(2);
        assertThat(f.edge().curved()).isTrue();
        assertThat(f.bindingLength().inInches()).isCloseTo(round + 12, within(1e-4));
        assertThat(f.biasSquares()).isEqualTo(1);
        assertThat(f.biasSquare().inInches()).isBetween(Math.sqrt((round + 12) * 2.5), Math.sqrt((round + 12) * 2.5) + 2.5);
        assertThat(f.table().toString()).contains("won't go round a curve").doesNotContain("Binding, straight");
        Fabric narrow = RUST.wide(inches(13));
        Finishing small = Finishing.of(quilt.bound(narrow), CuttingRules.INCH);
        assertThat(small.biasSquare()).isLessThanOrEqualTo(inches(13));
        assertThat(small.biasFrom(small.biasSquare()).times((long) small.biasSquares()).inInches())
                .isGreaterThanOrEqualTo(round + 12 + (small.biasSquares() - 1) * 2.5);
    }

    @Test
    void they_look_as_accepted() {
        Golden.picture("setting/rings", PatchworkPicture.of(Quilt.of("Mooring Rings", Setting.rings(2, 3, SAND).of(block("DoubleWeddingRing", inches(12)))).bound(RUST)));
        Golden.picture("setting/shells", PatchworkPicture.of(Setting.shells(4, 4, SAND).alternating(block("Clamshell", inches(6)),
                block("Clamshell", inches(6)).recoloured(p -> RUST))));
    }
}
