package org.calicograph.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Cloth;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.HueReport;
import org.calicograph.fabric.Palette;
import org.calicograph.colour.Photo;
import org.calicograph.fabric.Ramp;
import org.calicograph.fabric.Stash;
import org.calicograph.colour.Swatch;
import org.calicograph.colour.Wheel;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/** Colours and cloth as pictures. */
final class Swatches {

    private static final Colour INK = Colour.hex("#2b2b2b");
    private static final Pen EDGE = Pen.of(Colour.hex("#8a857c"), 0.008);
    private static final double TYPE = 0.13;
    /** How wide a photograph is shown. */
    private static final Length PHOTO = Length.inches(5);

    private Swatches() { }

    /** The look of a value of colour or cloth; empty for any other. */
    static Optional<Exhibit> of(Object value) {
        if (value instanceof Palette palette) {
            return Optional.of(Exhibit.of(palette(palette), palette.name()));
        }
        if (value instanceof Swatch swatch) {
            return Optional.of(Exhibit.of(chip(0, 0, 2, 1.25, swatch.colour()), swatch.name() + ", " + swatch.colour().hex()));
        }
        if (value instanceof Wheel wheel) {
            return Optional.of(Exhibit.of(wheel(wheel), wheel.name() + ": tints outside, shades inside"));
        }
        if (value instanceof Ramp ramp) {
            return Optional.of(Exhibit.of(ramp(ramp), "even steps of value (L*)"));
        }
        if (value instanceof HueReport report) {
            return Optional.of(Exhibit.of(report(report), "for each hue of the " + report.wheel().name()));
        }
        if (value instanceof Stash stash) {
            return Optional.of(Exhibit.several(Exhibit.of(stash(stash), stash.toString()), Exhibit.of(table(stash))));
        }
        if (value instanceof Photo photo) {
            return Optional.of(Exhibit.of(sheet(Paint.of(new Cloth(photo, PHOTO)), PHOTO.inInches(),
                    PHOTO.inInches() * photo.height() / photo.width()), photo.toString()));
        }
        if (value instanceof Cloth cloth) {
            return Optional.of(Exhibit.of(sheet(Paint.of(cloth), 2 * cloth.repeat().inInches(), 2 * cloth.height().inInches()),
                    "repeats every " + cloth.repeat()));
        }
        if (value instanceof Fabric fabric) {
            return Optional.of(Exhibit.of(cloth(fabric), words(fabric)));
        }
        return Optional.empty();
    }

    /** Cloth at true scale: two repeats where there is a picture, and at least 2 by 1 1/4 in. */
    private static Picture cloth(Fabric fabric) {
        double width = fabric.print().picture().map(c -> Math.max(2, 2 * c.repeat().inInches())).orElse(2.0);
        double height = fabric.print().picture().map(c -> Math.max(1.25, 2 * c.height().inInches())).orElse(1.25);
        return sheet(Paint.of(fabric), width, height);
    }

    private static Picture sheet(Paint paint, double width, double height) {
        return Picture.of(Path.rectangle(new Box(0, 0, width, height))).filled(paint).outlined(EDGE);
    }

    static Picture chip(double x, double y, double width, double height, Colour colour) {
        return Picture.of(Path.rectangle(new Box(x, y, x + width, y + height))).filled(colour).outlined(EDGE);
    }

    private static Picture text(String words, double x, double y, double size, Picture.Anchor anchor) {
        return new Picture.Lettering(words, new Point(x, y), size, anchor, Picture.Weight.REGULAR, INK);
    }

    private static Picture line(String words, double x, double y) {
        return text(words, x, y, TYPE, Picture.Anchor.START);
    }

    /** A strip in proportion, and beneath it each colour with its name, hex, share and value. */
    static Picture palette(Palette palette) {
        List<Picture> parts = new ArrayList<>();
        double width = 8.1;
        double x = 0;
        for (Swatch s : palette.swatches()) {
            parts.add(chip(x, 0, s.share() * width, 1, s.colour()).labelled(s.name(), s.name() + ", " + s.colour().hex()));
            x += s.share() * width;
        }
        int columns = 3;
        for (int i = 0; i < palette.swatches().size(); i++) {
            Swatch s = palette.swatches().get(i);
            double left = i % columns * width / columns;
            double top = 1.2 + i / columns * 0.6;
            parts.add(chip(left, top, 0.45, 0.45, s.colour()));
            parts.add(line(s.name(), left + 0.55, top + 0.18));
            parts.add(line(String.format(Locale.ROOT, "%s  %.1f %%  value %.0f", s.colour().hex(), 100 * s.share(), s.colour().value()),
                    left + 0.55, top + 0.4));
        }
        return Picture.group(parts);
    }

    /** Three rings: tints outside, true colours, shades inside; yellow at the top. */
    static Picture wheel(Wheel wheel) {
        List<Picture> parts = new ArrayList<>();
        int n = wheel.hues().size();
        double step = 360.0 / n;
        for (int i = 0; i < n; i++) {
            Wheel.Hue hue = wheel.hues().get(i);
            double middle = -90 + i * step;
            parts.add(wedge(middle, step, 2.1, 2.6, hue.colour().tint(0.5)));
            parts.add(wedge(middle, step, 1.2, 2.1, hue.colour()).labelled(hue.name(), hue.name() + ", " + hue.colour().hex()));
            parts.add(wedge(middle, step, 0.7, 1.2, hue.colour().shade(0.4)));
            Point at = Point.polar(2.76, Angle.degrees(middle));
            Picture.Anchor anchor = Math.abs(at.x()) < 0.1 ? Picture.Anchor.MIDDLE : at.x() > 0 ? Picture.Anchor.START : Picture.Anchor.END;
            parts.add(text(hue.name(), at.x(), at.y() + 0.05, 0.15, anchor));
        }
        return Picture.group(parts);
    }

    private static Picture wedge(double middle, double sweep, double inner, double outer, Colour colour) {
        Angle first = Angle.degrees(middle - sweep / 2);
        Angle last = Angle.degrees(middle + sweep / 2);
        Path path = Path.from(Point.polar(inner, first)).lineTo(Point.polar(outer, first))
                .arcAbout(Point.ORIGIN, Angle.degrees(sweep)).lineTo(Point.polar(inner, last))
                .arcAbout(Point.ORIGIN, Angle.degrees(-sweep)).close();
        return Picture.of(path).filled(colour).outlined(Pen.of(Colour.WHITE, 0.02));
    }

    static Picture ramp(Ramp ramp) {
        List<Picture> parts = new ArrayList<>();
        for (int i = 0; i < ramp.colours().size(); i++) {
            Colour c = ramp.colours().get(i);
            parts.add(chip(i * 0.8, 0, 0.8, 0.8, c));
            parts.add(chip(i * 0.8, 0.8, 0.8, 0.3, c.grey()));
            parts.add(text(String.format(Locale.ROOT, "%.0f", c.value()), i * 0.8 + 0.4, 1.3, TYPE, Picture.Anchor.MIDDLE));
        }
        return Picture.group(parts);
    }

    static Picture report(HueReport report) {
        List<Picture> parts = new ArrayList<>();
        String[] heads = {"true colour", "tint", "tone", "shade", "opposite"};
        for (int c = 0; c < heads.length; c++) {
            parts.add(line(heads[c], 1.3 + c * 1.15, 0));
        }
        for (int r = 0; r < report.rows().size(); r++) {
            HueReport.Row row = report.rows().get(r);
            double top = 0.1 + r * 0.48;
            parts.add(line(row.hue().name(), 0, top + 0.26));
            List<Colour> colours = List.of(row.hue().colour(), row.tint(), row.tone(), row.shade(), row.opposite().colour());
            for (int c = 0; c < colours.size(); c++) {
                parts.add(chip(1.3 + c * 1.15, top, 1, 0.4, colours.get(c)));
            }
            parts.add(line(row.opposite().name(), 1.3 + 5 * 1.15, top + 0.26));
        }
        return Picture.group(parts);
    }

    static Picture stash(Stash stash) {
        List<Picture> parts = new ArrayList<>();
        List<Fabric> fabrics = stash.fabrics();
        for (int i = 0; i < fabrics.size(); i++) {
            Fabric f = fabrics.get(i);
            double x = i % 4 * 1.85;
            double y = i / 4 * 1.65;
            parts.add(Picture.of(Path.rectangle(new Box(x, y, x + 1.65, y + 1))).filled(Paint.of(f)).outlined(EDGE).labelled(f.name(), words(f)));
            parts.add(line(f.name(), x, y + 1.19));
            parts.add(line(f.inHand().words(), x, y + 1.37));
        }
        return Picture.group(parts);
    }

    static Table table(Stash stash) {
        Table table = Table.of("Stash", "fabric", "colour", "value", "print", "usable width", "in hand", "price");
        for (Fabric f : stash.fabrics()) {
            table = table.row(f.name(), f.colour().hex(), Math.round(f.colour().value()),
                    f.print().scale().name().toLowerCase(Locale.ROOT), f.usableWidth(), f.inHand().words(),
                    f.price().map(Object::toString).orElse(""));
        }
        return table;
    }

    static String words(Fabric f) {
        return String.format(Locale.ROOT, "%s, %s, value %.0f; %s wide, %s%s", f.name(), f.colour().hex(), f.colour().value(),
                f.usableWidth(), f.inHand().words(), f.price().map(p -> ", " + p).orElse(""));
    }
}
