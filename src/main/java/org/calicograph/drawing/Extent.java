package org.calicograph.drawing;

import java.util.ArrayList;
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
        Bounds bounds = new Bounds();
        Walk.over(picture, Transform.IDENTITY, bounds);
        return bounds.box;
    }

    private static final class Bounds implements Surface {
        private Optional<Box> box = Optional.empty();

        private void add(Box more) {
            box = Optional.of(box.isEmpty() ? more : box.get().union(more));
        }

        @Override
        public void shape(Picture.Shape shape, Transform onto) {
            double half = shape.pen().width() * onto.scale() / 2;
            shape.paths().forEach(path -> add(bounds(path, onto).grownBy(half)));
        }

        @Override
        public void lettering(Picture.Lettering text, Transform onto) {
            add(Typeface.of(text.weight()).box(text).transformed(onto));
        }
    }

    private static Box bounds(Path path, Transform t) {
        boolean upright = t.b() == 0 && t.c() == 0;
        return upright ? path.bounds().transformed(t) : path.transformed(t).bounds();
    }

    static List<Picture> flattened(Picture picture) {
        List<Picture> flat = new ArrayList<>();
        Walk.over(picture, Transform.IDENTITY, new Surface() {
            @Override
            public void shape(Picture.Shape shape, Transform onto) {
                flat.add(shape.onto(onto));
            }

            @Override
            public void lettering(Picture.Lettering text, Transform onto) {
                flat.add(moved(text, onto));
            }
        });
        return flat;
    }

    /** Lettering keeps its own upright shape only under moves; other transforms stay a group of one. */
    private static Picture moved(Picture.Lettering text, Transform t) {
        if (t.equals(Transform.IDENTITY)) {
            return text;
        }
        if (Transform.move(t.of(Point.ORIGIN)).equals(t)) {
            return new Picture.Lettering(text.text(), t.of(text.at()), text.size(), text.anchor(), text.weight(), text.colour());
        }
        return new Picture.Group(List.of(text), t, Optional.empty());
    }
}
