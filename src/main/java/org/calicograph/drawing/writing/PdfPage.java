package org.calicograph.drawing.writing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Outline;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.Tag;
import org.calicograph.drawing.Typeface;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** One page of a PDF file as a surface, in points from its lower left corner. */
final class PdfPage implements Surface, AutoCloseable {

    private final PDPageContentStream out;
    private final PdfWriter.Face face;
    private final PdfCloths cloths;
    private final PdfMarks marks;
    /** The last lettering, not yet written: a line that goes on ends in a space. */
    private Picture.Lettering waiting;
    private Transform waitingOnto;
    private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();
    // What the page is set to now; setting it again would only make the file longer.
    private int fill;
    private int stroke;
    private double width = -1;
    private double opacity = 1;
    private List<Double> dashes = List.of();

    PdfPage(PDDocument document, PDPage page, PdfWriter.Face face, PdfStructure structure) throws IOException {
        this.out = new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true);
        this.marks = new PdfMarks(structure, page, out);
        this.face = face;
        this.cloths = new PdfCloths(document, page);
        out.setLineJoinStyle(1);
        out.setLineCapStyle(1);
        out.setNonStrokingColor(0f, 0f, 0f);
        out.setStrokingColor(0f, 0f, 0f);
    }

    @Override
    public void close() throws IOException {
        letter("");
        marks.rest();
        out.close();
    }

    @Override
    public void begin(Tag tag) {
        letter("");
        marks.begin(tag);
    }

    @Override
    public void end(Tag tag) {
        letter("");
        marks.end();
    }

    @Override
    public void begin(Picture.Label label) {
        marks.begin(label);
    }

    @Override
    public void end(Picture.Label label) {
        marks.end(label);
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        boolean filled = !(shape.fill() instanceof Paint.None);
        boolean drawn = shape.pen().draws();
        if (!filled && !drawn) {
            return;
        }
        letter("");
        marks.shape(shape);
        try {
            Picture.Shape placed = shape.onto(onto);
            if (placed.fill() instanceof Paint.Flat flat) {
                fill(flat.colour());
                opacity(flat.opacity());
            } else if (placed.fill() instanceof Paint.Printed printed) {
                out.setNonStrokingColor(cloths.colour(printed));
                fill = -1;
                opacity(1);
            }
            if (drawn) {
                pen(placed.pen());
            }
            placed.paths().forEach(path -> Outline.trace(path, new Steps()));
            if (filled && drawn) {
                out.fillAndStrokeEvenOdd();
            } else if (filled) {
                out.fillEvenOdd();
            } else {
                out.stroke();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fill(Colour colour) throws IOException {
        int packed = colour.packed();
        if (packed != fill) {
            out.setNonStrokingColor((packed >> 16) / 255f, (packed >> 8 & 255) / 255f, (packed & 255) / 255f);
            fill = packed;
        }
    }

    private void pen(Pen pen) throws IOException {
        int packed = pen.colour().packed();
        if (packed != stroke) {
            out.setStrokingColor((packed >> 16) / 255f, (packed >> 8 & 255) / 255f, (packed & 255) / 255f);
            stroke = packed;
        }
        if (pen.width() != width) {
            out.setLineWidth((float) pen.width());
            width = pen.width();
        }
        if (!pen.dashes().equals(dashes)) {
            dashes = pen.dashes();
            float[] lengths = new float[dashes.size()];
            for (int i = 0; i < lengths.length; i++) {
                lengths[i] = dashes.get(i).floatValue();
            }
            out.setLineDashPattern(lengths, 0);
            out.setLineCapStyle(lengths.length == 0 ? 1 : 0);
        }
    }

    private void opacity(double of) throws IOException {
        if (of != opacity) {
            out.setGraphicsStateParameters(opacities.computeIfAbsent(of, o -> {
                PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                state.setNonStrokingAlphaConstant((float) (double) o);
                return state;
            }));
            opacity = of;
        }
    }

    @Override
    public void lettering(Picture.Lettering text, Transform onto) {
        if (Typeface.of(text.weight()).shown(text.text()).isEmpty()) {
            return;
        }
        letter(marks.goesOn() ? " " : "");
        marks.lettering(text);
        waiting = text;
        waitingOnto = onto;
    }

    /** Writes the lettering that waits. */
    private void letter(String after) {
        if (waiting == null) {
            return;
        }
        Picture.Lettering text = waiting;
        Transform onto = waitingOnto;
        waiting = null;
        Typeface type = Typeface.of(text.weight());
        String shown = type.shown(text.text()) + after;
        try {
            Transform t = Transform.scale(1, -1).then(Transform.move(type.left(text), text.at().y())).then(onto);
            reach(t, type.width(text.text(), text.size()), text.size());
            fill(text.colour());
            opacity(1);
            out.beginText();
            out.setFont(face.font(), (float) text.size());
            out.setTextMatrix(new Matrix((float) t.a(), (float) t.b(), (float) t.c(), (float) t.d(), fine(t.e()), fine(t.f())));
            if (text.weight() == Picture.Weight.BOLD) {
                pen(Pen.of(text.colour(), text.size() * Typeface.BOLD_STROKE * onto.scale()));
                out.setRenderingMode(RenderingMode.FILL_STROKE);
                out.showText(shown);
                out.setRenderingMode(RenderingMode.FILL);
            } else {
                out.showText(shown);
            }
            out.endText();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void reach(Transform t, double width, double size) {
        for (double x : new double[] {0, width}) {
            for (double y : new double[] {-0.25 * size, size}) {
                Point corner = t.of(new Point(x, y));
                marks.reach(corner.x(), corner.y());
            }
        }
    }

    /** To a hundredth of a point, 1/7200 in: a tenth of what a fine printer shows. */
    private static float fine(double points) {
        return (float) (Math.rint(points * 100) / 100);
    }

    /** The steps of a path in the page's stream. */
    private final class Steps implements Outline {

        @Override
        public void moveTo(Point to) {
            marks.reach(to.x(), to.y());
            write(() -> out.moveTo(fine(to.x()), fine(to.y())));
        }

        @Override
        public void lineTo(Point to) {
            marks.reach(to.x(), to.y());
            write(() -> out.lineTo(fine(to.x()), fine(to.y())));
        }

        @Override
        public void curveTo(Point lead, Point trail, Point to) {
            marks.reach(lead.x(), lead.y());
            marks.reach(trail.x(), trail.y());
            marks.reach(to.x(), to.y());
            write(() -> out.curveTo(fine(lead.x()), fine(lead.y()), fine(trail.x()), fine(trail.y()), fine(to.x()), fine(to.y())));
        }

        @Override
        public void close() {
            write(out::closePath);
        }

        private void write(Step step) {
            try {
                step.write();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    @FunctionalInterface
    private interface Step {
        void write() throws IOException;
    }
}
