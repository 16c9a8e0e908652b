package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.seams.Pressing;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.Unit;

/** A unit with its parts drawn apart, the last joinings furthest. */
final class Exploded {

    private final Map<String, Picture> pictures;
    private final double gap;

    private Exploded(Map<String, Picture> pictures, double gap) {
        this.pictures = pictures;
        this.gap = gap;
    }

    /** @param pictures what each single looks like in place */
    static Picture of(Unit unit, Map<String, Picture> pictures) {
        Box all = unit.singles().get(0).shape().bounds();
        for (Unit.Single s : unit.singles()) {
            all = all.union(s.shape().bounds());
        }
        List<Picture> parts = new ArrayList<>();
        new Exploded(pictures, 0.05 * Math.max(all.width(), all.height())).draw(unit, Point.ORIGIN, 1, parts);
        return Picture.group(parts);
    }

    /** The parts of one step apart, each part whole, with an arrow across every seam that is pressed to one side. */
    static Picture step(Unit.Sewn step, Map<String, Picture> pictures, Pressing pressing) {
        Box all = step.singles().get(0).shape().bounds();
        for (Unit.Single s : step.singles()) {
            all = all.union(s.shape().bounds());
        }
        double side = Math.max(all.width(), all.height());
        double gap = 0.1 * side / Math.sqrt(step.parts().size() - 1);
        List<Picture> parts = new ArrayList<>();
        List<Picture> arrows = new ArrayList<>();
        Point at = Point.ORIGIN;
        for (int i = 0; i < step.parts().size(); i++) {
            Point before = at;
            at = i == 0 ? at : at.plus(apart(step, i).times(gap));
            for (Unit.Single s : step.parts().get(i).singles()) {
                parts.add(pictures.get(s.id()).transformed(Transform.move(at)));
            }
            for (Segment seam : i == 0 ? List.<Segment>of() : step.seams().get(i - 1)) {
                Point middle = seam.middle().plus(before.plus(at).times(0.5));
                pressing.seams().stream().filter(p -> p.seam().equals(seam)).findFirst()
                        .ifPresent(p -> arrows.add(arrow(middle, p.toward(), Math.min(gap, side / 14))));
            }
        }
        parts.addAll(arrows);
        return Picture.group(parts);
    }

    /** An arrow through a point, so long on either side of it. */
    static Picture arrow(Point middle, Point toward, double arm) {
        Point tip = middle.plus(toward.times(arm));
        Point side = toward.quarterTurned().times(arm * 0.45);
        Point back = tip.minus(toward.times(arm * 0.7));
        return new Picture.Shape(List.of(Path.through(middle.minus(toward.times(arm)), tip), Path.through(back.plus(side), tip, back.minus(side))),
                Paint.NONE, Pen.of(Colour.hex("#8e3b25"), arm / 6));
    }

    /** @param whole the larger side of the whole, which decides how heavy the outline is */
    static Picture patch(Region shape, Colour colour, double whole) {
        return new Picture.Shape(shape.paths(), Paint.of(colour), Pen.of(Colour.hex("#3b3a38"), Math.max(0.01, whole / 400)));
    }

    private void draw(Unit unit, Point step, double share, List<Picture> into) {
        if (unit instanceof Unit.Single single) {
            into.add(pictures.get(single.id()).transformed(Transform.move(step)));
            return;
        }
        Unit.Sewn sewn = (Unit.Sewn) unit;
        int n = sewn.parts().size();
        Point[] at = new Point[n];
        at[0] = Point.ORIGIN;
        Point middle = Point.ORIGIN;
        for (int i = 1; i < n; i++) {
            at[i] = at[i - 1].plus(apart(sewn, i).times(gap * share));
            middle = middle.plus(at[i].times(1.0 / n));
        }
        for (int i = 0; i < n; i++) {
            draw(sewn.parts().get(i), step.plus(at[i].minus(middle)), share * 0.62, into);
        }
    }

    /** The direction in which a part moves away from the one before: across a straight seam, else from centre to centre. */
    private static Point apart(Unit.Sewn sewn, int i) {
        Point way = centre(sewn.parts().get(i)).minus(centre(sewn.parts().get(i - 1)));
        List<Segment> seam = sewn.seams().get(i - 1);
        Point normal = seam.get(0).to().minus(seam.get(0).from());
        normal = normal.norm() == 0 ? new Point(0, 1) : normal.unit().quarterTurned();
        if (sewn.kind() == SeamKind.STRAIGHT || sewn.kind() == SeamKind.BEGUN || way.norm() < 1e-9) {
            return normal.dot(way) < 0 ? normal.times(-1) : normal;
        }
        return way.unit();
    }

    private static Point centre(Unit unit) {
        Point sum = Point.ORIGIN;
        double area = 0;
        for (Unit.Single s : unit.singles()) {
            double a = s.shape().area().squareInches();
            sum = sum.plus(s.shape().centroid().times(a));
            area += a;
        }
        return sum.times(1 / area);
    }
}
