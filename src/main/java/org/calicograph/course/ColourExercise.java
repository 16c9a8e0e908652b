package org.calicograph.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Wheel;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Angle;

/**
 * The colour evening: every student has a hue of her own and brings it true, as a tint, as a shade and as a tone, enough of
 * each for everybody else; then all swap until each has the whole wheel.
 *
 * @param wheel    whose hues are shared out
 * @param students in the order of the wheel; no two of one name
 */
public record ColourExercise(Wheel wheel, List<String> students, Paper paper) implements Drawable {

    /** The four swatches that are brought, in the order of the sheet. */
    public enum Kind {
        TRUE_COLOUR, TINT, SHADE, TONE;

        /** As one says it. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** What to aim at for a hue: halfway to white, two fifths to black, halfway to grey. */
        public Colour of(Colour hue) {
            return switch (this) {
                case TRUE_COLOUR -> hue;
                case TINT -> hue.tint(0.5);
                case SHADE -> hue.shade(0.4);
                case TONE -> hue.tone(0.5);
            };
        }
    }

    /** Two students who swap, or one who looks on where the second name is empty. */
    public record Pair(String one, String other) { }

    /** @throws IllegalArgumentException if there are fewer than 2 students, or one is named twice */
    public ColourExercise {
        students = List.copyOf(students);
        Set<String> seen = new HashSet<>();
        for (String s : students) {
            if (s.isBlank() || !seen.add(s)) {
                throw new IllegalArgumentException("the colour evening names '" + s + "' twice or not at all; tell the students apart");
            }
        }
        if (students.size() < 2) {
            throw new IllegalArgumentException("the colour evening is for " + students.size() + "; name 2 students or more");
        }
    }

    /** On the painter's wheel, sheets on A4. */
    public static ColourExercise of(String... students) {
        return new ColourExercise(Wheel.pigment(), List.of(students), Paper.A4);
    }

    /** The same on another wheel. */
    public ColourExercise on(Wheel other) {
        return new ColourExercise(other, students, paper);
    }

    /** The same on other paper. */
    public ColourExercise on(Paper other) {
        return new ColourExercise(wheel, students, other);
    }

    /** A student's hue: the steps of the wheel shared out evenly, and places between the steps where there are more students than steps. */
    public Wheel.Hue hueOf(String student) {
        int i = students.indexOf(student);
        if (i < 0) {
            throw new IllegalArgumentException("'" + student + "' is none of the students " + students + "; write the name as it is there");
        }
        int steps = wheel.hues().size();
        if (students.size() <= steps) {
            return wheel.hues().get(i * steps / students.size());
        }
        double at = (double) i * steps / students.size();
        int before = (int) at;
        if (at == before) {
            return wheel.hues().get(before);
        }
        String name = wheel.hues().get(before).name() + " to " + wheel.hues().get((before + 1) % steps).name();
        return new Wheel.Hue(name, wheel.at(Angle.degrees(360 * at / steps)));
    }

    /** Who brings which hue and how many pieces of each of the four, one kept for oneself. */
    public Table table() {
        Table table = Table.of("Who brings what", "student", "hue", "of each", "pieces in all");
        for (String s : students) {
            table = table.row(s, hueOf(s).name(), students.size(), 4 * students.size());
        }
        return table;
    }

    /**
     * Who swaps with whom, round by round: every two students meet once, and in every round all swap, one looking on where
     * the class is odd (the circle method).
     */
    public List<List<Pair>> rounds() {
        List<String> seats = new ArrayList<>(students);
        if (seats.size() % 2 == 1) {
            seats.add("");
        }
        int n = seats.size();
        List<List<Pair>> rounds = new ArrayList<>();
        for (int r = 0; r < n - 1; r++) {
            List<Pair> round = new ArrayList<>();
            for (int k = 0; k < n / 2; k++) {
                String a = seats.get(k);
                String b = seats.get(n - 1 - k);
                round.add(a.isEmpty() ? new Pair(b, "") : new Pair(a, b));
            }
            rounds.add(List.copyOf(round));
            seats.add(1, seats.remove(n - 1));
        }
        return List.copyOf(rounds);
    }

    /** The swaps as a table, one row a round. */
    public Table swaps() {
        Table table = Table.of("Swaps", "round", "who with whom");
        for (int r = 0; r < rounds().size(); r++) {
            table = table.row(r + 1, String.join("; ", rounds().get(r).stream().map(p -> p.other().isEmpty() ? p.one() + " looks on" : p.one() + " with " + p.other()).toList()));
        }
        return table;
    }

    /** A sheet for every student, to paste the four swatches on and to photograph; last the swaps. */
    public Sheaf pages() {
        List<Picture> pages = new ArrayList<>();
        for (String student : students) {
            Wheel.Hue hue = hueOf(student);
            PageFlow flow = new PageFlow(paper, "The colour evening, " + student);
            flow.chapter(student + ": " + hue.name());
            flow.paragraph("Find or mix four cloths of your hue. The true colour is as clear as it comes. A tint has white in it and is lighter; a shade has black in it and is"
                    + " darker; a tone has grey in it and is duller, neither very light nor very dark. Paste one of each in its box. The small squares show what to aim at as far as"
                    + " this printer can.");
            flow.picture(ColourSheet.of(hue.colour()), 4.2, "Leave the box for white empty: the light of the photograph is judged by it.");
            flow.paragraph("Bring " + students.size() + " pieces of each, one for everybody else and one to keep.");
            flow.paragraph("To have the sheet judged, lay it flat by a window out of the sun, photograph it straight from above, and cut the photograph to the outer frame.");
            flow.caution("Mind scissors and cutters. If you dye, wear gloves, keep dye powder out of the air, and go by the maker's instructions and local rules.");
            pages.addAll(flow.pages());
        }
        PageFlow last = new PageFlow(paper, "The colour evening, swaps");
        last.chapter("Who swaps with whom");
        last.table(table());
        last.space(0.2);
        last.table(swaps());
        pages.addAll(last.pages());
        return new Sheaf("The colour evening", paper, pages);
    }

    /**
     * A student's sheet judged from its photograph, cut to the outer frame of the four boxes.
     *
     * @throws IllegalArgumentException if the box for white is too dark to judge by
     */
    public JudgedSwatches judged(String student, Photo photo) {
        return JudgedSwatches.of(hueOf(student), photo);
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(table()), Exhibit.of(swaps()), pages().show());
    }
}
