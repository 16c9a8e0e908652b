package org.calicograph.book.page;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Transform;

/** Drawings made smaller or larger for a page, their lettering never below 7 points. */
final class Legible {

    /** The least height of lettering in a drawing, in inches on paper. */
    static final double LEAST = 7.05 / 72;

    private Legible() { }

    /** The picture scaled, with every lettering that would be too small set at the least size about the same place. */
    static Picture scaled(Picture picture, double factor) {
        return raised(picture, factor).transformed(Transform.scale(factor));
    }

    /** @param scale how much larger a length of the picture is on paper */
    private static Picture raised(Picture picture, double scale) {
        if (picture instanceof Picture.Lettering text) {
            double least = LEAST / scale;
            if (text.size() >= least) {
                return text;
            }
            // Grown about the middle of its height, so that it stays within what it names.
            double down = (least - text.size()) * 0.35;
            return new Picture.Lettering(text.text(), text.at().plus(0, down), least, text.anchor(), text.weight(), text.colour());
        }
        if (picture instanceof Picture.Group group) {
            double inner = scale * group.transform().scale();
            List<Picture> parts = new ArrayList<>();
            boolean same = true;
            for (Picture part : group.parts()) {
                Picture other = raised(part, inner);
                same &= other == part;
                parts.add(other);
            }
            return same ? group : new Picture.Group(parts, group.transform(), group.label(), group.tag());
        }
        return picture;
    }

    /** How much the smallest lettering of the picture, scaled, would have to grow; 1 if none has to. */
    static double growth(Picture picture, double factor) {
        double smallest = smallest(picture, factor);
        return smallest >= LEAST ? 1 : LEAST / smallest;
    }

    private static double smallest(Picture picture, double scale) {
        if (picture instanceof Picture.Lettering text) {
            return text.size() * scale;
        }
        double least = Double.POSITIVE_INFINITY;
        if (picture instanceof Picture.Group group) {
            for (Picture part : group.parts()) {
                least = Math.min(least, smallest(part, scale * group.transform().scale()));
            }
        }
        return least;
    }
}
