package org.calicograph.drawing.writing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.GlyphData;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.drawing.Outline;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.Typeface;
import org.calicograph.fabric.Cloth;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Pixels as a surface. */
final class PngCanvas implements Surface {

    /** Outlines of glyphs in units of the font, y upwards. */
    private static final Map<Integer, Path2D> GLYPHS = new HashMap<>();

    private final Graphics2D g;
    private final Map<Tile, BufferedImage> tiles = new HashMap<>();

    PngCanvas(BufferedImage image, Colour ground) {
        g = image.createGraphics();
        g.setColor(new Color(ground.packed()));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    void hint(RenderingHints.Key key, Object value) {
        g.setRenderingHint(key, value);
    }

    void close() {
        g.dispose();
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        Path2D outline = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Steps steps = new Steps(outline, onto);
        for (Path path : shape.paths()) {
            Outline.trace(path, steps);
        }
        if (shape.fill() instanceof Paint.Flat flat) {
            g.setColor(new Color(flat.colour().packed()));
            if (flat.opacity() < 1) {
                g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) flat.opacity()));
                g.fill(outline);
                g.setComposite(AlphaComposite.SrcOver);
            } else {
                g.fill(outline);
            }
        }
        if (shape.fill() instanceof Paint.Printed printed) {
            cloth(printed, outline, onto);
        }
        if (shape.pen().draws()) {
            g.setColor(new Color(shape.pen().colour().packed()));
            g.setStroke(stroke(shape.pen(), onto.scale()));
            g.draw(outline);
        }
    }

    private void cloth(Paint.Printed printed, Path2D outline, Transform onto) {
        Transform lay = printed.lay().then(onto);
        AffineTransform there = new AffineTransform(lay.a(), lay.b(), lay.c(), lay.d(), lay.e(), lay.f());
        Cloth cloth = printed.cloth();
        int across = (int) Math.max(1, Math.ceil(cloth.repeat().inInches() * lay.scale()));
        try {
            java.awt.Shape onCloth = there.createInverse().createTransformedShape(outline);
            AffineTransform before = g.getTransform();
            g.transform(there);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.setPaint(new TexturePaint(tile(cloth.photo(), across),
                    new Rectangle2D.Double(0, 0, cloth.repeat().inInches(), cloth.height().inInches())));
            g.fill(onCloth);
            g.setTransform(before);
        } catch (NoninvertibleTransformException e) {
            return; // flattened to a line: nothing of it shows
        }
    }

    /** One repeat, averaged down to about the pixels that it will cover, so that fine prints don't shimmer. */
    private BufferedImage tile(Photo photo, int across) {
        if (photo.width() < 2 * across) {
            return tiles.computeIfAbsent(new Tile(photo, photo.width()), t -> PngWriter.image(photo));
        }
        return tiles.computeIfAbsent(new Tile(photo, across), t -> {
            int down = Math.max(1, (int) Math.round((double) across * photo.height() / photo.width()));
            BufferedImage small = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = small.createGraphics();
            pen.drawImage(PngWriter.image(photo).getScaledInstance(across, down, Image.SCALE_AREA_AVERAGING), 0, 0, null);
            pen.dispose();
            return small;
        });
    }

    private record Tile(Photo photo, int across) { }

    private static BasicStroke stroke(Pen pen, double grown) {
        float width = (float) (pen.width() * grown);
        if (pen.dashes().isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) Math.max(1e-3, pen.dashes().get(i) * grown);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }

    @Override
    public void lettering(Picture.Lettering text, Transform onto) {
        Typeface face = Typeface.of(text.weight());
        double unit = text.size() / face.unitsPerEm();
        double x = face.left(text);
        g.setColor(new Color(text.colour().packed()));
        g.setStroke(new BasicStroke((float) (text.size() * Typeface.BOLD_STROKE * onto.scale()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int glyph : face.glyphs(text.text())) {
            AffineTransform at = new AffineTransform(onto.a(), onto.b(), onto.c(), onto.d(), onto.e(), onto.f());
            at.translate(x, text.at().y());
            at.scale(unit, -unit);
            java.awt.Shape letter = at.createTransformedShape(outline(face, glyph));
            g.fill(letter);
            if (text.weight() == Picture.Weight.BOLD) {
                g.draw(letter);
            }
            x += face.advance(glyph) * unit;
        }
    }

    private static Path2D outline(Typeface face, int glyph) {
        synchronized (GLYPHS) {
            return GLYPHS.computeIfAbsent(glyph, id -> {
                try {
                    GlyphData data = face.font().getGlyph().getGlyph(id);
                    return data == null ? new Path2D.Double() : data.getPath();
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    /** The steps of a path in pixels. */
    private record Steps(Path2D path, Transform onto) implements Outline {

        @Override
        public void moveTo(Point to) {
            Point p = onto.of(to);
            path.moveTo(p.x(), p.y());
        }

        @Override
        public void lineTo(Point to) {
            Point p = onto.of(to);
            path.lineTo(p.x(), p.y());
        }

        @Override
        public void curveTo(Point lead, Point trail, Point to) {
            Point a = onto.of(lead);
            Point b = onto.of(trail);
            Point c = onto.of(to);
            path.curveTo(a.x(), a.y(), b.x(), b.y(), c.x(), c.y());
        }

        @Override
        public void close() {
            path.closePath();
        }
    }
}
