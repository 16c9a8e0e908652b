package org.calicograph.drawing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.SvgPathData;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Outlines drawn elsewhere and saved as SVG (W3C), to be scaled to a size and used as patches, shapes to
 * lay on a ground, or quilting lines.
 *
 * <p>Taken from a file are its paths, rectangles, circles, ellipses, polygons, polylines and lines with
 * their transforms; what is only defined for later use, lettering and pictures are left out, colours too.
 *
 * @param name  what it is called
 * @param paths one or more, open or closed
 */
public record SvgOutline(String name, List<Path> paths) implements Drawable {

    public SvgOutline {
        paths = List.copyOf(paths);
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("'" + name + "' draws nothing; give it a path, rectangle, circle, ellipse, polygon or line");
        }
    }

    /** From path data alone: what stands in a path's d. */
    public static SvgOutline ofPath(String data) {
        return new SvgOutline("outline", SvgPathData.read(data));
    }

    /** @throws IllegalArgumentException naming the file and the repair, if it can't be read or is no SVG in order */
    public static SvgOutline read(java.nio.file.Path file) {
        try {
            return of(file.getFileName().toString(), Files.readAllBytes(file));
        } catch (IOException e) {
            throw new IllegalArgumentException("the outline '" + file + "' can't be read; check that it is there and may be read", e);
        }
    }

    /** From the text of an SVG file. */
    public static SvgOutline of(String svg) {
        return of("outline", svg.getBytes(StandardCharsets.UTF_8));
    }

    private static SvgOutline of(String name, byte[] svg) {
        Element root;
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature(javax.xml.XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setExpandEntityReferences(false);
            factory.setNamespaceAware(true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            root = builder.parse(new ByteArrayInputStream(svg)).getDocumentElement();
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new IllegalArgumentException("'" + name + "' is no XML in order: " + e.getMessage() + "; save it again as SVG", e);
        }
        if (!"svg".equals(root.getLocalName())) {
            throw new IllegalArgumentException("'" + name + "' is XML of another kind, <" + root.getNodeName() + ">; save it as SVG");
        }
        List<Path> paths = new ArrayList<>();
        walk(root, Transform.IDENTITY, paths);
        return new SvgOutline(name, paths);
    }

    private static void walk(Element element, Transform around, List<Path> into) {
        Transform t = SvgShape.transform(element).then(around);
        for (Path path : SvgShape.paths(element)) {
            into.add(path.transformed(t));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner && !SvgShape.isKeptBack(inner)) {
                walk(inner, t, into);
            }
        }
    }

    /** The smallest upright box that holds it. */
    public Box bounds() {
        return paths.stream().map(Path::bounds).reduce(Box::union).orElseThrow();
    }

    /** The outline moved, turned, mirrored or made larger. */
    public SvgOutline transformed(Transform t) {
        return new SvgOutline(name, paths.stream().map(p -> p.transformed(t)).toList());
    }

    /** As wide as asked, proportions kept, its top left corner at the origin. */
    public SvgOutline scaledTo(Length width) {
        Box box = bounds();
        if (!width.isPositive() || !(box.width() > 0)) {
            throw new IllegalArgumentException("'" + name + "' is " + box.width() + " wide in the file and can't be made " + width
                    + " wide; use a width above 0 and an outline that is no upright line");
        }
        return transformed(Transform.move(-box.left(), -box.top()).then(Transform.scale(width.inInches() / box.width())));
    }

    /**
     * What the closed paths enclose, by the even-odd rule: a path within another is its hole, one within
     * that hole a region again. The largest comes first.
     */
    public List<Region> regions() {
        List<Region> rings = new ArrayList<>();
        for (Path path : paths) {
            if (path.isClosed() && Math.abs(path.signedArea()) > 1e-9) {
                rings.add(Region.of(path));
            }
        }
        rings.sort(Comparator.comparingDouble((Region r) -> -r.area().squareInches()));
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < rings.size(); i++) {
            if (depth(rings, i) % 2 == 0) {
                List<Path> holes = new ArrayList<>();
                for (int j = i + 1; j < rings.size(); j++) {
                    if (depth(rings, j) == depth(rings, i) + 1 && rings.get(i).contains(rings.get(j).inside())) {
                        holes.add(rings.get(j).outer());
                    }
                }
                regions.add(new Region(rings.get(i).outer(), holes));
            }
        }
        return List.copyOf(regions);
    }

    private static int depth(List<Region> rings, int index) {
        int depth = 0;
        for (int i = 0; i < index; i++) {
            depth += rings.get(i).contains(rings.get(index).inside()) ? 1 : 0;
        }
        return depth;
    }

    /** The largest region. */
    public Region region() {
        return regions().stream().findFirst().orElseThrow(() ->
                new IllegalArgumentException("'" + name + "' has no closed outline; close its paths with Z"));
    }

    @Override
    public Exhibit show() {
        Box box = bounds();
        double pen = Math.max(Math.max(box.width(), box.height()) / 200, 1e-3);
        return Exhibit.of(new Picture.Shape(paths, Paint.NONE, Pen.of(Colour.hex("#24425c"), pen)),
                name + ", " + Length.inches(box.width()) + " x " + Length.inches(box.height()));
    }
}
