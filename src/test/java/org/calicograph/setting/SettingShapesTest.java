package org.calicograph.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.Golden;
import org.calicograph.border.Border;
import org.calicograph.border.Round;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Pieces;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Trimming;
import org.calicograph.quilt.Medallion;
import org.calicograph.show.PatchworkPicture;
import org.junit.jupiter.api.Test;

/** Strippy, hexagon, rosette and triangle settings, and tops trimmed to a rectangle. */
public class SettingShapesTest {

    private static final Fabric NAVY = Fabric.of("navy", "#24425c");
    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");
    private static final Fabric RUST = Fabric.of("rust", "#b5553c");
    private static final Fabric MIST = Fabric.of("mist", "#9db8bb");

    /** A square block of half-square triangles and a quarter circle: straight and curved patches. */
    private static Block pinwheel(Length side) {
        return Block.onGrid("Wheel", 2, side).halvesFalling(0, 0, 1, Role.LIGHT, Role.DARK).turnedFourTimes().block();
    }

    private static Block shell(Length side) {
        Point corner = new Point(0, 4);
        Path inner = Path.from(0, 1).arcAbout(corner, Angle.QUARTER).lineTo(corner).close();
        Path outer = Path.from(0, 1).arcAbout(corner, Angle.QUARTER).lineTo(4, 4).lineTo(4, 0).lineTo(0, 0).close();
        return Block.onGrid("Shell", 4, side).patch(Role.DARK, inner).patch(Role.LIGHT, outer).block();
    }

    /** Six kites about the middle of a hexagon. */
    private static Block hexagon(double side, Fabric one, Fabric other) {
        List<Point> c = Path.regular(6, Point.ORIGIN, side, Angle.degrees(-90)).corners();
        List<Patch> patches = new java.util.ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Region kite = Region.polygon(Point.ORIGIN, c.get((i + 5) % 6).midway(c.get(i)), c.get(i), c.get(i).midway(c.get((i + 1) % 6)));
            patches.add(new Patch("" + (i + 1), Role.DARK, i % 2 == 0 ? one : other, kite));
        }
        return Block.of("Kites", Region.of(Path.polygon(c)), patches);
    }

    /** A triangle with one of its points in another cloth. */
    private static Block triangle(double side, Fabric one, Fabric other) {
        double h = side * Math.sqrt(3) / 2;
        Point top = new Point(side / 2, 0);
        Point right = new Point(side, h);
        Point left = new Point(0, h);
        return Block.of("Point", Region.polygon(top, right, left), List.of(
                new Patch("1", Role.DARK, one, Region.polygon(top, top.midway(right), top.midway(left))),
                new Patch("2", Role.LIGHT, other, Region.polygon(top.midway(left), top.midway(right), right, left))));
    }

    public static void covers(Patchwork top) {
        double patches = top.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(patches).isCloseTo(top.outline().area().squareInches(), within(1e-4 * top.outline().bounds().width()));
        assertThat(top.isRectangular()).isTrue();
        Cover.check("the top", top.outline(), top.patches().stream().map(p -> new Cover.Part(p.id(), p.shape())).toList());
        assertThat(top.patches().stream().map(Patch::id).distinct().count()).isEqualTo(top.patchCount());
    }

    @Property(tries = 8)
    void every_setting_covers_its_outline(@ForAll @IntRange(min = 1, max = 4) int columns, @ForAll @IntRange(min = 1, max = 4) int rows,
                                          @ForAll @DoubleRange(min = 1, max = 14) double side, @ForAll @DoubleRange(min = 0.25, max = 4) double sash) {
        Length s = inches(side);
        StrippySetting strippy = Setting.strippy(columns, rows, inches(sash), NAVY);
        covers(strippy.of(shell(s)));
        covers(strippy.framedToo().halfDropped().of(shell(s)));
        covers(strippy.halfDropped().onPoint(SAND).of(pinwheel(s)));
        Block hexagon = hexagon(side, NAVY, MIST);
        HexagonSetting hexagons = Setting.hexagons(columns, rows, SAND);
        covers(hexagons.of(hexagon));
        covers(hexagons.partialBlocks().of(hexagon));
        TriangleSetting triangles = Setting.triangles(columns, rows, SAND);
        covers(triangles.of(triangle(side, RUST, MIST)));
        covers(triangles.partialBlocks().of(triangle(side, RUST, MIST)));
    }

    @Property(tries = 8)
    void rosettes_cover_their_ground(@ForAll @IntRange(min = 1, max = 3) int columns, @ForAll @IntRange(min = 1, max = 3) int rows,
                                     @ForAll @IntRange(min = 1, max = 3) int rings, @ForAll @DoubleRange(min = 0.5, max = 3) double side) {
        Assembly top = Setting.rosettes(columns, rows, rings, SAND).alternating(hexagon(side, NAVY, NAVY), hexagon(side, RUST, MIST));
        covers(top);
        // 1 + 6 + 12 + ... hexagons in each: 3 n (n + 1) + 1, the centred hexagonal numbers (OEIS A003215, from memory).
        long rosettes = (long) columns * rows - rows / 2;
        assertThat(top.parts().stream().filter(p -> p.id().startsWith("rosette")).count()).isEqualTo(rosettes * (3L * rings * (rings + 1) + 1));
        assertThat(top.parts().stream().filter(p -> p.id().startsWith("rosette")).allMatch(p -> p.work().name().equals("Kites"))).isTrue();
    }

    @Property(tries = 20)
    void a_trimmed_top_covers_what_is_left(@ForAll @DoubleRange(min = 3, max = 24) double width, @ForAll @DoubleRange(min = 3, max = 24) double height,
                                           @ForAll @IntRange(min = 0, max = 3) int kind) {
        Patchwork top = switch (kind) {
            case 0 -> Setting.straight(4, 4).of(shell(inches(6)));
            case 1 -> Setting.onPoint(3, 3, SAND).of(shell(inches(6)));
            case 2 -> Medallion.around(shell(inches(16))).with(Border.of(pinwheel(inches(4)))).top();
            default -> Setting.straight(2, 2).of(Setting.sashed(2, 2, inches(1), NAVY, RUST).of(shell(inches(6))));
        };
        Trimming trimmed = top.trimmedTo(inches(width), inches(height));
        covers(trimmed.top());
        assertThat(trimmed.top().width()).isEqualTo(inches(width));
        assertThat(trimmed.top().height()).isEqualTo(inches(height));
        assertThat(trimmed.whole() + trimmed.partial().size()).isEqualTo(trimmed.top().parts().size());
        // What is left is what was there: the cloth at any point is the same.
        double left = (top.outline().bounds().width() - width) / 2;
        double down = (top.outline().bounds().height() - height) / 2;
        for (Patch p : trimmed.top().patches()) {
            Point inside = p.shape().inside();
            Point before = inside.plus(left, down);
            assertThat(top.patches().stream().filter(q -> q.fabric().equals(p.fabric())).anyMatch(q -> q.shape().contains(before))).isTrue();
        }
    }

    @Test
    void blocks_on_point_trimmed_by_half_a_block_leave_halves_and_quarters() {
        Assembly larger = Setting.onPoint(4, 5, SAND).of(pinwheel(inches(6)));
        double diagonal = 6 * Math.sqrt(2);
        Trimming trimmed = larger.trimmedTo(inches(3 * diagonal), inches(4 * diagonal));
        // 3 x 4 and 2 x 3 whole; halves between them along the edges, quarters in the corners: no setting triangle is left.
        assertThat(trimmed.whole()).isEqualTo(3 * 4 + 2 * 3);
        assertThat(trimmed.partial()).hasSize(2 * (2 + 3) + 4);
        assertThat(trimmed.top().patches()).noneMatch(p -> p.fabric().equals(SAND));
        assertThat(trimmed.caution()).startsWith("18 parts are whole, 14 are cut by the edge.").contains("1/4 in");
        assertThatThrownBy(() -> larger.trimmedTo(inches(40), inches(20))).isInstanceOf(DesignException.class)
                .hasMessageContaining("can't be trimmed to 40 in x 20 in; trim it to less, or set more blocks");
    }

    /**
     * A triangle quilt 74 in long of 16 rows has rows 4 5/8 in high, and 29 triangles make 15 full bases in a row
     * (quilting blog on triangle arithmetic, 2016); the height is 0.866 of the side (two articles on quilts of 60 degrees).
     */
    @Test
    void triangles_have_the_published_layout() {
        double side = 4.625 / (Math.sqrt(3) / 2);
        Assembly top = Setting.triangles(29, 16, SAND).of(triangle(side, NAVY, MIST));
        assertThat(top.outline().bounds().height()).isCloseTo(74, within(1e-9));
        assertThat(top.outline().bounds().width()).isCloseTo(15 * side, within(1e-9));
        assertThat(4.625 / side).isCloseTo(0.866, within(0.0001));
    }

    /** Hexagons of side 1: root 3 across the flats, 2 from point to point, rows 1 1/2 apart (any textbook of geometry). */
    @Test
    void hexagons_have_the_sizes_of_geometry() {
        Assembly top = Setting.hexagons(5, 4, SAND).of(hexagon(1, NAVY, MIST));
        assertThat(top.outline().bounds().width()).isCloseTo(5 * Math.sqrt(3), within(1e-9));
        assertThat(top.outline().bounds().height()).isCloseTo(6.5, within(1e-9));
        assertThat(top.parts().stream().filter(p -> p.work().name().equals("Kites")).count()).isEqualTo(5 + 4 + 5 + 4);
        assertThat(top.parts().stream().filter(p -> p.work().name().equals("hexagon, partial")).count()).isEqualTo(4 + 6 + 5);
    }

    @Test
    void blocks_of_another_shape_are_refused_with_the_repair() {
        assertThatThrownBy(() -> Setting.hexagons(2, 2, SAND).of(hexagon(2, NAVY, MIST).turned(1))).isInstanceOf(DesignException.class)
                .hasMessageContaining("'Kites' in column 1, row 1").hasMessageContaining("turn it by 30 degrees");
        assertThatThrownBy(() -> Setting.triangles(2, 2, SAND).of(pinwheel(inches(4)))).isInstanceOf(DesignException.class)
                .hasMessageContaining("an equilateral triangle of side 4 in, its point up");
        assertThatThrownBy(() -> Setting.strippy(2, 2, inches(2), NAVY).of((c, r) -> pinwheel(inches(4 + c)))).isInstanceOf(DesignException.class)
                .hasMessageContaining("make them equal with scaledTo");
    }

    @Test
    void alternate_blocks_stand_as_on_a_chequerboard() {
        Block plain = Block.plain(SAND, inches(4), inches(4));
        assertThat(Setting.straight(3, 3).alternating(pinwheel(inches(4)), plain).parts().stream()
                .map(p -> p.work().name().equals("sand") ? "-" : "x").reduce("", String::concat)).isEqualTo("x-x-x-x-x");
        Assembly onPoint = Setting.onPoint(3, 2, NAVY).alternating(pinwheel(inches(4)), plain);
        assertThat(onPoint.parts().stream().filter(p -> p.work().name().equals("Wheel")).count()).isEqualTo(6);
        assertThat(onPoint.parts().stream().filter(p -> p.work().name().equals("sand")).count()).isEqualTo(2);
    }

    @Test
    void what_is_cut_for_these_tops_is_all_that_they_show() {
        for (Patchwork top : List.of(Setting.hexagons(3, 3, SAND).partialBlocks().of(hexagon(2, NAVY, MIST)), Setting.rosettes(1, 1, 1, SAND).of(hexagon(2, NAVY, MIST)),
                Setting.onPoint(3, 3, SAND).of(shell(inches(6))).trimmedTo(inches(14), inches(17)).top(),
                Medallion.around(pinwheel(inches(6))).with(Round.octagon(MIST, SAND)).with(Round.ring(12, inches(2), NAVY, RUST)).top())) {
            double cut = Pieces.of(top, CuttingRules.INCH).stream().mapToDouble(p -> p.sewn().squareInches()).sum();
            assertThat(cut).isCloseTo(top.outline().area().squareInches(), within(0.01));
        }
    }

    @Test
    void settings_look_as_accepted() {
        Golden.picture("setting/strippy", PatchworkPicture.of(Setting.strippy(3, 4, inches(3), NAVY).framedToo().halfDropped().onPoint(MIST)
                .of(pinwheel(inches(6)).with(Role.DARK, RUST).with(Role.LIGHT, SAND))));
        Golden.picture("setting/hexagons", PatchworkPicture.of(Setting.hexagons(4, 4, SAND).of((c, r) -> (c + r) % 2 == 0
                ? hexagon(3, NAVY, MIST) : hexagon(3, RUST, MIST))));
        Golden.picture("setting/hexagons-partial", PatchworkPicture.of(Setting.hexagons(4, 4, SAND).partialBlocks().of(hexagon(3, NAVY, MIST))));
        Golden.picture("setting/rosettes", PatchworkPicture.of(Setting.rosettes(2, 2, 2, SAND).of((place, ring) ->
                ring == 0 ? hexagon(1, RUST, RUST) : ring == 1 ? hexagon(1, NAVY, NAVY) : hexagon(1, MIST, MIST))));
        Golden.picture("setting/triangles", PatchworkPicture.of(Setting.triangles(7, 4, SAND).partialBlocks().of((c, r) ->
                Math.floorMod(c + r, 2) == 0 ? triangle(4, RUST, NAVY) : triangle(4, SAND, MIST))));
        Golden.picture("setting/trimmed", PatchworkPicture.of(Setting.onPoint(4, 5, SAND).of(shell(inches(6)))
                .trimmedTo(inches(18 * Math.sqrt(2)), inches(24 * Math.sqrt(2))).top()));
    }
}
