package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.calicograph.drawing.Exhibit;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.wire.ExhibitFormat;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every construction of every lesson, as the notebooks hold it, against the algebra. */
class LessonConstructionsTest {

    private static final double NEAR = 1e-9;

    @TempDir
    static Path cache;
    private static Cells cells;

    @BeforeAll
    static void start() throws Exception {
        cells = new Cells(new Running(), Stdlib.of(List.of(Path.of("stdlib")), cache), 256);
    }

    /** Every figure of every draft that a cell of the notebook declares, by name: x and y of its points; of a circle the centre and the radius. */
    private static Map<String, double[]> drawn(String file) throws Exception {
        Notebook notebook = NotebookFile.read(Path.of("notebooks", file));
        List<String> declared = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            boolean drafts = cell.text().contains("Draft.blank") || declared.stream().anyMatch(d -> cell.text().contains(" = " + d));
            if (!(cell instanceof Cell.Code) || !drafts) {
                continue;
            }
            String id = cell.id();
            assertThat(cells.evaluate(id, cell.text(), Map.of(), List.of()).failure()).as(file + " " + id).isEmpty();
            cells.scan(java.util.List.of(id), java.util.List.of(cell.text())).get(0).declares().stream().map(d -> d.key()).filter(k -> k.matches("\\w+")).forEach(declared::add);
        }
        Cells.Result result = cells.evaluate("probe", """
                Stream.<Object>of(%s).filter(o -> o instanceof Draft).flatMap(o -> ((Draft) o).figures().entrySet().stream()).map(e -> e.getKey() + "|"
                    + (e.getValue() instanceof Figure.Dot p ? p.at().x() + "|" + p.at().y()
                    : e.getValue() instanceof Figure.Round r ? r.centre().x() + "|" + r.centre().y() + "|" + r.radius()
                    : e.getValue() instanceof Figure.Rule u ? u.from().x() + "|" + u.from().y() + "|" + u.to().x() + "|" + u.to().y()
                    : ((Figure.Ink) e.getValue()).path().corners().stream().map(c -> c.x() + "|" + c.y()).collect(Collectors.joining("|"))))
                    .distinct().collect(Collectors.joining("\\n"))""".formatted(String.join(", ", declared)), Map.of(), List.of());
        assertThat(result.failure()).isEmpty();
        String words = ((Exhibit.Words) ExhibitFormat.exhibit(result.exhibit().orElseThrow())).text();
        Map<String, double[]> all = new LinkedHashMap<>();
        words.lines().map(l -> l.split("\\|")).forEach(f ->
                all.put(f[0], Stream.of(f).skip(1).mapToDouble(Double::parseDouble).toArray()));
        notebook.cells().forEach(c -> cells.forget(c.id()));
        cells.forget("probe");
        return all;
    }

    /** Every figure drawn stands where the algebra has it; none is left unchecked. */
    private static void agree(Map<String, double[]> drawn, Map<String, Point> points, Map<String, Double> radii) {
        assertThat(drawn).isNotEmpty();
        assertThat(drawn.keySet()).containsAll(points.keySet()).containsAll(radii.keySet());
        drawn.forEach((name, figure) -> {
            if (radii.containsKey(name)) {
                assertThat(figure[2]).as(name).isCloseTo(radii.get(name), within(NEAR));
            } else if (figure.length == 2) {
                assertThat(points).as("the algebra of a point").containsKey(name);
                assertThat(new Point(figure[0], figure[1]).distance(points.get(name))).as(name).isLessThan(NEAR);
            } else if (!name.matches("[a-z]+[0-9]*") || name.matches("(star|line[0-9]+|body|diamond)")) {
                for (int i = 0; i + 1 < figure.length; i += 2) {
                    Point corner = new Point(figure[i], figure[i + 1]);
                    assertThat(points.values()).as(name).anySatisfy(p -> assertThat(p.distance(corner)).isLessThan(NEAR));
                }
            }
        });
    }

    private static Map<String, Point> ring(int parts, double centre, double radius) {
        Map<String, Point> points = new LinkedHashMap<>(Map.of("O", new Point(centre, centre)));
        for (int i = 0; i < parts; i++) {
            points.put("P" + (i + 1), new Point(centre, centre).plus(Point.polar(radius, Angle.turn(i, parts).minus(Angle.QUARTER))));
        }
        return points;
    }

    @Test
    void the_first_lesson_agrees_with_the_algebra() throws Exception {
        Map<String, Point> points = ring(5, 4, 3.5);
        points.put("A", points.get("P1"));
        agree(drawn("first-lesson.json"), points, Map.of("rim", 3.5));
    }

    @Test
    void the_ten_point_star_agrees_with_the_algebra() throws Exception {
        Map<String, Point> points = ring(10, 6, 5);
        points.put("T", points.get("P1"));
        agree(drawn("ten-point-star.json"), points, Map.of("rim", 5.0));
    }

    /** With straight feathers of 1 and slant feathers of g = 5 root 2 / 7, everything follows from similar triangles. */
    private static Map<String, Point> feathered() {
        double root = Math.sqrt(2);
        double g = 5 * root / 7;
        Point k = new Point(2.5, 8.5);
        Point i = k.plus(0, -5);
        Point down = new Point(1 / root, 1 / root);
        Point out = new Point(g / root, -g / root);
        Point t = i.plus(-1, -1 - g * root);
        Map<String, Point> points = new LinkedHashMap<>(Map.of("K", k, "I", i, "B", k.plus(5, 0), "L", k.plus(-1, 0), "T", t,
                "P", t.plus(0, g * root), "R", t.plus(down.times(root)), "W", new Point(0.5, 8.5), "E", new Point(8.5, 8.5), "N", new Point(8.5, 0.5)));
        for (int n = 0; n < 5; n++) {
            points.put("Q" + n, i.plus(-1, n));
            if (n > 0) {
                points.put("S" + n, k.plus(0, -n));
            }
        }
        for (int n = 0; n < 7; n++) {
            points.put("U" + n, i.plus(down.times(n * g)).plus(out));
            if (n > 0) {
                points.put("D" + n, i.plus(down.times(n * g)));
            }
        }
        return points;
    }

    @Test
    void the_feathered_star_agrees_with_the_algebra() throws Exception {
        agree(drawn("feathered-star.json"), feathered(), Map.of("swing", 5.0, "one", 1.0, "step", 5 * Math.sqrt(2) / 7));
    }

    /** The block of stdlib, 24 in wide, is drafted from algebra of its own; its feathers are 24 x 7 / 174 in. */
    @Test
    void the_block_has_a_corner_at_every_point_of_the_feathered_lesson() throws Exception {
        Cells.Result result = cells.evaluate("block", """
                FeatheredStar.of(5).across(inches(24)).patches().stream().flatMap(p -> p.shape().outer().corners().stream())
                    .map(p -> p.x() + "|" + p.y()).collect(Collectors.joining("\\n"))""", Map.of(), List.of());
        assertThat(result.failure()).isEmpty();
        List<Point> corners = ((Exhibit.Words) ExhibitFormat.exhibit(result.exhibit().orElseThrow())).text().lines().map(l -> l.split("\\|"))
                .map(f -> new Point(Double.parseDouble(f[0]), Double.parseDouble(f[1]))).toList();
        double feather = 24 * 7 / 174.0;
        Map<String, Point> points = feathered();
        Point tip = new Point(feather * (10.0 / 7 + 5), 0);
        points.forEach((name, p) -> {
            if (!List.of("W", "E", "N").contains(name)) {
                Point there = tip.plus(p.minus(points.get("T")).times(feather));
                assertThat(corners).as(name).anySatisfy(c -> assertThat(c.distance(there)).isLessThan(NEAR));
            }
        });
    }

    @Test
    void every_lesson_of_the_product_is_among_these() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("notebooks"))) {
            // A notebook that holds a draft against a lesson is none itself.
            List<String> lessons = files.filter(Files::isRegularFile).filter(f -> {
                try {
                    String text = Files.readString(f);
                    return text.contains("Draft.blank") && !text.contains("DraftReview");
                } catch (java.io.IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }).map(f -> f.getFileName().toString()).sorted().toList();
            assertThat(lessons).containsExactly("feathered-star.json", "first-lesson.json", "ten-point-star.json");
        }
    }
}
