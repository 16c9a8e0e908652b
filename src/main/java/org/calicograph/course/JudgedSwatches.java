package org.calicograph.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Oklch;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Wheel;
import org.calicograph.colour.Xyz;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/**
 * Four swatches as they would be seen by daylight (D65), from a photograph whose white paper tells its light, and whether each is what its
 * box says. White paper is taken to throw back 88 % of the light (from memory: office paper throws back 85 to 90 %).
 *
 * @param hue      the hue that was to be brought
 * @param swatches in the order of the sheet
 */
public record JudgedSwatches(Wheel.Hue hue, List<Swatch> swatches) implements Drawable {

    private static final double PAPER = 0.88;
    /** Below this much light no white can be told. */
    private static final double TOO_DARK = 0.08;
    /** How far a hue may lie from the one that was asked for: half the way to the next but one of twelve. */
    private static final double HUE_OFF = 35;
    /** Less than this in value is no difference at arm's length. */
    private static final double SEEN = 7;
    private static final double GREYISH = 0.025;

    /**
     * One swatch.
     *
     * @param seen       by daylight
     * @param aim        what was to be aimed at
     * @param difference between the two, by CIEDE2000
     * @param fault      what is wrong and what helps; empty if the swatch is what its box says
     */
    public record Swatch(ColourExercise.Kind kind, Colour seen, Colour aim, double difference, String fault) { }

    public JudgedSwatches {
        swatches = List.copyOf(swatches);
    }

    static JudgedSwatches of(Wheel.Hue hue, Photo photo) {
        Xyz white = mean(photo, ColourSheet.white()).xyz();
        if (white.y() < TOO_DARK) {
            throw new IllegalArgumentException("the box for white is nearly black in the photograph; cut it to the outer frame, the long side across, or photograph it in more light");
        }
        Xyz daylight = Colour.WHITE.xyz();
        Xyz paper = new Xyz(daylight.x() * PAPER, daylight.y() * PAPER, daylight.z() * PAPER);
        Map<ColourExercise.Kind, Colour> seen = new EnumMap<>(ColourExercise.Kind.class);
        for (ColourExercise.Kind kind : ColourExercise.Kind.values()) {
            seen.put(kind, mean(photo, ColourSheet.box(kind)).xyz().adapted(white, paper).linear().clipped());
        }
        List<Swatch> all = new ArrayList<>();
        seen.forEach((kind, colour) -> {
            Colour aim = kind.of(hue.colour());
            all.add(new Swatch(kind, colour, aim, colour.difference(aim), fault(kind, seen, hue)));
        });
        return new JudgedSwatches(hue, all);
    }

    /** The mean light of the middle of a box. */
    private static Colour mean(Photo photo, Box box) {
        int left = (int) Math.floor((box.left() + 0.25 * box.width()) / ColourSheet.WIDE * photo.width());
        int top = (int) Math.floor((box.top() + 0.25 * box.height()) / ColourSheet.HIGH * photo.height());
        int wide = Math.max(1, (int) (0.5 * box.width() / ColourSheet.WIDE * photo.width()));
        int high = Math.max(1, (int) (0.5 * box.height() / ColourSheet.HIGH * photo.height()));
        return Photo.drawn(wide, high, (x, y) -> photo.pixel(left + x, top + y)).meanColour();
    }

    private static String fault(ColourExercise.Kind kind, Map<ColourExercise.Kind, Colour> seen, Wheel.Hue hue) {
        Colour own = seen.get(kind);
        Colour clear = seen.get(ColourExercise.Kind.TRUE_COLOUR);
        Oklch lch = own.oklch();
        double off = Math.abs((lch.hue() - hue.colour().oklch().hue() + 540) % 360 - 180);
        if (lch.chroma() < GREYISH) {
            return "it is a grey; its hue can't be seen";
        }
        if (off > HUE_OFF) {
            return String.format(Locale.ROOT, "its hue is not %s; look beside a swatch that is", hue.name());
        }
        return switch (kind) {
            case TRUE_COLOUR -> seen.values().stream().anyMatch(c -> c.oklch().chroma() > lch.chroma() + 0.02) ? "another of the four is clearer; look for a clearer one, or swap the two" : "";
            // A yellow is nearly as light as can be: its tint is paler and no darker.
            case TINT -> own.value() < clear.value() + SEEN && (own.value() < clear.value() - 2 || clear.value() < 85 || lch.chroma() > 0.8 * clear.oklch().chroma()) ? "it is hardly lighter than the true colour; more white" : "";
            case SHADE -> own.value() > clear.value() - SEEN ? "it is hardly darker than the true colour; more black" : "";
            case TONE -> lch.chroma() > 0.8 * clear.oklch().chroma() ? "it is hardly duller than the true colour; more grey"
                    : own.value() > 80 || own.value() < 20 ? "it is as " + (own.value() > 80 ? "light as a tint" : "dark as a shade") + "; a grey of middle value" : "";
        };
    }

    /** Whether all four are what their boxes say. */
    public boolean isRight() {
        return swatches.stream().allMatch(s -> s.fault().isEmpty());
    }

    @Override
    public Exhibit show() {
        List<Picture> parts = new ArrayList<>();
        Table table = Table.of("Judged by daylight", "swatch", "value", "from the aim (CIEDE2000)", "what to do");
        for (int i = 0; i < swatches.size(); i++) {
            Swatch s = swatches.get(i);
            parts.add(chip(i * 1.4, 0, 1.2, 1, s.seen()));
            parts.add(chip(i * 1.4, 1.05, 1.2, 0.4, s.aim()));
            parts.add(new Picture.Lettering(s.kind().words(), new Point(i * 1.4, 1.65), 0.15, Picture.Anchor.START, Picture.Weight.REGULAR, Colour.hex("#2b2b2b")));
            table = table.row(s.kind().words(), Math.round(s.seen().value()), String.format(Locale.ROOT, "%.0f", s.difference()), s.fault().isEmpty() ? "right" : s.fault());
        }
        return Exhibit.several(Exhibit.of(Picture.group(parts), "Above as brought, below what to aim at: " + hue.name()), Exhibit.of(table));
    }

    private static Picture chip(double left, double top, double wide, double high, Colour colour) {
        return new Picture.Shape(List.of(Path.rectangle(new Box(left, top, left + wide, top + high))), Paint.of(colour), Pen.of(Colour.hex("#8a857c"), 0.006));
    }
}
