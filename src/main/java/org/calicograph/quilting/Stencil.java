package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A stencil to mark quilting lines through: slots along the lines, with bridges between them, so that the sheet holds together. Where lines
 * cross there is a bridge, and along a line one after every slot.
 *
 * @param lines  what is to be marked, in inches
 * @param slots  what is cut out, each a line within its slot
 * @param width  of a slot
 * @param bridge what is left standing between two slots, at least
 * @param sheet  the edge of the stencil
 */
public record Stencil(List<Path> lines, List<Path> slots, Length width, Length bridge, Box sheet) implements Drawable {

    private static final double ACCURACY = 2e-3;
    /** The longest slot to begin with, in inches; a longer one lets the sheet sag (common practice: 2 to 4 in). */
    private static final double LONGEST = 3;
    private static final double MARGIN = 0.75;

    public Stencil {
        lines = List.copyOf(lines);
        slots = List.copyOf(slots);
    }

    /** Slots of 1/8 in with bridges of 1/4 in: room for a chalk pencil (common practice). */
    public static Stencil of(List<Path> lines) {
        return of(lines, Length.inches(1, 8), Length.inches(1, 4));
    }

    /**
     * A stencil that holds together: slots are made shorter until it does.
     *
     * @throws IllegalArgumentException if there is no line, a width is not above 0, or lines lie so near that no sheet is left between them
     */
    public static Stencil of(List<Path> lines, Length width, Length bridge) {
        if (lines.isEmpty() || !width.isPositive() || !bridge.isPositive()) {
            throw new IllegalArgumentException("a stencil of " + lines.size() + " lines, slots " + width + " wide and bridges of " + bridge
                    + " can't be cut; give a line, and widths above 0");
        }
        List<Point> all = new ArrayList<>();
        lines.forEach(l -> all.addAll(l.flattened(ACCURACY)));
        Box sheet = Box.around(all).grownBy(MARGIN);
        for (double longest = LONGEST; longest > 0.2; longest *= 0.75) {
            Stencil tried = new Stencil(lines, slots(lines, width.inInches(), bridge.inInches(), longest), width, bridge, sheet);
            if (tried.isOne()) {
                return tried;
            }
        }
        throw new IllegalArgumentException("lines this near to one another leave no sheet between slots " + width + " wide; make the slots narrower, the bridges wider, or mark every other line");
    }

    private static List<Path> slots(List<Path> lines, double width, double bridge, double longest) {
        List<Path> slots = new ArrayList<>();
        List<Coordinate[]> flat = lines.stream().map(l -> Polygons.coordinates(l.flattened(ACCURACY))).toList();
        STRtree index = new STRtree();
        for (int l = 0; l < flat.size(); l++) {
            for (int i = 1; i < flat.get(l).length; i++) {
                index.insert(Polygons.FACTORY.createLineString(new Coordinate[] {flat.get(l)[i - 1], flat.get(l)[i]}).getEnvelopeInternal(), new int[] {l, i});
            }
        }
        double clear = width + bridge; // of middle lines: a half slot on either side of the bridge
        for (int l = 0; l < flat.size(); l++) {
            Coordinate[] line = flat.get(l);
            double whole = 0;
            for (int i = 1; i < line.length; i++) {
                whole += line[i - 1].distance(line[i]);
            }
            boolean closed = line[0].equals2D(line[line.length - 1]);
            int pieces = Math.max(1, (int) Math.ceil(whole / (Math.min(width, bridge) / 6)));
            double step = whole / pieces;
            List<Point> slot = new ArrayList<>();
            double slotted = 0;
            double bridged = bridge;
            for (int k = 0; k <= pieces; k++) {
                double along = step * k;
                Point at = at(line, along);
                boolean free = !isNear(index, flat, l, along, whole, at, clear) && !(closed && (along < bridge / 2 || along > whole - bridge / 2));
                if (slot.isEmpty() && free && bridged >= bridge) {
                    slot.add(at);
                    slotted = 0;
                } else if (slot.isEmpty()) {
                    bridged += step;
                } else if (free && slotted + step <= longest) {
                    slot.add(at);
                    slotted += step;
                } else {
                    keep(slot, slotted, width, slots);
                    slot = new ArrayList<>();
                    bridged = 2 * step;
                }
            }
            keep(slot, slotted, width, slots);
        }
        return slots;
    }

    /** A slot shorter than it is wide marks nothing. */
    private static void keep(List<Point> slot, double length, double width, List<Path> slots) {
        if (slot.size() > 1 && length >= width) {
            slots.add(Path.through(slot));
        }
    }

    private static Point at(Coordinate[] line, double along) {
        double left = along;
        for (int i = 1; i < line.length; i++) {
            double length = line[i - 1].distance(line[i]);
            if (left <= length || i == line.length - 1) {
                double t = length == 0 ? 0 : Math.min(1, left / length);
                return new Point(line[i - 1].x + (line[i].x - line[i - 1].x) * t, line[i - 1].y + (line[i].y - line[i - 1].y) * t);
            }
            left -= length;
        }
        return new Point(line[0].x, line[0].y);
    }

    /** True if another line, or a far part of the same one, comes too near for both to be slots; the one that was drawn first has its slot. */
    private static boolean isNear(STRtree index, List<Coordinate[]> flat, int own, double along, double whole, Point at, double clear) {
        org.locationtech.jts.geom.Envelope near = new org.locationtech.jts.geom.Envelope(at.x() - clear, at.x() + clear, at.y() - clear, at.y() + clear);
        Coordinate here = new Coordinate(at.x(), at.y());
        for (Object o : index.query(near)) {
            int[] place = (int[]) o;
            Coordinate a = flat.get(place[0])[place[1] - 1];
            Coordinate b = flat.get(place[0])[place[1]];
            if (place[0] > own || org.locationtech.jts.algorithm.Distance.pointToSegment(here, a, b) >= clear) {
                continue;
            }
            if (place[0] < own) {
                return true;
            }
            double there = 0;
            for (int i = 1; i < place[1]; i++) {
                there += flat.get(own)[i - 1].distance(flat.get(own)[i]);
            }
            double apart = Math.abs(there - along);
            boolean round = flat.get(own)[0].equals2D(flat.get(own)[flat.get(own).length - 1]);
            if ((round ? Math.min(apart, whole - apart) : apart) > 3 * clear && there < along) {
                return true;
            }
        }
        return false;
    }

    /** True if what is left of the sheet is in one piece. */
    private boolean isOne() {
        return !slots.isEmpty() && left().getNumGeometries() == 1;
    }

    /** The sheet less its slots. */
    Geometry left() {
        BufferParameters flat = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 2);
        List<Geometry> cut = new ArrayList<>();
        for (Path slot : slots) {
            cut.add(BufferOp.bufferOp(Polygons.FACTORY.createLineString(Polygons.coordinates(slot.flattened(ACCURACY))), width.inInches() / 2, flat));
        }
        return Polygons.difference(Polygons.of(Region.rectangle(sheet), ACCURACY), Polygons.union(cut));
    }

    /** At full size: the sheet's edge, and what is cut out. */
    public Picture picture() {
        List<Picture> parts = new ArrayList<>();
        parts.add(Picture.of(Region.rectangle(sheet)).filled(Paint.of(Colour.hex("#f3efe6"))).outlined(Pen.of(Colour.hex("#2b2b2b"), 0.02)));
        BufferParameters flat = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 2);
        for (Path slot : slots) {
            Geometry cut = BufferOp.bufferOp(Polygons.FACTORY.createLineString(Polygons.coordinates(slot.flattened(ACCURACY))), width.inInches() / 2, flat);
            Polygons.regions(cut).forEach(r -> parts.add(Picture.of(r).filled(Paint.of(Colour.WHITE)).outlined(Pen.of(Colour.hex("#24425c"), 0.015))));
        }
        return Picture.group(parts);
    }

    /** On paper, tiled, to be traced on to template plastic. */
    public List<Picture> pages(Paper paper) {
        return Tiling.on(paper).pages("Stencil", picture());
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(picture(), slots.size() + " slots " + width + " wide, bridges of " + bridge + " or more; the sheet holds together. Trace it on to template plastic"
                + " and cut the slots out on a mat, away from your hand; the makers' instructions for knife and plastic come first.");
    }
}
