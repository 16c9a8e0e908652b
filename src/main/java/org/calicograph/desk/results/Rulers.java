package org.calicograph.desk.results;

import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.calicograph.drawing.View;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;

/** Ruler edges along the top and the left of the wall, from 0 at the picture's corner to its far edge, in inches or centimetres. */
public final class Rulers extends Region {

    /** How thick an edge is, in pixels. */
    public static final double EDGE = 24;
    /** The least room between two ticks. */
    private static final double TIGHTEST = 5;
    private static final double[] STEPS = {1, 2, 5, 10, 20, 50, 100};
    private static final double CLOSEST = 34;

    private final Canvas canvas = new Canvas();
    private Color ink = Color.web("#5a5650");
    private double letters = 10;

    public Rulers() {
        getStyleClass().add("rulers");
        setMouseTransparent(true);
        setManaged(false);
        getChildren().add(canvas);
    }

    /** The colour of ticks and numbers, and how large the numbers are. */
    public void ink(Color colour, double size) {
        ink = colour;
        letters = size;
    }

    /**
     * Lays the edges along a picture, or takes them away.
     *
     * @param lying  how the picture lies, from this region's own corner; empty for no rulers
     * @param unit   the length of one unit of the numbers
     */
    public void along(Optional<View> lying, Box box, Length unit) {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (lying.isEmpty() || !(box.width() > 0) || !(box.height() > 0)) {
            return;
        }
        View view = lying.get();
        double per = view.scale() * unit.inInches();
        pen.setStroke(ink);
        pen.setFill(ink);
        pen.setLineWidth(1);
        pen.setFont(Font.font(getStyle().isEmpty() ? "System" : getStyle(), letters));
        double left = view.x() + view.scale() * box.left();
        double top = view.y() + view.scale() * box.top();
        boolean inches = unit.equals(Length.inches(1));
        edge(pen, left, per, box.width() / unit.inInches(), getWidth(), true, inches);
        edge(pen, top, per, box.height() / unit.inInches(), getHeight(), false, inches);
    }

    /** How many ticks an inch or a centimetre is parted into: halves, quarters and eighths as a quilter's ruler has them, or tenths. */
    static int ticks(double step, double per, boolean inches) {
        int[] parts = step == 1 ? inches ? new int[] {8, 4, 2} : new int[] {10, 5, 2} : step == 2 || step == 20 ? new int[] {2} : new int[] {(int) Math.min(10, step), 5};
        for (int each : parts) {
            if (step * per / each >= TIGHTEST) {
                return each;
            }
        }
        return 1;
    }

    private void edge(GraphicsContext pen, double from, double per, double length, double room, boolean across, boolean inches) {
        double step = STEPS[STEPS.length - 1];
        for (double each : STEPS) {
            if (each * per >= CLOSEST) {
                step = each;
                break;
            }
        }
        int parts = ticks(step, per, inches);
        double small = step / parts;
        int last = (int) Math.floor(length / small + 1e-9);
        pen.setTextAlign(across ? TextAlignment.CENTER : TextAlignment.RIGHT);
        pen.setTextBaseline(across ? VPos.TOP : VPos.CENTER);
        for (int i = 0; i <= last && i < 4000; i++) {
            double at = Math.rint(from + i * small * per) + 0.5;
            if (at < EDGE || at > room) {
                continue;
            }
            double units = i * small;
            boolean numbered = Math.abs(units / step - Math.rint(units / step)) < 1e-6;
            boolean half = parts % 2 == 0 && i % (parts / 2) == 0;
            double tick = numbered ? 7 : half ? 5 : parts == 8 && i % 2 != 0 ? 2 : 3.5;
            if (across) {
                pen.strokeLine(at, EDGE - tick, at, EDGE);
            } else {
                pen.strokeLine(EDGE - tick, at, EDGE, at);
            }
            if (numbered) {
                String number = Long.toString(Math.round(units));
                pen.fillText(number, across ? at : EDGE - 9, across ? 2 : at, across ? 40 : EDGE - 9);
            }
        }
    }
}
