package org.calicograph.show;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;

/** Patchwork as a picture at full size: every patch a part of its own. */
public final class PatchworkPicture {

    private static final Colour THREAD = Colour.hex("#3b3a38");

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
        Path outer = Path.rectangle(edge);
        Path inner = Path.rectangle(edge.grownBy(-quilt.bindingWidth().inInches())).reversed();
        Picture binding = new Picture.Shape(List.of(outer, inner), Paint.of(quilt.binding().get().colour()),
                Pen.of(THREAD, seam(edge)));
        return binding.labelled("binding", quilt.binding().get().name() + " binding, " + quilt.bindingWidth() + " on the front")
                .over(top);
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
