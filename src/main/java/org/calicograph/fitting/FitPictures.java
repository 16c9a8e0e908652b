package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/** Fits drawn true to scale: swags along their line, and a printed border with its bars. */
final class FitPictures {

    private static final Colour GROUND = Colour.hex("#f3ecdd");
    private static final Colour LINE = Colour.hex("#3b3a38");
    private static final Colour SWAG = Colour.hex("#24425c");
    private static final Colour CORNER = Colour.hex("#b5553c");
    private static final Colour PRINT = Colour.hex("#cfdcd6");

    private FitPictures() { }

    /** Swags hang outwards by a quarter of their length; those that turn a corner are of another colour. */
    static Picture motifs(MotifSpacing m) {
        Length across = m.alongEnds().times((long) m.across()).plus(m.reach().times(2));
        Length down = m.alongSides().times((long) m.down()).plus(m.reach().times(2));
        double w = across.inInches();
        double h = down.inInches();
        double pen = Math.max(w, h) / 400;
        List<Picture> parts = new ArrayList<>();
        double margin = Math.max(m.alongEnds().inInches(), m.alongSides().inInches()) / 2 + m.reach().inInches() / 2;
        parts.add(Picture.of(Region.rectangle(new Box(0, 0, w, h).grownBy(margin))).filled(GROUND).outlined(Pen.of(LINE, pen)));
        parts.add(Picture.of(Path.rectangle(new Box(0, 0, w, h))).outlined(Pen.of(LINE, pen).dashed(6 * pen, 4 * pen)));
        for (int side = 0; side < 4; side++) {
            List<Length> marks = side % 2 == 0 ? m.marksAcross() : m.marksDown();
            Transform place = side(side, w, h);
            for (int i = 1; i < marks.size(); i++) {
                Point from = new Point(marks.get(i - 1).inInches(), 0);
                Point to = new Point(marks.get(i).inInches(), 0);
                Path swag = Path.from(from).arcThrough(from.midway(to).plus(0, -from.distance(to) / 4), to).open();
                parts.add(Picture.of(swag.transformed(place)).outlined(Pen.of(SWAG, 3 * pen)));
            }
            double reach = m.reach().inInches();
            if (reach > 0) {
                Path turn = Path.from(0, reach).arcThrough(new Point(-reach / 2, -reach / 2), new Point(reach, 0)).open();
                parts.add(Picture.of(turn.transformed(place)).outlined(Pen.of(CORNER, 3 * pen)));
            }
        }
        return Picture.group(parts);
    }

    /** Bars on the mirror lines, wide on the first of each repeat and narrow on the second, fine lines either side of the first. */
    static Picture stripes(StripeFit fit, StripeMatch match) {
        double w = fit.outer(0).inInches();
        double h = fit.outer(1).inInches();
        double b = fit.width().inInches();
        double r = fit.repeat().inInches();
        double pen = Math.max(w, h) / 800;
        List<Picture> parts = new ArrayList<>();
        parts.add(Picture.of(Region.rectangle(new Box(b, b, w - b, h - b))).filled(GROUND));
        for (int side = 0; side < 4; side++) {
            double length = fit.outer(side).inInches();
            Region strip = Region.polygon(new Point(0, 0), new Point(length, 0), new Point(length - b, b), new Point(b, b));
            Transform place = side(side, w, h);
            parts.add(Picture.of(strip.transformed(place)).filled(PRINT));
            double first = -match.starts().get(side).inInches();
            for (double x = first - r; x < length + r; x += r) {
                bar(parts, strip, place, x, r / 6, SWAG);
                bar(parts, strip, place, x - r / 5, r / 30, CORNER);
                bar(parts, strip, place, x + r / 5, r / 30, CORNER);
                bar(parts, strip, place, x + r / 2, r / 12, CORNER);
            }
            parts.add(Picture.of(strip.transformed(place)).outlined(Pen.of(LINE, pen)));
        }
        return Picture.group(parts);
    }

    private static void bar(List<Picture> parts, Region strip, Transform place, double x, double wide, Colour colour) {
        Box all = strip.bounds();
        if (x + wide / 2 > all.left() && x - wide / 2 < all.right()) {
            for (Region seen : strip.intersection(Region.rectangle(new Box(x - wide / 2, all.top(), x + wide / 2, all.bottom())))) {
                parts.add(Picture.of(seen.transformed(place)).filled(colour));
            }
        }
    }

    /** From a side drafted as the top, its left end at the corner, to its place: 0 top, 1 right, 2 bottom, 3 left. */
    private static Transform side(int side, double w, double h) {
        return Transform.turn(Angle.QUARTER.times(side)).then(switch (side) {
            case 0 -> Transform.IDENTITY;
            case 1 -> Transform.move(w, 0);
            case 2 -> Transform.move(w, h);
            default -> Transform.move(0, h);
        });
    }
}
