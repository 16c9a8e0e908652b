package org.calicograph.wire;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.Tag;
import org.calicograph.fabric.Cloth;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/** Reads what {@link ExhibitWriter} wrote. */
final class ExhibitReader {

    private final ByteBuffer in;
    private final List<Object> seen = new ArrayList<>();

    ExhibitReader(ByteBuffer in) {
        this.in = in;
    }

    private int count() {
        int n = in.getInt();
        if (n < 0 || n > in.remaining()) {
            throw new IllegalArgumentException(n + " things in " + in.remaining() + " bytes");
        }
        return n;
    }

    private <T> T remembered(java.util.function.Supplier<T> fresh, Class<T> kind) {
        int number = in.getInt();
        if (number < seen.size()) {
            return kind.cast(seen.get(number));
        }
        int place = seen.size();
        seen.add(null);
        T value = fresh.get();
        seen.set(place, value);
        return value;
    }

    private String text() {
        return remembered(() -> {
            byte[] bytes = new byte[count()];
            in.get(bytes);
            return new String(bytes, StandardCharsets.UTF_8);
        }, String.class);
    }

    Exhibit exhibit(int depth) {
        ExhibitFormat.shallow(depth);
        int tag = in.get();
        switch (tag) {
            case ExhibitFormat.NOTHING:
                return Exhibit.NOTHING;
            case ExhibitFormat.DRAWN:
                String caption = text();
                return Exhibit.of(picture(depth + 1), caption);
            case ExhibitFormat.TABLED:
                return Exhibit.of(table());
            case ExhibitFormat.WORDS:
                return Exhibit.words(text());
            case ExhibitFormat.SEVERAL:
                int n = count();
                List<Exhibit> parts = new ArrayList<>(n);
                for (int i = 0; i < n; i++) {
                    parts.add(exhibit(depth + 1));
                }
                return new Exhibit.Several(parts);
            default:
                throw new IllegalArgumentException("no exhibit has tag " + tag);
        }
    }

    private Table table() {
        String title = text();
        int columns = count();
        List<String> names = new ArrayList<>(columns);
        for (int i = 0; i < columns; i++) {
            names.add(text());
        }
        int rows = in.getInt();
        List<List<Table.Entry>> all = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            List<Table.Entry> row = new ArrayList<>(columns);
            for (int c = 0; c < columns; c++) {
                row.add(new Table.Entry(text(), in.getDouble()));
            }
            all.add(row);
        }
        return new Table(title, names, all);
    }

    private Picture picture(int depth) {
        ExhibitFormat.shallow(depth);
        int tag = in.get();
        switch (tag) {
            case ExhibitFormat.SHAPE: {
                Paint fill = paint();
                Pen pen = pen();
                int n = count();
                List<Path> paths = new ArrayList<>(n);
                for (int i = 0; i < n; i++) {
                    paths.add(path());
                }
                return new Picture.Shape(paths, fill, pen);
            }
            case ExhibitFormat.LETTERING:
                return new Picture.Lettering(text(), point(), in.getDouble(), Picture.Anchor.values()[in.get()],
                        Picture.Weight.values()[in.get()], colour());
            case ExhibitFormat.GROUP: {
                Transform t = transform();
                Optional<Picture.Label> label = in.get() == 0 ? Optional.empty() : Optional.of(new Picture.Label(text(), text()));
                Optional<Tag> part = part(in.get());
                int n = count();
                List<Picture> parts = new ArrayList<>(n);
                for (int i = 0; i < n; i++) {
                    parts.add(picture(depth + 1));
                }
                return new Picture.Group(parts, t, label, part);
            }
            default:
                throw new IllegalArgumentException("no picture has tag " + tag);
        }
    }

    private Optional<Tag> part(int role) {
        if (role < 0 || role > Tag.Role.values().length) {
            throw new IllegalArgumentException("no part of a page has role " + role);
        }
        return role == 0 ? Optional.empty() : Optional.of(new Tag(Tag.Role.values()[role - 1], text(), in.get() != 0));
    }

    private Transform transform() {
        return in.get() == 0 ? Transform.IDENTITY : new Transform(in.getDouble(), in.getDouble(), in.getDouble(),
                in.getDouble(), in.getDouble(), in.getDouble());
    }

    private Photo photo() {
        return remembered(() -> {
            int width = in.getInt();
            int height = in.getInt();
            if (width < 1 || height < 1 || (long) width * height > in.remaining() / 4) {
                throw new IllegalArgumentException("a photograph of " + width + " x " + height + " pixels in " + in.remaining() + " bytes");
            }
            int[] pixels = new int[width * height];
            in.asIntBuffer().get(pixels);
            in.position(in.position() + 4 * pixels.length);
            return Photo.of(width, height, pixels);
        }, Photo.class);
    }

    private Paint paint() {
        return switch (in.get()) {
            case 0 -> Paint.NONE;
            case 1 -> remembered(() -> new Paint.Flat(colour(), in.getDouble()), Paint.Flat.class);
            default -> remembered(() -> new Paint.Printed(new Cloth(photo(), Length.inches(in.getDouble())), transform()), Paint.Printed.class);
        };
    }

    private Pen pen() {
        return remembered(() -> {
            Colour colour = colour();
            double width = in.getDouble();
            int n = count();
            List<Double> dashes = new ArrayList<>(n);
            for (int i = 0; i < n; i++) {
                dashes.add(in.getDouble());
            }
            return new Pen(colour, width, dashes);
        }, Pen.class);
    }

    private Colour colour() {
        return new Colour(in.getDouble(), in.getDouble(), in.getDouble());
    }

    private Point point() {
        return new Point(in.getDouble(), in.getDouble());
    }

    private Path path() {
        int n = count();
        Point from = point();
        List<Segment> segments = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            Segment next;
            switch (in.get()) {
                case ExhibitFormat.LINE -> next = new Line(from, point());
                case ExhibitFormat.ARC -> {
                    double bulge = in.getDouble();
                    next = new Arc(from, point(), bulge);
                }
                case ExhibitFormat.CUBIC -> next = new Cubic(from, point(), point(), point());
                default -> throw new IllegalArgumentException("no segment has this tag");
            }
            segments.add(next);
            from = next.to();
        }
        return new Path(segments);
    }
}
