package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/** A layout's cuts one after another on a sheet: in each panel the cuts to make now are heavy, their sizes beside them. */
public final class CutStepsPicture {

    private static final Colour INK = Colour.hex("#2b2b2b");
    private static final Colour OFFCUT = Colour.hex("#eceae5");
    private static final Colour NOW = Colour.hex("#b3432b");
    private static final Pen EDGE = Pen.of(Colour.hex("#5b5852"), 0.06);
    /** The height of the type, as a share of the cloth's width. */
    private static final double TYPE = 1.0 / 42;
    /** The width of a letter, as a share of its height, and a little more. */
    private static final double LETTER = 0.58;
    /** The sheet's width, in widths of cloth. */
    private static final double SHEET = 2.4;

    private final Function<Length, String> text;
    private final Colour pale;
    private final double type;

    private CutStepsPicture(Colour cloth, double type, Function<Length, String> text) {
        this.text = text;
        this.type = type;
        this.pale = cloth.mixed(Colour.WHITE, 0.4);
    }

    private record Cell(Picture picture, double width, double height) { }

    /** @param text how lengths are written */
    public static Picture of(Layout layout, Colour cloth, Function<Length, String> text) {
        double width = layout.width().inInches();
        double type = Math.max(0.7, TYPE * width);
        CutStepsPicture sheet = new CutStepsPicture(cloth, type, text);
        List<Picture> all = new ArrayList<>();
        double x = 0;
        double y = 0;
        double tallest = 0;
        int number = 1;
        for (CutSteps.Step step : CutSteps.of(layout)) {
            Cell cell = sheet.cell(step, number++);
            if (x > 0 && x + cell.width() > SHEET * width) {
                x = 0;
                y += tallest + 2 * type;
                tallest = 0;
            }
            all.add(new Picture.Group(List.of(cell.picture()), Transform.move(x, y), java.util.Optional.empty()));
            x += cell.width() + 2.5 * type;
            tallest = Math.max(tallest, cell.height());
        }
        return LayoutPicture.margined(all, type);
    }

    /** A step with its words above and its sizes along the top or at the right. */
    private Cell cell(CutSteps.Step step, int number) {
        double across = step.panel().across().inInches();
        double along = step.panel().along().inInches();
        List<Picture> parts = new ArrayList<>();
        List<String> lines = wrapped(number + ". " + step.words(text), Math.max(across, 26 * type * LETTER));
        double y = 0;
        double widest = across;
        for (String line : lines) {
            y += type;
            parts.add(lettering(line, 0, y, Picture.Anchor.START));
            widest = Math.max(widest, line.length() * type * LETTER);
            y += 0.3 * type;
        }
        double top = y + 0.4 * type + (step.isAlong() ? type * 1.2 * levels(step) : 0);
        panel(step, top, parts);
        double right = step.isAlong() ? 0 : rowSizes(step, across, top, parts);
        if (step.isAlong()) {
            columnSizes(step, top, parts);
        }
        return new Cell(Picture.group(parts), Math.max(widest, across + right), top + along);
    }

    private void panel(CutSteps.Step step, double top, List<Picture> into) {
        double across = step.panel().across().inInches();
        double along = step.panel().along().inInches();
        double at = 0;
        List<Picture> cuts = new ArrayList<>();
        for (Panel p : step.parts()) {
            double size = step.size(p).inInches();
            Box box = step.isAlong() ? new Box(at, top, at + size, top + along) : new Box(0, top + at, across, top + at + size);
            Picture.Shape shape = new Picture.Shape(List.of(Path.rectangle(box)), Paint.NONE, EDGE);
            into.add(shape.filled(p instanceof Panel.Offcut ? OFFCUT : p instanceof Panel.Taken ? pale : Colour.WHITE));
            if (p instanceof Panel.Taken t) {
                String name = t.blank().name();
                double letter = Math.min(type, Math.min(box.height() * 0.6, box.width() * 0.8 / (0.75 * name.length())));
                if (letter > 0.35) {
                    into.add(new Picture.Lettering(name, box.centre().plus(0, letter * 0.35), letter, Picture.Anchor.MIDDLE,
                            Picture.Weight.REGULAR, INK));
                }
            }
            if (at > 0) {
                cuts.add(Picture.of(step.isAlong() ? Path.through(new Point(at, top - 0.25 * type), new Point(at, top + along + 0.25 * type))
                        : Path.through(new Point(-0.25 * type, top + at), new Point(across + 0.25 * type, top + at))).outlined(Pen.of(NOW, 0.16 * type)));
            }
            at += size;
        }
        into.addAll(cuts);
    }

    private String label(CutSteps.Run run) {
        return run.spare() ? "left over" : (run.count() == 1 ? "" : run.count() + " x ") + text.apply(run.size());
    }

    /** Sizes along the top, on as many levels as keep them apart. */
    private void columnSizes(CutSteps.Step step, double top, List<Picture> into) {
        int[] level = levelOf(step);
        double at = 0;
        int i = 0;
        for (CutSteps.Run run : step.runs()) {
            double size = run.size().inInches() * run.count();
            into.add(lettering(label(run), at + size / 2, top - type * (0.5 + 1.2 * level[i++]), Picture.Anchor.MIDDLE));
            at += size;
        }
    }

    private int levels(CutSteps.Step step) {
        return java.util.Arrays.stream(levelOf(step)).max().orElse(0) + 1;
    }

    private int[] levelOf(CutSteps.Step step) {
        List<CutSteps.Run> runs = step.runs();
        int[] level = new int[runs.size()];
        List<Double> ends = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < level.length; i++) {
            double size = runs.get(i).size().inInches() * runs.get(i).count();
            double half = label(runs.get(i)).length() * type * LETTER / 2;
            while (level[i] < ends.size() && ends.get(level[i]) > at + size / 2 - half) {
                level[i]++;
            }
            if (level[i] == ends.size()) {
                ends.add(0.0);
            }
            ends.set(level[i], at + size / 2 + half + type);
            at += size;
        }
        return level;
    }

    /** Sizes at the right; gives the room they take. */
    private double rowSizes(CutSteps.Step step, double across, double top, List<Picture> into) {
        double at = top;
        double free = top;
        double room = 0;
        for (CutSteps.Run run : step.runs()) {
            double size = run.size().inInches() * run.count();
            double middle = Math.max(at + size / 2, free + 0.6 * type);
            into.add(lettering(label(run), across + 0.7 * type, middle + 0.35 * type, Picture.Anchor.START));
            room = Math.max(room, (label(run).length() * LETTER + 0.7) * type);
            free = middle + 0.6 * type;
            at += size;
        }
        return room;
    }

    private Picture lettering(String what, double x, double y, Picture.Anchor anchor) {
        return new Picture.Lettering(what, new Point(x, y), type, anchor, Picture.Weight.REGULAR, INK);
    }

    /** Words on lines no longer than a width. */
    private List<String> wrapped(String words, double width) {
        int most = (int) Math.max(20, width / (type * LETTER));
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
