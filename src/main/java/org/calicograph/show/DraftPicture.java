package org.calicograph.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.calicograph.drafting.Draft;
import org.calicograph.drafting.Figure;
import org.calicograph.drafting.Step;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;

/** A draft as it stands, and as a row of panels, one for each step. */
public final class DraftPicture {

    private static final Colour FAINT = Colour.hex("#a9b4ba");
    private static final Colour USED = Colour.hex("#2f6f8f");
    private static final Colour MADE = Colour.hex("#b5553c");
    private static final Colour INK = Colour.hex("#23303a");

    private DraftPicture() { }

    /** The whole draft, the last step's work picked out. */
    public static Picture of(Draft draft) {
        List<Step> steps = draft.steps();
        return sheet(draft, steps.isEmpty() ? new Step("", List.of(), List.of()) : steps.get(steps.size() - 1), places(draft));
    }

    private static Map<Point, SpotLabels.Place> places(Draft draft) {
        return SpotLabels.places(draft, letters(draft));
    }

    private static double letters(Draft draft) {
        return draft.sheet().width() / 36;
    }

    /** The draft after each of its steps, one picture beneath another, each with the step's words. */
    public static Exhibit steps(Draft draft) {
        Map<Point, SpotLabels.Place> places = places(draft);
        return Exhibit.several(IntStream.range(0, draft.steps().size())
                .mapToObj(i -> Exhibit.of(sheet(draft.after(i + 1), draft.steps().get(i), places), draft.steps().get(i).words())).toArray(Exhibit[]::new));
    }

    /**
     * One panel for each step: what is there, what the step used, what it made, and its words beneath.
     *
     * @param columns panels in a row, at least 1
     */
    public static Picture panels(Draft draft, int columns) {
        if (columns < 1) {
            throw new IllegalArgumentException("panels can't stand in rows of " + columns + "; use 1 or more");
        }
        List<Picture> panels = new ArrayList<>();
        Map<Point, SpotLabels.Place> places = places(draft);
        double width = draft.sheet().width();
        double size = width / 26;
        double gap = width / 10;
        List<List<String>> words = IntStream.range(0, draft.steps().size()).mapToObj(i -> wrapped((i + 1) + ". " + draft.steps().get(i).words(), 44)).toList();
        double tall = draft.sheet().height() + size * (1.3 + 1.3 * Math.max(4, words.stream().mapToInt(List::size).max().orElse(0)));
        for (int i = 0; i < draft.steps().size(); i++) {
            Step step = draft.steps().get(i);
            List<Picture> parts = new ArrayList<>();
            parts.add(sheet(draft.after(i + 1), step, places));
            double y = draft.sheet().bottom() + size * 1.6;
            for (String line : words.get(i)) {
                parts.add(new Picture.Lettering(line, new Point(0, y), size, Picture.Anchor.START, Picture.Weight.REGULAR, INK));
                y += size * 1.3;
            }
            panels.add(Picture.group(parts).labelled("step" + (i + 1), step.words())
                    .moved(i % columns * (width + gap), i / columns * (tall + gap / 2)));
        }
        return Picture.group(panels);
    }

    /**
     * The sheet after a step, counted from 0, what it used and what it made picked out.
     *
     * @throws IndexOutOfBoundsException if the draft has no such step
     */
    public static Picture step(Draft draft, int index) {
        return sheet(draft.after(index + 1), draft.steps().get(index), places(draft));
    }

    private static List<String> wrapped(String text, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() + word.length() + 1 > most && line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static Picture sheet(Draft draft, Step step, Map<Point, SpotLabels.Place> places) {
        double width = draft.sheet().width();
        double fine = width / 900;
        List<Picture> parts = new ArrayList<>();
        parts.add(Picture.of(Region.rectangle(draft.sheet())).filled(Colour.hex("#fbf8f1")).outlined(Pen.of(FAINT, fine)));
        List<Spot> spots = new ArrayList<>();
        for (Map.Entry<String, Figure> entry : draft.figures().entrySet()) {
            boolean made = step.made().contains(entry.getKey());
            boolean used = step.used().contains(entry.getKey());
            Colour colour = made ? MADE : used ? USED : FAINT;
            Figure figure = entry.getValue();
            if (figure instanceof Figure.Dot dot) {
                mark(entry.getKey(), dot.at(), made || used ? colour : INK, spots);
            } else if (figure instanceof Figure.Ink ink) {
                parts.add(stroke(List.of(ink.path()), made ? MADE : INK, 2.6 * fine));
            } else {
                List<Path> inside = clipped(figure, draft.sheet());
                if (!inside.isEmpty()) {
                    parts.add(stroke(inside, colour, (made || used ? 2 : 1.2) * fine));
                }
            }
        }
        spots.forEach(spot -> {
            SpotLabels.Place place = places.get(spot.at());
            parts.add(new Picture.Shape(List.of(Path.circle(spot.at(), width / 180)), Paint.of(spot.colour()), Pen.NONE));
            parts.add(new Picture.Lettering(spot.names(), place.base(), letters(draft), place.anchor(), Picture.Weight.REGULAR, spot.colour()));
        });
        return Picture.group(parts);
    }

    /** A marked place; points that coincide share their label. */
    private record Spot(String names, Point at, Colour colour) { }

    private static void mark(String name, Point at, Colour colour, List<Spot> spots) {
        for (int i = 0; i < spots.size(); i++) {
            Spot known = spots.get(i);
            if (known.at().near(at, 1e-6)) {
                spots.set(i, new Spot(known.names() + ", " + name, at, colour.equals(INK) ? known.colour() : colour));
                return;
            }
        }
        spots.add(new Spot(name, at, colour));
    }

    private static Picture stroke(List<Path> paths, Colour colour, double width) {
        return new Picture.Shape(paths, Paint.NONE, Pen.of(colour, width));
    }

    /** A figure's line within the sheet: what would leave the paper is cut off at its edges. */
    private static List<Path> clipped(Figure figure, Box sheet) {
        if (figure instanceof Figure.Rule rule) {
            List<Point> ends = new ArrayList<>(rule.path().meetings(Path.rectangle(sheet)));
            if (sheet.contains(rule.from())) {
                ends.add(0, rule.from());
            }
            if (sheet.contains(rule.to())) {
                ends.add(rule.to());
            }
            Point first = ends.isEmpty() ? rule.from() : ends.get(0);
            Point last = ends.isEmpty() ? rule.from() : ends.get(ends.size() - 1);
            return first.near(last, 1e-9) ? List.of() : List.of(new Path(List.of(new Line(first, last))));
        }
        Path curve = figure instanceof Figure.Round round ? round.path() : ((Figure.Bow) figure).path();
        return Trim.within(sheet, List.of(curve));
    }
}
