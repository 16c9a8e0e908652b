package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/** How a layout looks: the cloth at full size, blanks lettered, the cuts across it numbered. Strips that follow one another and are alike are drawn once. */
public final class LayoutPicture {

    private static final Colour INK = Colour.hex("#2b2b2b");
    private static final Colour OFFCUT = Colour.hex("#eceae5");
    private static final Pen CUT = Pen.of(Colour.hex("#5b5852"), 0.06);
    private static final Pen PART = Pen.of(Colour.hex("#5b5852"), 0.04);
    /** The height of the type, as a share of the longer side. */
    private static final double TYPE = 1.0 / 48;

    private LayoutPicture() { }

    /** @param text how lengths are written */
    public static Picture of(Layout layout, Colour cloth, Function<Length, String> text) {
        return of(layout, cloth, text, blank -> List.of());
    }

    /** Strips that are cut up alike. */
    private record Run(Panel row, int count) { }

    private static List<Run> runs(Panel panel) {
        List<Run> runs = new ArrayList<>();
        for (Panel row : panel instanceof Panel.Rows r ? r.parts() : List.of(panel)) {
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.row().equals(row)) {
                runs.set(runs.size() - 1, new Run(row, last.count() + 1));
            } else {
                runs.add(new Run(row, 1));
            }
        }
        return runs;
    }

    /** @param within the cuts that part a blank into pieces, in its own coordinates in inches, not turned; with the blank they are turned, never mirrored */
    public static Picture of(Layout layout, Colour cloth, Function<Length, String> text, Function<Blank, List<Path>> within) {
        List<Run> runs = runs(layout.panel());
        return once(new Layout(layout.width(), Panel.stacked(runs.stream().map(Run::row).toList()), layout.bound()), runs, cloth, text, within);
    }

    private static Picture once(Layout layout, List<Run> runs, Colour cloth, Function<Length, String> text, Function<Blank, List<Path>> within) {
        double width = layout.width().inInches();
        double length = layout.length().inInches();
        double type = Math.max(0.8, TYPE * Math.max(width, length));
        List<Picture> parts = new ArrayList<>();
        parts.add(box(new Box(0, 0, width, length)).filled(OFFCUT).outlined(CUT));
        Colour pale = cloth.mixed(Colour.WHITE, 0.25);
        Pen pen = inkOn(pale).equals(INK) ? PART : Pen.of(Colour.WHITE, PART.width());
        Map<Blank, List<Path>> drawn = new HashMap<>();
        for (Layout.Spot s : layout.spots()) {
            Box b = new Box(s.x().inInches(), s.y().inInches(), s.x().plus(s.taken().across()).inInches(),
                    s.y().plus(s.taken().along()).inInches());
            parts.add(box(b).filled(pale).outlined(CUT));
            List<Path> cuts = drawn.computeIfAbsent(s.taken().blank(), within);
            if (!cuts.isEmpty()) {
                Transform place = (s.taken().turned() ? Transform.turn(Angle.degrees(90)).then(Transform.move(b.width(), 0)) : Transform.IDENTITY).then(Transform.move(b.left(), b.top()));
                parts.add(new Picture.Shape(cuts.stream().map(cut -> cut.transformed(place)).toList(), Paint.NONE, pen));
            }
            letter(s.taken().blank().name(), b, pale, type, parts);
        }
        rows(runs, width, type, text, parts);
        parts.add(new Picture.Lettering(text.apply(layout.width()) + " usable width", new Point(0, -0.5 * type), type, Picture.Anchor.START,
                Picture.Weight.REGULAR, INK));
        return margined(parts, type);
    }

    /** With bare paper all round, so that no words touch the picture's edge. */
    static Picture margined(List<Picture> parts, double type) {
        Picture whole = Picture.group(parts);
        Picture.Shape room = box(whole.bounds().grownBy(0.6 * type)).outlined(Pen.NONE);
        return Picture.group(room, whole);
    }

    private static Picture.Shape box(Box b) {
        return new Picture.Shape(List.of(Path.rectangle(b)), Paint.NONE, CUT);
    }

    private static Colour inkOn(Colour ground) {
        return ground.red() * 0.3 + ground.green() * 0.6 + ground.blue() * 0.1 > 0.5 ? INK : Colour.WHITE;
    }

    private static void letter(String name, Box b, Colour ground, double type, List<Picture> into) {
        double size = Math.min(type * 1.2, Math.min(b.height() * 0.6, b.width() * 0.8 / Math.max(1, name.length() * 0.75)));
        if (size >= 0.35) {
            into.add(new Picture.Lettering(name, b.centre().plus(0, size * 0.35), size, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, inkOn(ground)));
        }
    }

    /** The widths of the strips that are cut across first, beside the cloth. */
    private static void rows(List<Run> runs, double width, double type, Function<Length, String> text, List<Picture> into) {
        double y = 0;
        double free = 0;
        int number = 1;
        for (Run run : runs) {
            double h = run.row().along().inInches();
            double middle = Math.max(y + h / 2, free + type * 0.6);
            String what = (run.count() == 1 ? number + ": " : number + " to " + (number + run.count() - 1) + ": " + run.count() + " strips of ") + text.apply(run.row().along());
            into.add(new Picture.Lettering(what, new Point(width + 0.7 * type, middle + type * 0.35), type, Picture.Anchor.START,
                    Picture.Weight.REGULAR, INK));
            free = middle + type * 0.6;
            y += h;
            number += run.count();
        }
    }
}
