package org.calicograph.stitching;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.patchwork.Patch;

/** Quilting as it is drawn: the cloth pale, the thread plain. */
final class PlanPicture {

    private static final Colour PAPER = Colour.hex("#fbf8f1");
    private static final Colour AGAIN = Colour.hex("#2b2b2b");

    private PlanPicture() { }

    static Picture placement(QuiltingPlan plan) {
        double size = size(plan);
        List<Picture> parts = new ArrayList<>(List.of(cloth(plan)));
        for (QuiltingPlan.Layer layer : plan.layers()) {
            parts.add(lines(layer.lines(), Pen.of(layer.thread(), size / 500)).labelled(layer.name(), layer.name()));
        }
        return Picture.group(parts);
    }

    static Picture cloth(QuiltingPlan plan) {
        double size = size(plan);
        List<Picture> parts = new ArrayList<>();
        for (Patch patch : plan.top().patches()) {
            parts.add(Picture.of(patch.shape()).filled(PAPER.mixed(patch.fabric().colour(), 0.28)).outlined(Pen.of(Colour.hex("#c9c2b4"), size / 1200)));
        }
        return Picture.group(parts);
    }

    static Picture route(QuiltingPlan plan, int layer) {
        double size = size(plan);
        Route route = plan.layers().get(layer).route();
        Colour thread = plan.layers().get(layer).thread();
        List<Picture> parts = new ArrayList<>(List.of(cloth(plan)));
        List<Path> once = new ArrayList<>();
        List<Path> again = new ArrayList<>();
        for (Route.Run run : route.runs()) {
            for (Route.Pass pass : run.passes()) {
                (pass.kind() == Route.Kind.NEW ? once : again).add(new Path(List.of(pass.line())));
            }
        }
        parts.add(lines(once, Pen.of(thread, size / 500)));
        if (!again.isEmpty()) {
            parts.add(lines(again, Pen.of(AGAIN, size / 350).dashed(size / 120, size / 160)));
        }
        double arrow = size / 90;
        List<Path> heads = new ArrayList<>();
        for (Route.Run run : route.runs()) {
            double every = Math.max(size / 9, run.length() / 40);
            double next = Math.min(every / 2, run.length() / 3);
            double done = 0;
            for (Route.Pass pass : run.passes()) {
                Segment s = pass.line();
                while (next <= done + s.length()) {
                    heads.add(head(s.at((next - done) / s.length()), s.heading((next - done) / s.length()).unit(), arrow));
                    next += every;
                }
                done += s.length();
            }
        }
        if (!heads.isEmpty()) {
            parts.add(new Picture.Shape(heads, Paint.of(thread), Pen.NONE));
        }
        double r = size / 60;
        List<Point> numbers = numbers(route, r);
        for (int i = route.runs().size() - 1; i >= 0; i--) {
            Point at = numbers.get(i);
            parts.add(new Picture.Shape(List.of(Path.circle(at, r)), Paint.of(Colour.WHITE), Pen.of(thread, size / 700)));
            double text = i >= 99 ? r * 0.8 : r * 1.15;
            parts.add(new Picture.Lettering(String.valueOf(i + 1), at.plus(0, text * 0.36), text, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, Colour.hex("#2b2b2b")));
        }
        return Picture.group(parts);
    }

    /** Each at its start, or beside it where another number stands there already. */
    private static List<Point> numbers(Route route, double r) {
        List<Point> at = new ArrayList<>();
        for (Route.Run run : route.runs()) {
            Point start = Route.start(run);
            Point place = start;
            for (int i = 0; i < 16 && covered(place, at, r); i++) {
                place = start.plus(Point.polar((i < 8 ? 1.6 : 2.6) * r, Angle.turn(i % 8, 8)));
            }
            at.add(covered(place, at, r) ? start : place);
        }
        return at;
    }

    private static boolean covered(Point place, List<Point> others, double r) {
        return others.stream().anyMatch(o -> o.distance(place) < 1.9 * r);
    }

    private static Path head(Point at, Point u, double size) {
        Point side = u.quarterTurned().times(size * 0.45);
        return Path.polygon(at.plus(u.times(size * 0.6)), at.minus(u.times(size * 0.4)).plus(side), at.minus(u.times(size * 0.4)).minus(side));
    }

    private static Picture lines(List<Path> paths, Pen pen) {
        return new Picture.Shape(paths, Paint.NONE, pen);
    }

    private static double size(QuiltingPlan plan) {
        Box b = plan.area().bounds();
        return Math.max(b.width(), b.height());
    }
}
