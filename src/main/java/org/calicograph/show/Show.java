package org.calicograph.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.calicograph.drafting.Draft;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.quilt.Medallion;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.patchwork.Trimming;

/** What a value looks like in a notebook. */
public final class Show {

    /** How many elements of a list are shown; the rest are counted. */
    static final int MOST = 60;

    private Show() { }

    /** The look of any value; an empty optional and nothing at all look like nothing. */
    public static Exhibit of(Object value) {
        if (value == null) {
            return Exhibit.NOTHING;
        }
        if (value instanceof Exhibit exhibit) {
            return exhibit;
        }
        if (value instanceof Drawable drawable) {
            return drawable.show();
        }
        if (value instanceof Picture picture) {
            return Exhibit.of(picture);
        }
        if (value instanceof Table table) {
            return Exhibit.of(table);
        }
        if (value instanceof Quilt quilt) {
            return Exhibit.of(PatchworkPicture.of(quilt), quilt.toString());
        }
        if (value instanceof Patchwork work) {
            return Exhibit.of(PatchworkPicture.of(work), work.toString());
        }
        if (value instanceof Medallion medallion) {
            return of(medallion.top());
        }
        if (value instanceof Trimming trimming) {
            return Exhibit.several(of(trimming.top()), Exhibit.words(trimming.caution()));
        }
        if (value instanceof Applique applique) {
            return Exhibit.of(PatchworkPicture.of(applique.block()), applique.toString());
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(Show::of).orElse(Exhibit.NOTHING);
        }
        if (value instanceof Map<?, ?> map) {
            return table(map);
        }
        if (value instanceof Iterable<?> list) {
            return several(list);
        }
        if (value instanceof Object[] array) {
            return several(List.of(array));
        }
        return shape(value).orElseGet(() -> Exhibit.words(Objects.requireNonNullElse(value.toString(), "a value without words: its toString gives null")));
    }

    private static Optional<Exhibit> shape(Object value) {
        if (value instanceof Patch patch) {
            return Optional.of(Exhibit.of(PatchworkPicture.patch(patch, PatchworkPicture.seam(patch.shape().bounds())), patch.title()));
        }
        if (value instanceof Region region) {
            return Optional.of(Exhibit.of(outline(region.paths(), region.bounds()), region.area().toString()));
        }
        if (value instanceof Path path) {
            return Optional.of(Exhibit.of(outline(List.of(path), path.bounds())));
        }
        if (value instanceof Arrangement arrangement) {
            return Optional.of(Exhibit.of(arrangement(arrangement), arrangement.faces().size() + " faces"));
        }
        if (value instanceof Draft draft) {
            return Optional.of(Exhibit.of(DraftPicture.of(draft), draft.toString()));
        }
        if (value instanceof Colour colour) {
            return Optional.of(Exhibit.of(Swatches.chip(0, 0, 2, 1.25, colour), colour.hex()));
        }
        return Swatches.of(value);
    }

    private static Exhibit several(Iterable<?> list) {
        Optional<Exhibit> lines = lines(list);
        if (lines.isPresent()) {
            return lines.get();
        }
        List<Exhibit> parts = new ArrayList<>();
        List<String> words = new ArrayList<>();
        int left = 0;
        for (Object element : list) {
            if (parts.size() + words.size() >= MOST) {
                left++;
                continue;
            }
            Exhibit part = of(element);
            if (part instanceof Exhibit.Words text && parts.isEmpty()) {
                words.add(text.text());
            } else {
                words.forEach(w -> parts.add(Exhibit.words(w)));
                words.clear();
                parts.add(part);
            }
        }
        String rest = left == 0 ? "" : "and " + left + " more";
        if (parts.isEmpty()) {
            return Exhibit.words(words.isEmpty() ? "an empty list" : String.join("\n", words) + (left == 0 ? "" : "\n" + rest));
        }
        if (left > 0) {
            parts.add(Exhibit.words(rest));
        }
        return new Exhibit.Several(parts);
    }

    /** Lines that belong together, such as those of a design for quilting, are one drawing. */
    private static Optional<Exhibit> lines(Iterable<?> list) {
        List<Path> paths = new ArrayList<>();
        for (Object element : list) {
            if (!(element instanceof Path path)) {
                return Optional.empty();
            }
            paths.add(path);
        }
        return paths.size() < 2 ? Optional.empty()
                : Optional.of(Exhibit.of(outline(paths, paths.stream().map(Path::bounds).reduce(Box::union).orElseThrow()), paths.size() + " lines"));
    }

    private static Exhibit table(Map<?, ?> map) {
        List<List<Table.Entry>> rows = new ArrayList<>();
        map.forEach((key, value) -> rows.add(List.of(Table.Entry.of(key), Table.Entry.of(value))));
        return Exhibit.of(new Table("", List.of("name", "value"), rows));
    }

    private static Picture outline(List<Path> paths, Box bounds) {
        return new Picture.Shape(paths, Paint.NONE, Pen.SEAM.wide(PatchworkPicture.seam(bounds)));
    }

    private static Picture arrangement(Arrangement arrangement) {
        List<Picture> parts = new ArrayList<>();
        List<Path> loose = arrangement.loose().stream().map((Segment s) -> new Path(List.of(s))).toList();
        for (Region face : arrangement.faces()) {
            parts.add(Picture.of(face).filled(Colour.hex("#f3ecdd")).outlined(Pen.SEAM));
        }
        if (!loose.isEmpty()) {
            parts.add(new Picture.Shape(loose, Paint.NONE, Pen.CONSTRUCTION.dashed(0.1, 0.1)));
        }
        return Picture.group(parts);
    }
}
