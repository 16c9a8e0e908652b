package org.calicograph.drawing.writing;

import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.Tag;
import org.calicograph.drawing.Typeface;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;

/**
 * Writes a picture as SVG 1.1, true to scale: one user unit is one inch, to four decimals. Each labelled
 * part is a {@code <g>} with its id, made safe and unique, and its title; each tagged part one with its ARIA role.
 */
public final class SvgWriter implements Surface {

    private static final Pattern UNSAFE = Pattern.compile("[^A-Za-z0-9_-]+");
    private static final int TEXT_SCALE = 100;

    private final SvgText out = new SvgText();
    private final Set<String> ids = new HashSet<>();
    private final Map<Paint.Printed, String> patterns = new HashMap<>();
    private final String prefix;

    private SvgWriter(String prefix) {
        this.prefix = prefix;
    }

    /** A file of its own. */
    public static String write(Picture picture) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + inline(picture, "");
    }

    /**
     * The {@code <svg>} element alone, to stand in a page.
     *
     * @param prefix put before every id, so that pictures on one page keep apart
     */
    public static String inline(Picture picture, String prefix) {
        SvgWriter writer = new SvgWriter(prefix);
        writer.open(picture.bounds());
        Walk.over(picture, Transform.IDENTITY, writer);
        return writer.out.raw("</svg>\n").toString();
    }

    private void open(Box box) {
        out.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"").number(box.width()).raw("in\" height=\"")
                .number(box.height()).raw("in\" viewBox=\"").number(box.left()).raw(" ").number(box.top()).raw(" ")
                .number(box.width()).raw(" ").number(box.height())
                .raw("\" fill=\"none\" fill-rule=\"evenodd\" stroke-linejoin=\"round\" stroke-linecap=\"round\">\n");
    }

    @Override
    public void begin(Picture.Label label) {
        out.raw("<g id=\"").raw(unique(label.id())).raw("\">\n<title>").escaped(label.title()).raw("</title>\n");
    }

    @Override
    public void end(Picture.Label label) {
        out.raw("</g>\n");
    }

    @Override
    public void begin(Tag tag) {
        String role = switch (tag.role()) {
            case TITLE, CHAPTER, HEADING -> "heading\" aria-level=\"" + tag.role().rank();
            case PARAGRAPH -> "paragraph";
            case NOTE -> "note";
            case LIST -> "list";
            case ITEM -> "listitem";
            case TABLE -> "table";
            case ROW -> "row";
            case COLUMN -> "columnheader";
            case CELL -> "cell";
            case FIGURE -> "img";
            case CAPTION -> "caption";
            case MARK, WORDS, FURNITURE -> "";
        };
        out.raw("<g");
        if (!role.isEmpty()) {
            out.raw(" role=\"").raw(role).raw("\"");
        } else if (tag.role() == Tag.Role.FURNITURE) {
            out.raw(" aria-hidden=\"true\"");
        }
        if (!tag.said().isEmpty() && (tag.role() == Tag.Role.FIGURE || tag.role() == Tag.Role.TABLE)) {
            out.raw(" aria-label=\"").escaped(tag.said()).raw("\"");
        }
        out.raw(">\n");
    }

    @Override
    public void end(Tag tag) {
        out.raw("</g>\n");
    }

    /** An XML name of ASCII letters, digits, hyphens and underscores that no other part has. */
    private String unique(String id) {
        String safe = prefix + UNSAFE.matcher(id).replaceAll("-");
        if (safe.isEmpty() || safe.charAt(0) != '_' && !Character.isLetter(safe.charAt(0))) {
            safe = "p" + safe;
        }
        String name = safe;
        for (int i = 2; !ids.add(name); i++) {
            name = safe + "-" + i;
        }
        return name;
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        boolean filled = !(shape.fill() instanceof Paint.None);
        if (!filled && !shape.pen().draws()) {
            return;
        }
        Picture.Shape placed = shape.onto(onto);
        String cloth = placed.fill() instanceof Paint.Printed printed ? pattern(printed) : "";
        out.raw("<path d=\"");
        placed.paths().forEach(this::path);
        out.raw("\"");
        if (!cloth.isEmpty()) {
            out.raw(" fill=\"url(#").raw(cloth).raw(")\"");
        }
        if (shape.fill() instanceof Paint.Flat flat) {
            attribute("fill", flat.colour());
            if (flat.opacity() < 1) {
                out.raw(" fill-opacity=\"").number(flat.opacity()).raw("\"");
            }
        }
        if (placed.pen().draws()) {
            pen(placed.pen());
        }
        out.raw("/>\n");
    }

    /** The name of the pattern of a cloth, written when it is first used. */
    private String pattern(Paint.Printed printed) {
        return patterns.computeIfAbsent(printed, p -> {
            String id = unique("cloth");
            Transform lay = p.lay();
            out.raw("<pattern id=\"").raw(id).raw("\" patternUnits=\"userSpaceOnUse\" width=\"").fine(p.cloth().repeat().inInches())
                    .raw("\" height=\"").fine(p.cloth().height().inInches()).raw("\" patternTransform=\"matrix(");
            for (double part : new double[] {lay.a(), lay.b(), lay.c(), lay.d(), lay.e()}) {
                out.fine(part).raw(" ");
            }
            out.fine(lay.f()).raw(")\"><image width=\"").fine(p.cloth().repeat().inInches()).raw("\" height=\"")
                    .fine(p.cloth().height().inInches())
                    .raw("\" preserveAspectRatio=\"none\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"data:image/png;base64,")
                    .raw(Base64.getEncoder().encodeToString(PngWriter.write(p.cloth().photo()))).raw("\"/></pattern>\n");
            return id;
        });
    }

    private void pen(Pen pen) {
        attribute("stroke", pen.colour());
        out.raw(" stroke-width=\"").number(pen.width()).raw("\"");
        if (!pen.dashes().isEmpty()) {
            out.raw(" stroke-linecap=\"butt\" stroke-dasharray=\"");
            List<Double> dashes = pen.dashes();
            for (int i = 0; i < dashes.size(); i++) {
                out.raw(i == 0 ? "" : " ").number(dashes.get(i));
            }
            out.raw("\"");
        }
    }

    private void attribute(String name, Colour colour) {
        out.raw(" ").raw(name).raw("=\"").hex(colour.packed()).raw("\"");
    }

    private void path(Path path) {
        out.raw("M").point(path.start());
        int last = path.segments().size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment s = path.segments().get(i);
            if (s instanceof Line line) {
                // Closing draws the last line of a closed path.
                if (i < last || i == 0 || !path.isClosed()) {
                    out.raw("L").point(line.to());
                }
            } else if (s instanceof Cubic cubic) {
                out.raw("C").point(cubic.lead()).raw(" ").point(cubic.trail()).raw(" ").point(cubic.to());
            } else {
                arc((Arc) s);
            }
        }
        if (path.isClosed()) {
            out.raw("Z");
        }
    }

    /** Arcs past a half circle are written in two, since their ends alone would fix them badly. */
    private void arc(Arc arc) {
        if (Math.abs(arc.bulge()) > 1 + 1e-9 && arc.between(0, 0.5) instanceof Arc first && arc.between(0.5, 1) instanceof Arc second) {
            arc(first);
            arc(second);
            return;
        }
        out.raw("A").number(arc.radius()).raw(" ").number(arc.radius()).raw(arc.bulge() > 0 ? " 0 0 1 " : " 0 0 0 ").point(arc.to());
    }

    /**
     * The letters are set a hundred times as large and scaled down, since viewers round small type; their
     * whole width is given, so that it is the same with another typeface.
     */
    @Override
    public void lettering(Picture.Lettering text, Transform onto) {
        Typeface face = Typeface.of(text.weight());
        double width = face.width(text.text(), text.size());
        Point start = onto.of(new Point(face.left(text), text.at().y()));
        out.raw("<text transform=\"matrix(");
        for (double part : new double[] {onto.a(), onto.b(), onto.c(), onto.d()}) {
            out.fine(part / TEXT_SCALE).raw(" ");
        }
        out.point(start).raw(")\" font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\" font-size=\"")
                .number(text.size() * TEXT_SCALE).raw("\"");
        if (width > 0) {
            out.raw(" textLength=\"").number(width * TEXT_SCALE).raw("\" lengthAdjust=\"spacingAndGlyphs\"");
        }
        attribute("fill", text.colour());
        if (text.weight() == Picture.Weight.BOLD) {
            attribute("stroke", text.colour());
            out.raw(" stroke-width=\"").number(text.size() * TEXT_SCALE * Typeface.BOLD_STROKE).raw("\"");
        }
        out.raw(" xml:space=\"preserve\">").escaped(text.text()).raw("</text>\n");
    }
}
