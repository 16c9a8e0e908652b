package org.calicograph.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.Tag;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.PathPen;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** What is read equals what was written. */
class ExhibitFormatLaws {

    @Property(tries = 300, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void an_exhibit_comes_back_equal(@ForAll("exhibits") Exhibit exhibit) throws IOException {
        assertThat(ExhibitFormat.exhibit(ExhibitFormat.bytes(exhibit))).isEqualTo(exhibit);
    }

    @Property(tries = 300, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void bytes_cut_short_are_refused(@ForAll("exhibits") Exhibit exhibit, @ForAll int where) {
        byte[] bytes = ExhibitFormat.bytes(exhibit);
        byte[] cut = Arrays.copyOf(bytes, Math.floorMod(where, bytes.length));
        assertThatThrownBy(() -> ExhibitFormat.exhibit(cut)).isInstanceOf(IOException.class);
    }

    @Property(tries = 500)
    void noise_is_refused_or_read_but_never_breaks_the_reader(@ForAll byte[] noise) {
        try {
            assertThat(ExhibitFormat.exhibit(noise)).isNotNull();
        } catch (IOException refused) {
            assertThat(refused).hasMessageContaining("bytes");
        }
    }

    @Example
    void a_pen_used_a_thousand_times_is_written_once() {
        Picture one = Picture.of(Path.polygon(Point.of(0, 0), Point.of(1, 0), Point.of(0, 1)));
        List<Picture> many = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            many.add(one);
        }
        int size = ExhibitFormat.bytes(Exhibit.of(Picture.group(many))).length;
        // Four points of 16 bytes, three segments' tags and four counts each: not much over 100 bytes a triangle.
        assertThat(size).isLessThan(110_000);
    }

    @Provide
    Arbitrary<Exhibit> exhibits() {
        Arbitrary<Exhibit> plain = Arbitraries.oneOf(
                pictures().flatMap(p -> Arbitraries.strings().ofMaxLength(8).map(c -> Exhibit.of(p, c))),
                Arbitraries.strings().ofMaxLength(20).map(Exhibit::words), tables().map(Exhibit::of), Arbitraries.just(Exhibit.NOTHING));
        return Arbitraries.oneOf(plain, plain.list().ofMaxSize(4).map(Exhibit.Several::new));
    }

    private Arbitrary<Table> tables() {
        Arbitrary<Table.Entry> entries = Combinators.combine(Arbitraries.strings().ofMaxLength(5),
                Arbitraries.oneOf(numbers(), Arbitraries.just(Double.NaN))).as(Table.Entry::new);
        return Arbitraries.integers().between(0, 4).flatMap(n -> Combinators.combine(Arbitraries.strings().ofMaxLength(5),
                Arbitraries.strings().ofMaxLength(5).list().ofSize(n), entries.list().ofSize(n).list().ofMaxSize(5))
                .as((title, columns, rows) -> new Table(title, columns, rows)));
    }

    private Arbitrary<Double> numbers() {
        return Arbitraries.doubles().between(-1e4, 1e4);
    }

    private Arbitrary<Point> points() {
        return Combinators.combine(numbers(), numbers()).as(Point::new);
    }

    private Arbitrary<Colour> colours() {
        return Arbitraries.integers().between(0, 0xffffff).map(Colour::packed);
    }

    private Arbitrary<Path> paths() {
        Arbitrary<List<Point>> corners = points().list().ofMinSize(3).ofMaxSize(9).uniqueElements();
        return Combinators.combine(corners, Arbitraries.integers().between(0, 26), Arbitraries.doubles().between(0.1, 2)).as((all, kinds, bulge) -> {
            PathPen pen = Path.from(all.get(0));
            int kind = kinds;
            for (int i = 1; i < all.size(); i++) {
                switch (kind % 3) {
                    case 0 -> pen = pen.lineTo(all.get(i));
                    case 1 -> pen = pen.arcTo(all.get(i), bulge);
                    default -> pen = pen.curveTo(all.get(0), all.get(i - 1), all.get(i));
                }
                kind = kind / 3 + i;
            }
            return pen.open();
        });
    }

    private Arbitrary<Picture> pictures() {
        Arbitrary<Paint> paints = Arbitraries.oneOf(Arbitraries.just(Paint.NONE),
                Combinators.combine(colours(), Arbitraries.doubles().between(0, 1)).as(Paint.Flat::new));
        Arbitrary<Pen> pens = Combinators.combine(colours(), Arbitraries.doubles().between(0, 1),
                Arbitraries.doubles().between(0.01, 1).list().ofMaxSize(3)).as(Pen::new);
        Arbitrary<Picture> shapes = Combinators.combine(paths().list().ofMinSize(1).ofMaxSize(3), paints, pens).as(Picture.Shape::new);
        Arbitrary<Picture> texts = Combinators.combine(Arbitraries.strings().ofMaxLength(9), points(), Arbitraries.doubles().between(0.01, 5),
                Arbitraries.of(Picture.Anchor.class), Arbitraries.of(Picture.Weight.class), colours()).as(Picture.Lettering::new);
        Arbitrary<Picture> leaves = Arbitraries.oneOf(shapes, texts, Arbitraries.just(Picture.EMPTY));
        Arbitrary<Optional<Picture.Label>> labels = Combinators.combine(Arbitraries.strings().ofMaxLength(5), Arbitraries.strings().ofMaxLength(5))
                .as(Picture.Label::new).optional();
        Arbitrary<Transform> transforms = Arbitraries.oneOf(Arbitraries.just(Transform.IDENTITY),
                Combinators.combine(numbers(), numbers(), numbers(), numbers(), numbers(), numbers()).as(Transform::new));
        Arbitrary<Optional<Tag>> tags = Combinators.combine(Arbitraries.of(Tag.Role.class), Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(5),
                Arbitraries.of(true, false)).as(Tag::new).optional();
        Arbitrary<Picture> groups = Combinators.combine(leaves.list().ofMaxSize(4), transforms, labels, tags).as(Picture.Group::new);
        return Arbitraries.oneOf(leaves, groups, Combinators.combine(groups.list().ofMaxSize(3), transforms, labels, tags).as(Picture.Group::new));
    }
}
