package org.calicograph.drawing;

import java.util.List;
import java.util.Optional;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** What a picture covers, and the picture without its groups. */
final class Extent {

    private Extent() { }

    static Optional<Box> of(Picture picture) {
        return of(picture, Transform.IDENTITY);
    }

    private static Optional<Box> of(Picture picture, Transform t) {
        if (picture instanceof Picture.Group group) {
            Transform all = group.transform().then(t);
            Optional<Box> box = Optional.empty();
            for (Picture part : group.parts()) {
                Optional<Box> next = of(part, all);
                box = box.isEmpty() ? next : next.isEmpty() ? box : Optional.of(box.get().union(next.get()));
            }
            return box;
        }
        if (picture instanceof Picture.Shape shape) {
            Box box = bounds(shape.paths().get(0), t);
            for (Path path : shape.paths()) {
                box = box.union(bounds(path, t));
            }
            return Optional.of(box.grownBy(shape.pen().width() * t.scale() / 2));
        }
        Picture.Lettering text = (Picture.Lettering) picture;
        return Optional.of(Typeface.of(text.weight()).box(text).transformed(t));
    }

    private static Box bounds(Path path, Transform t) {
        boolean upright = t.b() == 0 && t.c() == 0;
        return upright ? path.bounds().transformed(t) : path.transformed(t).bounds();
    }

    static void flatten(Picture picture, Transform t, List<Picture> into) {
        if (picture instanceof Picture.Group group) {
            Transform all = group.transform().then(t);
            group.parts().forEach(p -> flatten(p, all, into));
        } else if (t.equals(Transform.IDENTITY)) {
            into.add(picture);
        } else if (picture instanceof Picture.Shape shape) {
            Pen pen = shape.pen();
            double grown = t.scale();
            Pen scaled = new Pen(pen.colour(), pen.width() * grown, pen.dashes().stream().map(d -> d * grown).toList());
            into.add(new Picture.Shape(shape.paths().stream().map(p -> p.transformed(t)).toList(), shape.fill(), scaled));
        } else {
            // Lettering keeps its own upright shape only under moves; other transforms stay a group of one.
            Point origin = t.of(Point.ORIGIN);
            Picture.Lettering text = (Picture.Lettering) picture;
            if (Transform.move(origin).equals(t)) {
                into.add(new Picture.Lettering(text.text(), t.of(text.at()), text.size(), text.anchor(), text.weight(), text.colour()));
            } else {
                into.add(new Picture.Group(List.of(text), t, Optional.empty()));
            }
        }
    }
}
