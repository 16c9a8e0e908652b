package org.calicograph.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.calicograph.geometry.Transform;

/** Takes a surface through a picture in the order of painting, however deep its groups lie. */
public final class Walk {

    /** A group that is open: the parts still to come, and how they lie. */
    private record Open(Optional<Picture.Label> label, Optional<Tag> tag, Iterator<Picture> parts, Transform onto) { }

    private Walk() { }

    /** @param onto from the picture's inches to the surface's coordinates */
    public static void over(Picture picture, Transform onto, Surface surface) {
        Deque<Open> open = new ArrayDeque<>();
        open.push(new Open(Optional.empty(), Optional.empty(), List.of(picture).iterator(), onto));
        while (!open.isEmpty()) {
            Open top = open.peek();
            if (!top.parts().hasNext()) {
                open.pop();
                top.label().ifPresent(surface::end);
                top.tag().ifPresent(surface::end);
                continue;
            }
            Picture next = top.parts().next();
            if (next instanceof Picture.Group group) {
                group.tag().ifPresent(surface::begin);
                group.label().ifPresent(surface::begin);
                Transform t = group.transform();
                open.push(new Open(group.label(), group.tag(), group.parts().iterator(), t.equals(Transform.IDENTITY) ? top.onto() : t.then(top.onto())));
            } else if (next instanceof Picture.Shape shape) {
                surface.shape(shape, top.onto());
            } else {
                surface.lettering((Picture.Lettering) next, top.onto());
            }
        }
    }
}
