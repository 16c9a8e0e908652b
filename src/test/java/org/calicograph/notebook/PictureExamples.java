package org.calicograph.notebook;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tag;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Pictures of every kind on a grid of a millionth of an inch, which is what a file keeps. */
final class PictureExamples {

    private PictureExamples() { }

    static Arbitrary<Picture> pictures() {
        Arbitrary<Double> inches = Arbitraries.doubles().between(-100, 100).map(v -> Math.rint(v * 1e6) / 1e6);
        Arbitrary<Double> above = Arbitraries.integers().between(1, 4_000_000).map(n -> n / 1e6);
        Arbitrary<Point> points = Combinators.combine(inches, inches).as(Point::new);
        Arbitrary<Colour> colours = Arbitraries.integers().between(0, 0xffffff).map(Colour::packed);
        Arbitrary<Path> paths = Combinators.combine(points, points, points, points, above).as((a, b, c, d, bulge) -> {
            Path lineThenCurve = Path.from(a).lineTo(b).curveTo(c, d, a.plus(1, 1)).open();
            return a.equals(b) ? lineThenCurve : Path.from(a).arcTo(b, bulge).curveTo(c, d, a).close();
        });
        Arbitrary<Pen> pens = Combinators.combine(colours, above, above.list().ofMaxSize(2)).as(Pen::new);
        Arbitrary<Paint> paints = Combinators.combine(colours, Arbitraries.of(1.0, 0.5, 0.125)).as(Paint::of);
        Arbitrary<Picture> shapes = Combinators.combine(paths.list().ofMinSize(1).ofMaxSize(2),
                Arbitraries.oneOf(paints, Arbitraries.just(Paint.NONE)), Arbitraries.oneOf(pens, Arbitraries.just(Pen.NONE)))
                .as(Picture.Shape::new);
        Arbitrary<Picture> letters = Combinators.combine(Arbitraries.strings().alpha().ofMaxLength(8), points, above,
                Arbitraries.of(Picture.Anchor.values()), Arbitraries.of(Picture.Weight.values()), colours).as(Picture.Lettering::new);
        Arbitrary<Picture> leaves = Arbitraries.oneOf(shapes, letters);
        Arbitrary<Tag> tags = Combinators.combine(Arbitraries.of(Tag.Role.values()), Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(8),
                Arbitraries.of(true, false)).as(Tag::new);
        Arbitrary<Picture> told = Combinators.combine(leaves, tags).as(Picture::tagged);
        return Arbitraries.oneOf(leaves, told, Combinators.combine(leaves.list().ofMaxSize(3), points).as((parts, step) ->
                Picture.group(List.copyOf(parts)).transformed(Transform.move(step)).labelled("p1", "Bed & board")));
    }
}
