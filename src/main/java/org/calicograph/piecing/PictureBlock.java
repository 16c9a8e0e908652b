package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Lab;
import org.calicograph.colour.LinearRgb;
import org.calicograph.colour.Photo;
import org.calicograph.covering.DesignException;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.Underlay;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.seams.FewestSections;
import org.calicograph.seams.Sections;
import org.calicograph.seams.Unit;

/**
 * A picture drawn in straight lines, to be pieced on foundations. Lines are drawn one after another; an end that
 * lies on another line stays there; any other, and the first of two that meet end to end, is carried on to the first line that was there before it, or to the edge, so that every patch
 * is whole. After each line it is known whether the
 * picture can still be sewn with straight seams, and in how few sections.
 *
 * @param lines  as they were drawn, in inches from the top left corner; they are carried on when the picture is read
 * @param photo  what it was drawn over, filling the whole picture; its values choose those of the patches
 * @param values how many values the patches have, 2 to 12
 */
public record PictureBlock(String name, Length width, Length height, List<Line> lines, Optional<Photo> photo, int values) implements Drawable {

    /** An end as near as this to a line or the edge is meant to lie on it. */
    private static final double MEANT = 1.0 / 16;
    private static final double SAME = 1e-6;
    /** Different parts looked at for a line that is not the last. */
    private static final int QUICK = 3_000;

    /** @throws DesignException if the picture has no size, a line begins or ends outside it or has no length, or the values are not 2 to 12 */
    public PictureBlock {
        lines = List.copyOf(lines);
        if (!width.isPositive() || !height.isPositive() || values < 2 || values > 12) {
            throw new DesignException("a picture " + width + " x " + height + " in " + values + " values can't be drawn; use lengths above 0 and 2 to 12 values");
        }
        Box inside = new Box(-MEANT, -MEANT, width.inInches() + MEANT, height.inInches() + MEANT);
        for (int i = 0; i < lines.size(); i++) {
            Line l = lines.get(i);
            if (!inside.contains(l.from()) || !inside.contains(l.to()) || l.length() < MEANT) {
                throw new DesignException(String.format(Locale.ROOT, "line %d, from (%.4g, %.4g) to (%.4g, %.4g), ", i + 1, l.from().x(), l.from().y(), l.to().x(), l.to().y())
                        + (l.length() < MEANT ? "is too short to be seen; draw it 1/16 in or longer" : "leaves the picture, which is " + width + " x " + height + "; keep both ends in it"));
            }
        }
    }

    /** A picture without lines, in four values. */
    public static PictureBlock of(String name, Length width, Length height) {
        return new PictureBlock(name, width, height, List.of(), Optional.empty(), 4);
    }

    /** Drawn over a photograph, which is stretched to fill the picture. */
    public PictureBlock over(Photo underlay) {
        return new PictureBlock(name, width, height, lines, Optional.of(underlay), values);
    }

    /** So many values of cloth. */
    public PictureBlock inValues(int number) {
        return new PictureBlock(name, width, height, lines, photo, number);
    }

    /** One more line, in inches from the top left corner. */
    public PictureBlock line(double x1, double y1, double x2, double y2) {
        List<Line> all = new ArrayList<>(lines);
        all.add(new Line(new Point(x1, y1), new Point(x2, y2)));
        return new PictureBlock(name, width, height, all, photo, values);
    }

    /** Lines from point to point. */
    public PictureBlock path(Point... corners) {
        PictureBlock with = this;
        for (int i = 1; i < corners.length; i++) {
            with = with.line(corners[i - 1].x(), corners[i - 1].y(), corners[i].x(), corners[i].y());
        }
        return with;
    }

    /** The picture without its last line. */
    public PictureBlock withoutLast() {
        return new PictureBlock(name, width, height, lines.subList(0, Math.max(0, lines.size() - 1)), photo, values);
    }

    /** The lines carried on to where they end, the four edges first. */
    private List<Segment> carried() {
        double w = width.inInches();
        double h = height.inInches();
        List<Segment> all = new ArrayList<>(List.of(new Line(Point.of(0, 0), Point.of(w, 0)), new Line(Point.of(w, 0), Point.of(w, h)),
                new Line(Point.of(w, h), Point.of(0, h)), new Line(Point.of(0, h), Point.of(0, 0))));
        for (int i = 0; i < lines.size(); i++) {
            Line l = lines.get(i);
            int number = i + 1;
            Point u = l.to().minus(l.from()).times(1 / l.length());
            double before = onOther(i, l.from(), u.times(-1)).or(() -> end(l.from(), u.times(-1), all)).orElseThrow(() -> lost(number));
            double after = onOther(i, l.to(), u).or(() -> end(l.to(), u, all)).orElseThrow(() -> lost(number));
            Line whole = new Line(l.from().minus(u.times(before)), l.to().plus(u.times(after)));
            for (int k = 0; k < all.size(); k++) {
                Segment s = all.get(k);
                Point along = s.to().minus(s.from()).times(1 / s.length());
                boolean parallel = Math.abs(along.cross(u)) < 1e-4 && Math.abs(along.cross(l.from().minus(s.from()))) < MEANT / 2;
                double middle = along.dot(l.from().towards(l.to(), 0.5).minus(s.from()));
                if (parallel && middle > 0 && middle < s.length()) {
                    throw new DesignException("line " + number + " lies on " + (k < 4 ? "the edge" : "line " + (k - 3)) + "; leave it out, or move it");
                }
            }
            all.add(whole);
        }
        return all;
    }

    private DesignException lost(int number) {
        return new DesignException("line " + number + " meets neither a line nor the edge; draw it inside the picture");
    }

    /** How far an end is from another line as that was drawn, before or after it, where it is meant to lie on it. */
    private Optional<Double> onOther(int own, Point at, Point heading) {
        Optional<Double> best = Optional.empty();
        for (int j = 0; j < lines.size(); j++) {
            Point from = lines.get(j).from();
            Point along = lines.get(j).to().minus(from);
            double turn = heading.cross(along);
            double slack = MEANT / along.norm();
            if (j != own && Math.abs(turn) > 1e-6 * along.norm()) {
                double ahead = from.minus(at).cross(along) / turn;
                double place = from.minus(at).cross(heading) / turn;
                // Where two meet end to end the one drawn first is carried on, so that a corner leaves no patch with a notch.
                boolean cornered = own < j && (place < slack || place > 1 - slack);
                if (!cornered && Math.abs(ahead) <= MEANT && place > -slack && place < 1 + slack && (best.isEmpty() || Math.abs(ahead) < Math.abs(best.get()))) {
                    best = Optional.of(ahead);
                }
            }
        }
        return best;
    }

    /** How far an end is carried on: to the nearest line ahead; back to one that it is meant to lie on. */
    private static Optional<Double> end(Point at, Point heading, List<Segment> lines) {
        Optional<Double> best = Optional.empty();
        for (Segment s : lines) {
            Point along = s.to().minus(s.from());
            double turn = heading.cross(along);
            if (Math.abs(turn) < 1e-9 * along.norm()) {
                continue;
            }
            Point to = s.from().minus(at);
            double ahead = to.cross(along) / turn;
            double place = to.cross(heading) / turn;
            if (ahead > -MEANT - SAME && place > -SAME && place < 1 + SAME && (best.isEmpty() || ahead < best.get())) {
                best = Optional.of(ahead);
            }
        }
        return best;
    }

    List<Unit.Single> patches() {
        List<Region> faces = Arrangement.ofSegments(carried()).faces();
        List<Unit.Single> all = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            all.add(new Unit.Single(String.valueOf(i + 1), faces.get(i)));
        }
        return all;
    }

    /** True if it can be sewn with straight seams from edge to edge. */
    public boolean isSewable() {
        return FewestSections.of(patches(), QUICK).isPresent();
    }

    /**
     * The picture as a block. Its patches are named by section and number, A1 first, in the order of sewing; their roles are {@code value 1}, the
     * darkest, to the lightest, by the photograph, or all {@code value 1} where there is none.
     *
     * @throws DesignException if it can't be sewn with straight seams, naming the patches in whose midst no line runs through
     */
    public Block block() {
        List<Unit.Single> faces = patches();
        FewestSections.Found found = FewestSections.of(faces).orElseThrow(() -> new DesignException(words()));
        List<Patch> patches = new ArrayList<>();
        List<Double> light = new ArrayList<>();
        faces.forEach(f -> light.add(lightness(f.shape())));
        double least = light.stream().mapToDouble(d -> d).min().orElse(0);
        double most = light.stream().mapToDouble(d -> d).max().orElse(100);
        for (int s = 0; s < found.sections().size(); s++) {
            List<Unit.Single> section = found.sections().get(s).patches();
            for (int n = 0; n < section.size(); n++) {
                double own = light.get(Integer.parseInt(section.get(n).id()) - 1);
                int value = most - least < 1e-9 ? 0 : Math.min(values - 1, (int) ((own - least) / (most - least) * values));
                Colour grey = new Lab(most - least < 1e-9 ? 60 : least + (most - least) * (value + 0.5) / values, 0, 0, Lab.White.D65).xyz().linear().clipped();
                patches.add(new Patch(FewestSections.letter(s) + (n + 1), Role.of("value " + (value + 1)), Fabric.of("value " + (value + 1), grey), section.get(n).shape()));
            }
        }
        return Block.of(name, Region.rectangle(width, height), patches);
    }

    /** The mean value of the photograph under a patch; 60 where there is none. */
    private double lightness(Region patch) {
        if (photo.isEmpty()) {
            return 60;
        }
        Photo p = photo.get();
        Box b = patch.bounds();
        double sx = p.width() / width.inInches();
        double sy = p.height() / height.inInches();
        double step = Math.max(1, Math.sqrt(b.width() * sx * b.height() * sy / 2_000));
        double sum = 0;
        int count = 0;
        for (double y = b.top() * sy + step / 2; y < b.bottom() * sy; y += step) {
            for (double x = b.left() * sx + step / 2; x < b.right() * sx; x += step) {
                if (patch.contains(new Point(x / sx, y / sy))) {
                    sum += Colour.packed(p.pixel((int) Math.min(p.width() - 1, x), (int) Math.min(p.height() - 1, y)) & 0xFFFFFF).xyz().y();
                    count++;
                }
            }
        }
        double y = count == 0 ? p.meanColour().xyz().y() : sum / count;
        return new LinearRgb(y, y, y).clipped().value();
    }

    /** The foundations, mirrored, with a seam allowance of 1/4 in. */
    public Foundation foundation() {
        return Foundation.of(block());
    }

    /** One sentence: patches, sections, whether they are the fewest; or what stands in the way. */
    public String words() {
        List<Unit.Single> faces = patches();
        return FewestSections.of(faces).map(f -> sewn(faces.size(), f)).orElseGet(() -> stands(faces));
    }

    private static String sewn(int patches, FewestSections.Found f) {
        int n = f.sections().size();
        return patches + (patches == 1 ? " patch in " : " patches in ") + n + (n == 1 ? " section" : " sections") + (n == 1 ? ""
                : f.isProved() ? ", the fewest there can be" : ", not proved to be the fewest; at least " + f.atLeast() + " are needed");
    }

    private static String stands(List<Unit.Single> faces) {
        List<Unit.Single> stuck = FewestSections.stuck(faces);
        String where = stuck.stream().sorted(Comparator.comparing((Unit.Single s) -> Integer.parseInt(s.id()))).map(s -> s.id()).collect(Collectors.joining(", "));
        return "it can't be sewn with straight seams: no line runs right through patches " + where + "; carry one of the lines among them on to the far side";
    }

    /** What each line did: where it ends, and what the picture was worth with it. */
    public Table table() {
        Table table = Table.of("Line by line", "line", "from", "to", "patches", "with it the picture is");
        for (int i = 1; i <= lines.size(); i++) {
            PictureBlock so = new PictureBlock(name, width, height, lines.subList(0, i), photo, values);
            List<Segment> all = so.carried();
            Segment own = all.get(all.size() - 1);
            List<Unit.Single> faces = so.patches();
            table = table.row(i, place(own.from()), place(own.to()), faces.size(),
                    FewestSections.of(faces, QUICK).map(f -> f.sections().size() + (f.sections().size() == 1 ? " section" : " sections")).orElseGet(() -> stands(faces)));
        }
        return table;
    }

    private static String place(Point p) {
        return String.format(Locale.ROOT, "%.2f, %.2f", Math.abs(p.x()) < 0.005 ? 0 : p.x(), Math.abs(p.y()) < 0.005 ? 0 : p.y());
    }

    /** The drawing over its photograph, patches lettered and numbered where it can be sewn, those in the way marked where it can't. */
    public Picture picture() {
        List<Unit.Single> faces = patches();
        Optional<FewestSections.Found> found = FewestSections.of(faces);
        List<Picture> parts = new ArrayList<>();
        photo.ifPresent(p -> parts.add(Underlay.of(p, width).picture().transformed(Transform.scale(1, height.inInches() / Underlay.of(p, width).height().inInches()))));
        double size = Math.min(width.inInches(), height.inInches()) / 40;
        List<Unit.Single> stuck = found.isPresent() ? List.of() : FewestSections.stuck(faces);
        for (Unit.Single s : stuck) {
            parts.add(Picture.of(s.shape()).filled(Colour.hex("#e8b8a8")));
        }
        for (Unit.Single s : faces) {
            parts.add(new Picture.Shape(s.shape().paths(), Paint.NONE, Pen.of(Colour.hex("#2b2b2b"), size / 12)));
        }
        if (found.isPresent()) {
            for (int k = 0; k < found.get().sections().size(); k++) {
                List<Unit.Single> section = found.get().sections().get(k).patches();
                parts.add(new Picture.Shape(outline(section), Paint.NONE, Pen.of(Colour.hex("#b5452c"), size / 4)));
                for (int n = 0; n < section.size(); n++) {
                    parts.add(label(FewestSections.letter(k) + (n + 1), section.get(n).shape(), size));
                }
            }
        } else {
            faces.forEach(s -> parts.add(label(s.id(), s.shape(), size)));
        }
        return Picture.group(parts);
    }

    private static List<Path> outline(List<Unit.Single> section) {
        return Foundation.outline(new Sections.Section(section)).paths();
    }

    private static Picture label(String text, Region shape, double size) {
        double room = Math.min(shape.bounds().width(), shape.bounds().height());
        double own = Math.min(size, Math.max(size / 2, room / 3));
        return new Picture.Lettering(text, shape.inside().plus(0, own * 0.35), own, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, Colour.hex("#1c2833"));
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(picture(), name + ": " + words()), Exhibit.of(table()));
    }
}
