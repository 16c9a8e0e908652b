package org.calicograph.wire;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Cloth;
import org.calicograph.fabric.Colour;
import org.calicograph.fabric.Photo;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * Exhibits as bytes and back, with nothing lost: the value read equals the value written.
 *
 * <p>A path writes each point once. A pen, a paint or a text that has been written before is written as
 * its number. Numbers are big-endian doubles.
 */
public final class ExhibitFormat {

    private static final int NOTHING = 0, DRAWN = 1, TABLED = 2, WORDS = 3, SEVERAL = 4;
    private static final int SHAPE = 0, LETTERING = 1, GROUP = 2;
    private static final int LINE = 0, ARC = 1, CUBIC = 2;
    private static final int MOST_DEEP = 2000;

    private ExhibitFormat() { }

    public static byte[] bytes(Exhibit exhibit) {
        Writer writer = new Writer();
        writer.exhibit(exhibit, 0);
        return writer.bytes();
    }

    /** @throws IOException if the bytes are not an exhibit, whole and with nothing behind it */
    public static Exhibit exhibit(byte[] bytes) throws IOException {
        try {
            ByteBuffer in = ByteBuffer.wrap(bytes);
            Exhibit exhibit = new Reader(in).exhibit(0);
            if (in.hasRemaining()) {
                throw new IOException(in.remaining() + " bytes too many behind an exhibit");
            }
            return exhibit;
        } catch (RuntimeException e) {
            throw new IOException("these " + bytes.length + " bytes are not an exhibit: " + e, e);
        }
    }

    private static final class Writer {

        private ByteBuffer out = ByteBuffer.allocate(1 << 14);
        private final Map<Object, Integer> seen = new HashMap<>();

        byte[] bytes() {
            byte[] all = new byte[out.position()];
            out.flip();
            out.get(all);
            return all;
        }

        private void room(int bytes) {
            if (out.remaining() < bytes) {
                ByteBuffer more = ByteBuffer.allocate(Math.max(out.capacity() * 2, out.position() + bytes));
                out.flip();
                out = more.put(out);
            }
        }

        private void tag(int tag) {
            room(1);
            out.put((byte) tag);
        }

        private void count(int n) {
            room(4);
            out.putInt(n);
        }

        private void number(double value) {
            room(8);
            out.putDouble(value);
        }

        /** True if the value is new and must be written behind its number. */
        private boolean isNew(Object value) {
            Integer number = seen.putIfAbsent(value, seen.size());
            count(number == null ? seen.size() - 1 : number);
            return number == null;
        }

        private void text(String text) {
            if (isNew(text)) {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                count(bytes.length);
                room(bytes.length);
                out.put(bytes);
            }
        }

        void exhibit(Exhibit exhibit, int depth) {
            shallow(depth);
            if (exhibit instanceof Exhibit.Drawn drawn) {
                tag(DRAWN);
                text(drawn.caption());
                picture(drawn.picture(), depth + 1);
            } else if (exhibit instanceof Exhibit.Tabled tabled) {
                tag(TABLED);
                table(tabled.table());
            } else if (exhibit instanceof Exhibit.Words words) {
                tag(WORDS);
                text(words.text());
            } else if (exhibit instanceof Exhibit.Several several) {
                tag(SEVERAL);
                count(several.parts().size());
                several.parts().forEach(part -> exhibit(part, depth + 1));
            } else {
                tag(NOTHING);
            }
        }

        private void table(Table table) {
            text(table.title());
            count(table.columns().size());
            table.columns().forEach(this::text);
            count(table.rows().size());
            for (List<Table.Entry> row : table.rows()) {
                for (Table.Entry entry : row) {
                    text(entry.text());
                    number(entry.value());
                }
            }
        }

        private void picture(Picture picture, int depth) {
            shallow(depth);
            if (picture instanceof Picture.Shape shape) {
                tag(SHAPE);
                paint(shape.fill());
                pen(shape.pen());
                count(shape.paths().size());
                shape.paths().forEach(this::path);
            } else if (picture instanceof Picture.Lettering lettering) {
                tag(LETTERING);
                text(lettering.text());
                point(lettering.at());
                number(lettering.size());
                tag(lettering.anchor().ordinal());
                tag(lettering.weight().ordinal());
                colour(lettering.colour());
            } else if (picture instanceof Picture.Group group) {
                tag(GROUP);
                transform(group.transform());
                tag(group.label().isPresent() ? 1 : 0);
                group.label().ifPresent(label -> {
                    text(label.id());
                    text(label.title());
                });
                count(group.parts().size());
                group.parts().forEach(part -> picture(part, depth + 1));
            }
        }

        private void transform(Transform t) {
            if (t.equals(Transform.IDENTITY)) {
                tag(0);
                return;
            }
            tag(1);
            number(t.a());
            number(t.b());
            number(t.c());
            number(t.d());
            number(t.e());
            number(t.f());
        }

        private void paint(Paint paint) {
            if (paint instanceof Paint.Flat flat) {
                tag(1);
                if (isNew(flat)) {
                    colour(flat.colour());
                    number(flat.opacity());
                }
            } else if (paint instanceof Paint.Printed printed) {
                tag(2);
                if (isNew(printed)) {
                    photo(printed.cloth().photo());
                    number(printed.cloth().repeat().inInches());
                    transform(printed.lay());
                }
            } else {
                tag(0);
            }
        }

        private void photo(Photo photo) {
            if (isNew(photo)) {
                count(photo.width());
                count(photo.height());
                room(4 * photo.count());
                for (int i = 0; i < photo.count(); i++) {
                    out.putInt(photo.pixel(i));
                }
            }
        }

        private void pen(Pen pen) {
            if (isNew(pen)) {
                colour(pen.colour());
                number(pen.width());
                count(pen.dashes().size());
                pen.dashes().forEach(this::number);
            }
        }

        private void colour(Colour colour) {
            number(colour.red());
            number(colour.green());
            number(colour.blue());
        }

        private void point(Point point) {
            number(point.x());
            number(point.y());
        }

        private void path(Path path) {
            List<Segment> segments = path.segments();
            count(segments.size());
            point(path.start());
            for (Segment segment : segments) {
                if (segment instanceof Line) {
                    tag(LINE);
                } else if (segment instanceof Arc arc) {
                    tag(ARC);
                    number(arc.bulge());
                } else {
                    Cubic cubic = (Cubic) segment;
                    tag(CUBIC);
                    point(cubic.lead());
                    point(cubic.trail());
                }
                point(segment.to());
            }
        }
    }

    private static void shallow(int depth) {
        if (depth > MOST_DEEP) {
            throw new IllegalArgumentException("a picture of groups within groups more than " + MOST_DEEP
                    + " deep can't be shown; build it flatter, with Picture.group of a list");
        }
    }

    private static final class Reader {

        private final ByteBuffer in;
        private final List<Object> seen = new ArrayList<>();

        Reader(ByteBuffer in) {
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
            shallow(depth);
            int tag = in.get();
            switch (tag) {
                case NOTHING:
                    return Exhibit.NOTHING;
                case DRAWN:
                    String caption = text();
                    return Exhibit.of(picture(depth + 1), caption);
                case TABLED:
                    return Exhibit.of(table());
                case WORDS:
                    return Exhibit.words(text());
                case SEVERAL:
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
            shallow(depth);
            int tag = in.get();
            switch (tag) {
                case SHAPE: {
                    Paint fill = paint();
                    Pen pen = pen();
                    int n = count();
                    List<Path> paths = new ArrayList<>(n);
                    for (int i = 0; i < n; i++) {
                        paths.add(path());
                    }
                    return new Picture.Shape(paths, fill, pen);
                }
                case LETTERING:
                    return new Picture.Lettering(text(), point(), in.getDouble(), Picture.Anchor.values()[in.get()],
                            Picture.Weight.values()[in.get()], colour());
                case GROUP: {
                    Transform t = transform();
                    Optional<Picture.Label> label = in.get() == 0 ? Optional.empty() : Optional.of(new Picture.Label(text(), text()));
                    int n = count();
                    List<Picture> parts = new ArrayList<>(n);
                    for (int i = 0; i < n; i++) {
                        parts.add(picture(depth + 1));
                    }
                    return new Picture.Group(parts, t, label);
                }
                default:
                    throw new IllegalArgumentException("no picture has tag " + tag);
            }
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
                    case LINE -> next = new Line(from, point());
                    case ARC -> {
                        double bulge = in.getDouble();
                        next = new Arc(from, point(), bulge);
                    }
                    case CUBIC -> next = new Cubic(from, point(), point(), point());
                    default -> throw new IllegalArgumentException("no segment has this tag");
                }
                segments.add(next);
                from = next.to();
            }
            return new Path(segments);
        }
    }
}
