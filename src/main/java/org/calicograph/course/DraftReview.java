package org.calicograph.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.calicograph.drafting.Draft;
import org.calicograph.drafting.Figure;
import org.calicograph.drafting.Step;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.show.DraftPicture;

/**
 * A student's draft held against the lesson's, figure by figure of the same name. It tells the step in which a mistake was
 * made from those that only inherit it, how far off the mistake is, and whether it matters once it is sewn. A draft that
 * lies elsewhere on its sheet, but is otherwise the same, is right.
 *
 * @param differences what differs, in the student's order
 * @param missing     names of the lesson's figures that the student has not drawn
 * @param extra       names of the student's figures that the lesson does not have
 * @param moved       how far the whole draft lies from the lesson's place
 */
public record DraftReview(Draft lesson, Draft student, List<Difference> differences, List<String> missing, List<String> extra, Point moved) implements Drawable {

    /** Nearer than this a pencil can't tell: a sharp line is about 1/100 in wide (common practice). */
    public static final Length PENCIL = Length.inches(1, 100);
    /** Up to here cloth can be eased in the sewing (common practice). */
    public static final Length EASED = Length.inches(1, 32);

    /**
     * Something drawn elsewhere than in the lesson.
     *
     * @param step  the student's step, counted from 1
     * @param words what the student's step says
     * @param figure its name
     * @param off   how far off, at most, in inches on the sheet
     * @param from  the names of wrong figures that it was found from; none if the mistake was made here
     * @param what  in words
     */
    public record Difference(int step, String words, String figure, double off, List<String> from, String what) {

        /** True if the mistake was made in this very step. */
        public boolean isMadeHere() {
            return from.isEmpty();
        }

        /** True if it would show or pull in the sewing. */
        public boolean matters() {
            return off > EASED.inInches();
        }
    }

    /** Holds a student's draft against the lesson's. */
    public static DraftReview of(Draft lesson, Draft student) {
        Point moved = moved(lesson, student);
        Map<String, Difference> wrong = new LinkedHashMap<>();
        for (int i = 0; i < student.steps().size(); i++) {
            Step step = student.steps().get(i);
            for (String name : step.made()) {
                Figure right = lesson.figures().get(name);
                if (right != null) {
                    Optional<Off> off = off(right, student.figures().get(name), moved, lesson);
                    if (off.isPresent()) {
                        List<String> from = step.used().stream().filter(wrong::containsKey).toList();
                        wrong.put(name, new Difference(i + 1, step.words(), name, off.get().inches(), from, off.get().words()));
                    }
                }
            }
        }
        Set<String> missing = new java.util.LinkedHashSet<>(lesson.figures().keySet());
        missing.removeAll(student.figures().keySet());
        Set<String> extra = new java.util.LinkedHashSet<>(student.figures().keySet());
        extra.removeAll(lesson.figures().keySet());
        return new DraftReview(lesson, student, List.copyOf(wrong.values()), List.copyOf(missing), List.copyOf(extra), moved);
    }

    /** True if nothing differs and nothing is missing. */
    public boolean isRight() {
        return differences.isEmpty() && missing.isEmpty();
    }

    /** Where the student began on the sheet, against the lesson: the first point's place, if more points agree with it than with the lesson's own. */
    private static Point moved(Draft lesson, Draft student) {
        List<Point> steps = new ArrayList<>();
        lesson.figures().forEach((name, figure) -> {
            if (figure instanceof Figure.Dot right && student.figures().get(name) instanceof Figure.Dot given) {
                steps.add(given.at().minus(right.at()));
            }
        });
        return !steps.isEmpty() && agreeing(steps, steps.get(0)) > agreeing(steps, Point.ORIGIN) ? steps.get(0) : Point.ORIGIN;
    }

    private static long agreeing(List<Point> steps, Point with) {
        return steps.stream().filter(s -> s.distance(with) < PENCIL.inInches()).count();
    }

    private record Off(double inches, String words) { }

    private static Optional<Off> off(Figure right, Figure given, Point moved, Draft lesson) {
        if (right.getClass() != given.getClass()) {
            return Optional.of(new Off(Double.POSITIVE_INFINITY, "is " + kind(given) + ", where the lesson has " + kind(right)));
        }
        if (right instanceof Figure.Dot a && given instanceof Figure.Dot b) {
            Point step = b.at().minus(moved).minus(a.at());
            return off(step.norm(), "lies " + direction(step) + " of where it should");
        }
        if (right instanceof Figure.Rule a && given instanceof Figure.Rule b) {
            return line(a, b, moved, lesson);
        }
        if (right instanceof Figure.Round a && given instanceof Figure.Round b) {
            Point step = b.centre().minus(moved).minus(a.centre());
            double radius = b.radius() - a.radius();
            return step.norm() >= Math.abs(radius) ? off(step.norm() + Math.abs(radius), "has its centre " + direction(step) + " of where it should")
                    : off(step.norm() + Math.abs(radius), "has a radius of " + near(b.radius()) + ", not " + near(a.radius()));
        }
        Path a = path(right);
        Path b = path(given);
        double ends = Math.min(apart(a, b, moved), apart(a, b.reversed(), moved));
        return off(Math.max(ends, Math.abs(a.length() - b.length()) / a.segments().size()), "runs otherwise");
    }

    /** The most that the corners of two lines lie apart, gone the same way; without end if they have not as many. */
    private static double apart(Path a, Path b, Point moved) {
        if (a.segments().size() != b.segments().size()) {
            return Double.POSITIVE_INFINITY;
        }
        double most = b.end().minus(moved).distance(a.end());
        for (int i = 0; i < a.segments().size(); i++) {
            most = Math.max(most, b.segments().get(i).from().minus(moved).distance(a.segments().get(i).from()));
        }
        return most;
    }

    /** How far a ruled line strays from the right one, over the stretch of that one which lies on the sheet. */
    private static Optional<Off> line(Figure.Rule a, Figure.Rule b, Point moved, Draft lesson) {
        Point along = a.to().minus(a.from());
        Point other = b.to().minus(b.from());
        double cross = Math.abs(along.x() * other.y() - along.y() * other.x()) / (along.norm() * other.norm());
        double turn = Math.toDegrees(Math.asin(Math.min(1, cross)));
        double stretch = Math.min(along.norm(), Math.hypot(lesson.sheet().width(), lesson.sheet().height()));
        Point normal = new Point(-along.y() / along.norm(), along.x() / along.norm());
        Point middle = b.from().minus(moved).midway(b.to().minus(moved));
        double aside = Math.abs(middle.minus(a.from()).dot(normal));
        double shorter = along.norm() < stretch + 1e-9 ? Math.abs(along.norm() - other.norm()) : 0;
        double strays = stretch / 2 * cross;
        return turn > 0.05 && strays >= aside ? off(Math.max(strays, shorter), String.format(Locale.ROOT, "leans by %.1f degrees", turn))
                : off(Math.max(Math.max(aside, strays), shorter), aside >= shorter ? "lies to one side" : "is " + near(other.norm()) + " long, not " + near(along.norm()));
    }

    private static Optional<Off> off(double inches, String words) {
        return inches <= PENCIL.inInches() ? Optional.empty() : Optional.of(new Off(inches, words));
    }

    private static Path path(Figure figure) {
        return figure instanceof Figure.Bow bow ? bow.path() : ((Figure.Ink) figure).path();
    }

    private static String kind(Figure figure) {
        return figure instanceof Figure.Dot ? "a point" : figure instanceof Figure.Rule ? "a ruled line" : figure instanceof Figure.Round ? "a circle"
                : figure instanceof Figure.Bow ? "an arc" : "a pattern line";
    }

    private static String direction(Point step) {
        String across = Math.abs(step.x()) < 0.003 ? "" : near(Math.abs(step.x())) + (step.x() > 0 ? " to the right" : " to the left");
        String down = Math.abs(step.y()) < 0.003 ? "" : near(Math.abs(step.y())) + (step.y() > 0 ? " below" : " above");
        return across + (across.isEmpty() || down.isEmpty() ? "" : " and ") + down;
    }

    private static String near(double inches) {
        Length length = Length.inches(inches);
        return (inches < 1.0 / 16 ? length.roundedTo(Length.inches(1, 100)) : length.roundedTo(Length.inches(1, 32))).toString();
    }

    /** The review in sentences: what to mend first, what follows from it, and what may stay. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        if (moved.norm() > PENCIL.inInches()) {
            all.add("The whole draft lies " + direction(moved) + " of the lesson's. That makes no difference.");
        }
        for (Difference d : differences) {
            if (d.isMadeHere()) {
                List<String> follow = follow(d.figure());
                all.add("Step " + d.step() + ", '" + d.figure() + "': it " + d.what() + ". " + (d.matters() ? "Draw this step again"
                        : "By so little it can be eased in the sewing") + (follow.isEmpty() ? "." : "; " + String.join(", ", follow) + (follow.size() == 1 ? " comes" : " come") + " from it."));
            }
        }
        if (!missing.isEmpty()) {
            all.add("Not drawn: " + String.join(", ", missing) + ".");
        }
        if (!extra.isEmpty()) {
            all.add("Not in the lesson, and not looked at: " + String.join(", ", extra) + ".");
        }
        if (isRight()) {
            all.add("All " + lesson.figures().size() + " figures are where they should be.");
        }
        return all;
    }

    /** What is off only because of this figure and others that are. */
    private List<String> follow(String root) {
        Set<String> caused = new HashSet<>(Set.of(root));
        List<String> all = new ArrayList<>();
        for (Difference d : differences) {
            if (d.from().stream().anyMatch(caused::contains)) {
                caused.add(d.figure());
                all.add("'" + d.figure() + "'");
            }
        }
        return all;
    }

    @Override
    public Exhibit show() {
        Table table = Table.of("Held against the lesson", "Step", "Figure", "What differs", "By", "In the sewing", "Comes from");
        for (Difference d : differences) {
            table = table.row(String.valueOf(d.step()), d.figure(), d.what(), Double.isInfinite(d.off()) ? "" : near(d.off()), d.matters() ? "matters" : "can be eased",
                    d.isMadeHere() ? "this step" : String.join(", ", d.from()));
        }
        List<Exhibit> parts = new ArrayList<>(List.of(Exhibit.words(String.join("\n", sentences()))));
        if (!student.steps().isEmpty()) {
            differences.stream().filter(Difference::isMadeHere).findFirst().ifPresent(d -> parts.add(Exhibit.of(DraftPicture.step(student, d.step() - 1), "Step " + d.step() + ": " + d.words())));
        }
        if (!differences.isEmpty()) {
            parts.add(Exhibit.of(table));
        }
        return new Exhibit.Several(parts);
    }
}
