package org.calicograph.desk.press;

import java.util.List;
import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Transform;

/** Pictures laid on paper. */
public final class PagePicture {

    /** What is left white around a picture, in inches. */
    private static final double MARGIN = 0.5;

    /**
     * A picture on a page.
     *
     * @param scale 1 at full size, less where it was too large for the paper
     */
    public record Laid(Picture page, double scale) { }

    private PagePicture() { }

    /** The page with its paper, so that it is as large as the paper whatever lies on it. */
    public static Picture onPaper(Picture page, Paper paper) {
        Picture sheet = new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, paper.width().inInches(), paper.height().inInches()))), new Paint.Flat(Colour.WHITE, 1), Pen.NONE);
        return Picture.group(sheet, page);
    }

    /** A picture in the middle of a page: at full size if there is room within half an inch of the edges, else as large as there is room. */
    public static Laid inTheMiddle(Picture picture, Paper paper) {
        Box box = picture.bounds();
        double across = paper.width().inInches() - 2 * MARGIN;
        double down = paper.height().inInches() - 2 * MARGIN;
        double scale = Math.min(1, Math.min(across / Math.max(1e-6, box.width()), down / Math.max(1e-6, box.height())));
        Transform onto = Transform.move(-box.centre().x(), -box.centre().y()).then(Transform.scale(scale))
                .then(Transform.move(paper.width().inInches() / 2, paper.height().inInches() / 2));
        return new Laid(new Picture.Group(List.of(picture), onto, Optional.empty()), scale);
    }
}
