package org.calicograph.book.page;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tag;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Pages as they fill, and the parts that are open on them: a part that is open where a page is turned goes on over it. */
final class Pages {

    /** A part that is not yet at its end, with what of it stands on the page. */
    private record Open(Tag tag, List<Picture> parts) { }

    private final List<List<Picture>> pages = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();

    Pages() {
        pages.add(new ArrayList<>());
    }

    void turn() {
        List<Tag> going = new ArrayList<>();
        while (!open.isEmpty()) {
            Open part = open.peek();
            going.add(part.parts().isEmpty() ? part.tag() : part.tag().goingOn());
            end();
        }
        pages.add(new ArrayList<>());
        for (int i = going.size() - 1; i >= 0; i--) {
            begin(going.get(i));
        }
    }

    boolean isFresh() {
        return pages.get(pages.size() - 1).isEmpty() && open.stream().allMatch(o -> o.parts().isEmpty());
    }

    int count() {
        return pages.size();
    }

    void put(Picture picture) {
        (open.isEmpty() ? pages.get(pages.size() - 1) : open.peek().parts()).add(picture);
    }

    /** A part by itself. */
    void put(Tag.Role role, Picture picture) {
        put(picture.tagged(Tag.of(role)));
    }

    void begin(Tag.Role role) {
        begin(Tag.of(role));
    }

    void begin(Tag tag) {
        open.push(new Open(tag, new ArrayList<>()));
    }

    /** The end of the part that was begun last; one in which there is nothing is left out. */
    void end() {
        Open part = open.pop();
        if (!part.parts().isEmpty() || part.tag().role() == Tag.Role.CELL || part.tag().role() == Tag.Role.COLUMN) {
            put(Picture.group(part.parts()).tagged(part.tag()));
        }
    }

    /** The pages so far, each as large as the paper, numbered but for the first. */
    List<Picture> on(Paper paper, String foot, double margin, double width, List<PageFlow.Chapter> chapters) {
        List<Picture> out = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Picture> parts = new ArrayList<>();
            parts.add(PageFlow.sheet(paper));
            parts.addAll(pages.get(i));
            if (i > 0) {
                double at = paper.height().inInches() - margin * 0.6;
                parts.add(Picture.group(new Picture.Lettering(foot, new Point(margin, at), Type.SMALL, Picture.Anchor.START, Picture.Weight.REGULAR, Type.QUIET),
                        new Picture.Lettering("" + (i + 1), new Point(margin + width, at), Type.SMALL, Picture.Anchor.END, Picture.Weight.REGULAR, Type.QUIET))
                        .tagged(Tag.of(Tag.Role.FURNITURE)));
            }
            int page = i + 1;
            String begun = String.join("\n", chapters.stream().filter(c -> c.page() == page).map(PageFlow.Chapter::title).toList());
            out.add(new Picture.Group(parts, Transform.IDENTITY, begun.isEmpty() ? Optional.empty() : Optional.of(new Picture.Label(Picture.Label.CHAPTER, begun))));
        }
        return List.copyOf(out);
    }
}
