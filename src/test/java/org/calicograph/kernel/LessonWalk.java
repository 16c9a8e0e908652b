package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.drawing.Exhibit;
import org.calicograph.geometry.Point;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.NotebookWriter;
import org.calicograph.wire.ExhibitFormat;

/** Goes through a lesson as a student does, from the first cell to the last, with wrong answers and with right ones. */
final class LessonWalk {

    /**
     * A careful hand draws the whole elsewhere on the sheet and every mark a little off, less than a pencil's width: that is right. A mark
     * that lies 1/20 in off is found, it alone, and it matters. Says "true", and behind it the marks whose mistake was not found so.
     */
    private static final String HANDS = """
            String handsOn(Draft d) {
                var far = Transform.move(3.0 / 16, -1.0 / 8);
                var careful = new java.util.LinkedHashMap<String, Figure>();
                d.figures().forEach((name, f) -> careful.put(name, f instanceof Figure.Dot p ? new Figure.Dot(far.of(p.at()).plus(0.002 * Math.sin(7.0 * careful.size()), 0.002 * Math.cos(5.0 * careful.size())))
                    : f instanceof Figure.Rule r ? new Figure.Rule(far.of(r.from()), far.of(r.to()))
                    : f instanceof Figure.Round c ? new Figure.Round(far.of(c.centre()), c.radius() + 0.002)
                    : f instanceof Figure.Bow b ? new Figure.Bow(b.path().transformed(far)) : new Figure.Ink(((Figure.Ink) f).path().transformed(far))));
                var said = new StringBuilder().append(DraftReview.of(d, new Draft(d.title(), d.sheet(), careful, d.steps())).isRight());
                d.figures().forEach((name, f) -> {
                    if (f instanceof Figure.Dot p) {
                        var slip = new java.util.LinkedHashMap<>(d.figures());
                        slip.put(name, new Figure.Dot(p.at().plus(0.04, 0.03)));
                        var found = DraftReview.of(d, new Draft(d.title(), d.sheet(), slip, d.steps())).differences();
                        if (found.size() != 1 || !found.get(0).figure().equals(name) || !found.get(0).isMadeHere() || !found.get(0).matters()) {
                            said.append(' ').append(name);
                        }
                    }
                });
                return said.toString();
            }
            String placesOn(Draft d) {
                return d.figures().entrySet().stream().filter(e -> e.getValue() instanceof Figure.Dot)
                    .map(e -> e.getKey() + "|" + ((Figure.Dot) e.getValue()).at().x() + "|" + ((Figure.Dot) e.getValue()).at().y()).collect(Collectors.joining("\\n"));
            }""";
    private static final Pattern ENDS_WITH_NAME = Pattern.compile("(?s).*\\n(\\w+)$");
    private static final Pattern ANSWERED = Pattern.compile("\\.answered\\((\\w+)\\)");

    private final Cells cells;
    private final Map<String, Map<String, Point>> points = new LinkedHashMap<>();
    private List<String> gone = List.of();

    LessonWalk(Path cache) throws Exception {
        cells = new Cells(new Running(), Stdlib.of(List.of(Path.of("stdlib")), cache), 256);
        assertThat(cells.evaluate("hands", HANDS, Map.of(), List.of()).failure()).isEmpty();
    }

    /** Leaves the lesson, so that another can begin. */
    void forget() {
        cells.forget("probe");
        // The last first: whatever leans on a forgotten cell would be compiled once more.
        for (int i = gone.size() - 1; i >= 0; i--) {
            cells.forget(gone.get(i));
        }
        gone = List.of();
        points.clear();
    }

    /** Draws every cell in order; then the dials are turned to wrong answers, each told with its hint, and to the right ones. */
    void walk(String file, Map<String, String> right, Map<String, String> wrong) throws Exception {
        Path path = Path.of("notebooks/lessons", file);
        Notebook notebook = NotebookFile.read(path);
        assertThat(NotebookWriter.write(notebook)).isEqualTo(Files.readString(path));
        gone = notebook.cells().stream().map(Cell::id).toList();
        Set<String> asked = new TreeSet<>();
        List<String> questions = new ArrayList<>();
        List<String> drafts = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Code) {
                Cells.Result result = cells.evaluate(cell.id(), cell.text(), Map.of(), List.of());
                assertThat(result.failure()).as(file + " " + cell.id()).isEmpty();
                Exhibit shown = ExhibitFormat.exhibit(result.exhibit().orElseThrow());
                Matcher answer = ANSWERED.matcher(cell.text());
                if (answer.find()) {
                    asked.add(answer.group(1));
                    questions.add(cell.id());
                    assertThat(shown.toString()).as(cell.text()).contains("is not it yet.");
                } else {
                    assertThat(shown).as(cell.text()).isNotInstanceOf(Exhibit.Words.class);
                    Matcher name = ENDS_WITH_NAME.matcher(cell.text());
                    if (result.kind().equals("Draft") && name.matches()) {
                        drafts.add(name.group(1));
                    }
                }
            }
        }
        assertThat(drafts).as("drafts of " + file).hasSizeGreaterThan(2);
        assertThat(told("handsOn(" + drafts.get(drafts.size() - 1) + ")")).as(file).isEqualTo("true");
        assertThat(asked).as("questions of " + file).isEqualTo(right.keySet()).isEqualTo(wrong.keySet());
        assertThat(turned(file, wrong)).containsOnlyKeys(questions).allSatisfy((cell, words) -> assertThat(words).as(cell).containsPattern("is not it yet\\. \\w+ \\w+"));
        assertThat(turned(file, right)).containsOnlyKeys(questions).allSatisfy((cell, words) -> assertThat(words).as(cell).contains("is right."));
    }

    /** What the questions say once their dials stand at the answers. */
    private Map<String, String> turned(String file, Map<String, String> answers) {
        Map<String, String> said = new LinkedHashMap<>();
        Turning.End end = cells.turn(answers, gone, new Turning() {
            @Override
            public void begins(String cell) { }

            @Override
            public boolean sketched(String cell, Exhibit exhibit, long began, long ran) {
                said.put(cell, exhibit.toString());
                return false;
            }

            @Override
            public void ends(String cell, Cells.Result result) {
                assertThat(result.failure()).as(file + " " + cell).isEmpty();
            }
        });
        assertThat(end.anew()).isEmpty();
        return said;
    }

    /** What an expression says of the values that the lesson has declared. */
    String told(String expression) throws Exception {
        Cells.Result result = cells.evaluate("probe", expression, Map.of(), List.of());
        assertThat(result.failure()).as(expression).isEmpty();
        return ((Exhibit.Words) ExhibitFormat.exhibit(result.exhibit().orElseThrow())).text();
    }

    /** How far two points of a draft lie apart; the draft is asked once for all its points. */
    double distance(String draft, String one, String other) throws Exception {
        if (!points.containsKey(draft)) {
            Map<String, Point> found = new LinkedHashMap<>();
            told("placesOn(" + draft + ")")
                    .lines().map(l -> l.split("\\|")).forEach(f -> found.put(f[0], new Point(Double.parseDouble(f[1]), Double.parseDouble(f[2]))));
            points.put(draft, found);
        }
        return Math.hypot(points.get(draft).get(one).x() - points.get(draft).get(other).x(), points.get(draft).get(one).y() - points.get(draft).get(other).y());
    }
}
