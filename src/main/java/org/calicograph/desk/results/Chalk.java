package org.calicograph.desk.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.animation.FadeTransition;
import javafx.scene.layout.Pane;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.util.Duration;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.View;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/**
 * The edges of what hung before, left as chalk over what hangs now. Of a picture of many patches only the outer edges
 * are left, and of one whose outer edges are many too its frame, so that a dial turns as lightly as without chalk.
 */
final class Chalk extends Pane {

    /** An edge from one point to another, in inches. */
    record Edge(double x, double y, double toX, double toY) { }

    /** So many edges, and no more, are laid. */
    static final int MOST = 600;
    private static final double ACCURACY = 0.05;
    /** Corners nearer than this are the same, in inches. */
    private static final double SAME = 1e-4;

    private final Path under = new Path();
    private final Path line = new Path();
    private final FadeTransition rubbing = new FadeTransition(Duration.millis(320), this);
    private List<Edge> edges = List.of();

    Chalk() {
        setManaged(false);
        setMouseTransparent(true);
        under.getStyleClass().add("chalk-under");
        line.getStyleClass().add("chalk");
        getChildren().addAll(under, line);
        rubbing.setToValue(0);
        rubbing.setOnFinished(e -> clear());
    }

    boolean isEmpty() {
        return edges.isEmpty();
    }

    int count() {
        return edges.size();
    }

    /** Draws round what hangs, before it becomes another. */
    void draw(Picture picture, Box box) {
        rubbing.stop();
        setOpacity(1);
        edges = edges(picture, box);
    }

    /** Lays the lines where the picture that hangs now lies. */
    void lay(View view) {
        List<PathElement> elements = new ArrayList<>(edges.size() * 2);
        for (Edge edge : edges) {
            elements.add(new MoveTo(view.x() + view.scale() * edge.x, view.y() + view.scale() * edge.y));
            elements.add(new LineTo(view.x() + view.scale() * edge.toX, view.y() + view.scale() * edge.toY));
        }
        under.getElements().setAll(elements);
        line.getElements().setAll(elements);
    }

    /** Rubs the lines out. */
    void rub(boolean slowly) {
        if (slowly && !isEmpty()) {
            rubbing.setFromValue(1);
            rubbing.playFromStart();
        } else {
            clear();
        }
    }

    private void clear() {
        edges = List.of();
        under.getElements().clear();
        line.getElements().clear();
    }

    /** All edges of the filled shapes, each once; where those are too many, those of one shape alone; where they still are, the frame. */
    static List<Edge> edges(Picture picture, Box box) {
        Map<List<Long>, Integer> uses = new LinkedHashMap<>();
        Map<List<Long>, Edge> all = new LinkedHashMap<>();
        Walk.over(picture, Transform.IDENTITY, new Surface() {
            @Override
            public void begin(Picture.Label label) { }

            @Override
            public void end(Picture.Label label) { }

            @Override
            public void lettering(Picture.Lettering text, Transform onto) { }

            @Override
            public void shape(Picture.Shape shape, Transform onto) {
                if (!(shape.fill() instanceof Paint.None)) {
                    shape.paths().forEach(path -> ring(path.flattened(ACCURACY).stream().map(onto::of).toList(), uses, all));
                }
            }
        });
        if (all.size() <= MOST) {
            return List.copyOf(all.values());
        }
        List<Edge> outer = all.entrySet().stream().filter(e -> uses.get(e.getKey()) == 1).map(Map.Entry::getValue).toList();
        return outer.size() <= MOST ? outer : List.of(new Edge(box.left(), box.top(), box.right(), box.top()), new Edge(box.right(), box.top(), box.right(), box.bottom()),
                new Edge(box.right(), box.bottom(), box.left(), box.bottom()), new Edge(box.left(), box.bottom(), box.left(), box.top()));
    }

    private static void ring(List<Point> points, Map<List<Long>, Integer> uses, Map<List<Long>, Edge> all) {
        Point before = points.get(points.size() - 1);
        for (Point point : points) {
            List<Long> key = key(before, point);
            if (!key.isEmpty()) {
                uses.merge(key, 1, Integer::sum);
                all.putIfAbsent(key, new Edge(before.x(), before.y(), point.x(), point.y()));
            }
            before = point;
        }
    }

    /** The same for both directions; empty for an edge of no length. */
    private static List<Long> key(Point one, Point other) {
        long x = Math.round(one.x() / SAME);
        long y = Math.round(one.y() / SAME);
        long toX = Math.round(other.x() / SAME);
        long toY = Math.round(other.y() / SAME);
        if (x == toX && y == toY) {
            return List.of();
        }
        return x < toX || x == toX && y < toY ? List.of(x, y, toX, toY) : List.of(toX, toY, x, y);
    }
}
