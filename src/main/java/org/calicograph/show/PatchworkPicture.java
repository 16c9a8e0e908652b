package org.calicograph.show;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Patchwork as a picture at full size: every patch a part of its own. */
public final class PatchworkPicture {

    private static final Colour THREAD = Colour.hex("#3b3a38");

    /** How far the drawn binding may stray from a curve, in inches. */
    private static final double ACCURACY = 0.005;

    private PatchworkPicture() { }

    /** Each patch in its cloth, edged in a thin line. */
    public static Picture of(Patchwork work) {
        double seam = seam(work.outline().bounds());
        List<Picture> parts = new ArrayList<>();
        for (Patch patch : work.patches()) {
            parts.add(patch(patch, seam));
        }
        return Picture.group(parts);
    }

    /** The top, and over its edge the binding as it shows on the front. */
    public static Picture of(Quilt quilt) {
        Picture top = of(quilt.top());
        if (quilt.binding().isEmpty()) {
            return top;
        }
        Box edge = quilt.top().outline().bounds();
        Picture binding = new Picture.Shape(bound(quilt.top(), quilt.bindingWidth().inInches()), Paint.of(quilt.binding().get().colour()),
                Pen.of(THREAD, seam(edge)));
        return binding.labelled("binding", quilt.binding().get().name() + " binding, " + quilt.bindingWidth() + " on the front")
                .over(top);
    }

    /** The outline and what the binding leaves within it. */
    private static List<Path> bound(Patchwork top, double width) {
        Region outline = top.outline();
        if (top.isRectangular()) {
            return List.of(Path.rectangle(outline.bounds()), Path.rectangle(outline.bounds().grownBy(-width)).reversed());
        }
        List<Path> paths = new ArrayList<>(outline.paths());
        BufferParameters mitred = new BufferParameters();
        mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
        Polygons.regions(BufferOp.bufferOp(Polygons.of(outline, ACCURACY), -width, mitred)).forEach(inner -> inner.paths().forEach(p -> paths.add(p.reversed())));
        return paths;
    }

    static Picture patch(Patch patch, double seam) {
        return Picture.of(patch.shape()).filled(Paint.of(patch.fabric())).outlined(Pen.of(THREAD, seam))
                .labelled(patch.id(), patch.title());
    }

    /** A seam line that looks the same on the page whatever the size: a thousandth of the width, within reason. */
    static double seam(Box bounds) {
        double side = Math.max(bounds.width(), bounds.height());
        return Math.max(0.008, Math.min(0.06, side / 1000));
    }
}
