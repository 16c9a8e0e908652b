package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.Golden;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.stitching.Marking;
import org.calicograph.stitching.QuiltingPlan;
import org.junit.jupiter.api.Test;

/** The quilting designs as they are drawn. */
class QuiltingDrawingsTest {

    private static final Region SHIELD = Region.polygon(Point.of(0, 0), Point.of(12, 0), Point.of(12, 9), Point.of(6, 12), Point.of(0, 9));
    private static final Colour THREAD = Colour.hex("#24425c");

    @Test
    void overall_lines() {
        golden("grid", Lines.grid(SHIELD, Length.inches(1)));
        golden("hanging-diamonds", Lines.hangingDiamonds(SHIELD, Length.inches(1)));
        golden("fan", Lines.fans(SHIELD, 5, Length.inches(0.6)));
        golden("clamshell", Lines.clamshells(SHIELD, Length.inches(1.5)));
        golden("echo", Echo.inside(SHIELD, Length.inches(0.6)));
        golden("meander", Meander.fill(SHIELD, Length.inches(1), 2).lines());
    }

    @Test
    void feathers_and_vines() {
        golden("feather-corner", new Feather(Length.inches(1.8), Length.inches(0.75)).inBorder(new Box(0, 0, 24, 20), Length.inches(4)));
        golden("wreath", new Feather(Length.inches(1.6), Length.inches(0.75)).wreath(Point.of(6, 6), Length.inches(4)));
        Spine bow = Spine.along(Path.from(0, 4).curveTo(Point.of(5, -1), Point.of(10, 9), Point.of(15, 4)).open());
        golden("feather-spray", new Feather(Length.inches(1.6), Length.inches(0.75)).along(bow));
        golden("vine", new Vine(Length.inches(0.8), Length.inches(3)).along(bow));
    }

    @Test
    void cables_round_a_border_and_closed_at_their_ends() {
        Box box = new Box(0, 0, 24, 20);
        golden("cable-twist-border", Cable.of(2, Length.inches(2)).pitch(Length.inches(3)).inBorder(box, Length.inches(3)));
        golden("cable-braid-border", Cable.of(3, Length.inches(2.2)).roped(Length.inches(0.3)).inBorder(box, Length.inches(3)));
        Spine bow = Spine.along(Path.from(0, 4).curveTo(Point.of(5, -1), Point.of(10, 9), Point.of(15, 4)).open());
        golden("cable-closed-ends", Cable.of(4, Length.inches(2.4)).roped(Length.inches(0.25)).along(bow));
        golden("cable-twist-ends", Cable.of(2, Length.inches(1.5)).pitch(Length.inches(2.5)).roped(Length.inches(0.375)).along(bow));
    }

    @Test
    void the_route_the_density_and_the_sheet_for_marking() {
        Fabric foam = Fabric.of("foam", "#f3ecdd");
        QuiltingPlan plan = QuiltingPlan.on(Block.plain(foam, Length.inches(12), Length.inches(12)))
                .with("rings and rays", THREAD, rosette());
        Golden.picture("quilting/route", plan.route(0));
        Golden.picture("quilting/density", plan.density(Length.inches(1)).picture());
        Golden.picture("quilting/marking", Marking.stencil("Rosette", rosette(), Tiling.on(Paper.A4)).get(1));
    }

    private static List<Path> rosette() {
        Region square = Region.rectangle(new Box(0, 0, 12, 12));
        List<Path> lines = new ArrayList<>(List.of(Path.circle(Point.of(6, 6), 2), Path.circle(Point.of(6, 6), 4)));
        lines.addAll(Lines.rays(square, Point.of(6, 6), 8, org.calicograph.measure.Angle.ZERO, Length.inches(2)));
        lines.add(Path.circle(Point.of(6, 6), 1));
        return lines;
    }

    private static void golden(String name, List<Path> lines) {
        Golden.picture("quilting/" + name, new Picture.Shape(lines, Paint.NONE, Pen.of(THREAD, 0.05)));
    }
}
