package org.calicograph.wire;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;

/** Writes exhibits as {@link ExhibitFormat} says. */
final class ExhibitWriter {

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
        ExhibitFormat.shallow(depth);
        if (exhibit instanceof Exhibit.Drawn drawn) {
            tag(ExhibitFormat.DRAWN);
            text(drawn.caption());
            picture(drawn.picture(), depth + 1);
        } else if (exhibit instanceof Exhibit.Tabled tabled) {
            tag(ExhibitFormat.TABLED);
            table(tabled.table());
        } else if (exhibit instanceof Exhibit.Words words) {
            tag(ExhibitFormat.WORDS);
            text(words.text());
        } else if (exhibit instanceof Exhibit.Several several) {
            tag(ExhibitFormat.SEVERAL);
            count(several.parts().size());
            several.parts().forEach(part -> exhibit(part, depth + 1));
        } else {
            tag(ExhibitFormat.NOTHING);
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
        ExhibitFormat.shallow(depth);
        if (picture instanceof Picture.Shape shape) {
            tag(ExhibitFormat.SHAPE);
            paint(shape.fill());
            pen(shape.pen());
            count(shape.paths().size());
            shape.paths().forEach(this::path);
        } else if (picture instanceof Picture.Lettering lettering) {
            tag(ExhibitFormat.LETTERING);
            text(lettering.text());
            point(lettering.at());
            number(lettering.size());
            tag(lettering.anchor().ordinal());
            tag(lettering.weight().ordinal());
            colour(lettering.colour());
        } else if (picture instanceof Picture.Group group) {
            tag(ExhibitFormat.GROUP);
            transform(group.transform());
            tag(group.label().isPresent() ? 1 : 0);
            group.label().ifPresent(label -> {
                text(label.id());
                text(label.title());
            });
            tag(group.tag().map(t -> t.role().ordinal() + 1).orElse(0));
            group.tag().ifPresent(t -> {
                text(t.said());
                tag(t.continued() ? 1 : 0);
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
                tag(ExhibitFormat.LINE);
            } else if (segment instanceof Arc arc) {
                tag(ExhibitFormat.ARC);
                number(arc.bulge());
            } else {
                Cubic cubic = (Cubic) segment;
                tag(ExhibitFormat.CUBIC);
                point(cubic.lead());
                point(cubic.trail());
            }
            point(segment.to());
        }
    }
}
