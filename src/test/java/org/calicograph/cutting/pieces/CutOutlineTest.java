package org.calicograph.cutting.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.setting.Setting;

class CutOutlineTest {

    private static final Length SEAM = Length.inches(1, 4);

    /** A quarter circle's arc and the two sides of its square: at both ends it runs into a side and leaves no angle. */
    private static Region spandrel(double side) {
        return Region.of(Path.from(new Point(0, 0)).lineTo(new Point(side, 0)).lineTo(new Point(side, side))
                .arcAbout(new Point(0, side), Angle.QUARTER.negated()).close());
    }

    /** Three arcs that touch one another: a curved triangle with three points of no angle, as between three coins. */
    private static Region betweenCoins(double r) {
        Point a = new Point(0, 0);
        Point b = new Point(2 * r, 0);
        Point c = new Point(r, r * Math.sqrt(3));
        Angle sixty = Angle.degrees(60);
        return Region.of(Path.from(mid(a, b)).arcAbout(a, sixty).arcAbout(c, sixty).arcAbout(b, sixty).close());
    }

    private static Point mid(Point a, Point b) {
        return a.plus(b).times(0.5);
    }

    /** Nothing of a cut piece lies farther from its finished shape than the corner of an allowance, however it is turned. */
    @Property(tries = 60)
    void a_cut_piece_is_nowhere_farther_out_than_the_corner_of_its_allowance(@ForAll @DoubleRange(min = 0, max = 360) double degrees,
            @ForAll @DoubleRange(min = 2, max = 12) double size) {
        for (Region shape : List.of(spandrel(size), betweenCoins(size))) {
            Region turned = shape.transformed(Transform.turn(Angle.degrees(degrees)));
            Region mirrored = turned.transformed(Transform.mirrorAcross(0));
            double area = CutOutline.of(shape, SEAM).area().squareInches();
            for (Region each : List.of(turned, mirrored)) {
                Region cut = CutOutline.of(each, SEAM);
                assertThat(Polygons.of(each, 1e-3).buffer(SEAM.inInches() * 1.5).covers(Polygons.of(cut, 1e-3))).isTrue();
                assertThat(Polygons.of(cut, 1e-3).buffer(2e-3).covers(Polygons.of(each, 1e-3))).isTrue();
                assertThat(cut.area().squareInches()).isCloseTo(area, within(0.01));
            }
        }
    }

    @Property(tries = 60)
    void shapes_with_points_of_no_angle_are_congruent_however_they_are_turned(@ForAll @DoubleRange(min = 0, max = 360) double degrees,
            @ForAll @DoubleRange(min = 2, max = 12) double size) {
        for (Region shape : List.of(spandrel(size), betweenCoins(size))) {
            Region turned = shape.transformed(Transform.turn(Angle.degrees(degrees)));
            assertThat(Outline.of(turned.outer()).steps()).isEqualTo(Outline.of(shape.outer()).steps());
        }
    }

    /** The block has one melon and two corners that are each other turned half about. */
    @Example
    void an_orange_peel_has_two_shapes() {
        Block peel = Block.onGrid("Peel", 1, Length.inches(9))
                .patch(org.calicograph.fabric.Role.LIGHT, Path.from(new Point(0, 0)).lineTo(new Point(1, 0)).lineTo(new Point(1, 1))
                        .arcAbout(new Point(0, 1), Angle.QUARTER.negated()).close())
                .patch(org.calicograph.fabric.Role.LIGHT, Path.from(new Point(1, 1)).lineTo(new Point(0, 1)).lineTo(new Point(0, 0))
                        .arcAbout(new Point(1, 0), Angle.QUARTER.negated()).close())
                .patch(org.calicograph.fabric.Role.DARK, Path.from(new Point(0, 0)).arcAbout(new Point(0, 1), Angle.QUARTER)
                        .arcTo(new Point(0, 0), Math.tan(Math.PI / 8)).close())
                .block();
        List<Piece> pieces = Pieces.of(Setting.straight(2, 2).of(peel), CuttingRules.INCH);
        assertThat(pieces).extracting(Piece::count).containsExactlyInAnyOrder(8, 4);
    }
}
