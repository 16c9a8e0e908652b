package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;

/** One picture with a bit of everything that a renderer must get right. */
final class Scene {

    private static final Colour NAVY = Colour.hex("#1f3a5f");
    private static final Colour SAND = Colour.hex("#e3cfa4");
    private static final Colour BRICK = Colour.hex("#b4513c");

    private Scene() { }

    static Picture everything() {
        Picture ground = Picture.of(Region.rectangle(new Box(0, 0, 6, 4))).filled(SAND);
        Picture ring = Picture.of(new Region(Path.circle(new Point(1.2, 1.2), 0.9), List.of(Path.circle(new Point(1.2, 1.2), 0.5))))
                .filled(NAVY).outlined(Pen.SEAM).labelled("ring", "A ring <navy> & \"sand\"");
        Path leaf = Path.from(2.4, 2).curveTo(new Point(2.6, 0.2), new Point(4, 0.2), new Point(4, 1.2)).arcTo(new Point(2.4, 2), 0.5).close();
        Picture leaves = Picture.of(Region.of(leaf)).filled(Paint.of(BRICK, 0.6)).outlined(Pen.of(NAVY, 0.04)).labelled("leaf", "A leaf");
        Picture big = new Picture.Shape(List.of(Path.from(4.6, 0.6).arcTo(new Point(5.2, 0.6), -2.2).close()), Paint.of(Colour.hex("#5d8a7a")), Pen.NONE);
        Picture dashes = Picture.of(Path.through(new Point(0.3, 2.4), new Point(5.7, 2.4))).outlined(Pen.of(NAVY, 0.03).dashed(0.2, 0.1));
        Picture squashed = new Picture.Shape(List.of(Path.circle(Point.ORIGIN, 0.4)), Paint.of(NAVY), Pen.of(BRICK, 0.03))
                .transformed(new Transform(1.4, 0.3, -0.2, 0.7, 4.9, 1.7));
        Picture words = Picture.text("Saltmarsh Reach, 7 3/8 in", new Point(3, 3), 0.3);
        Picture bold = new Picture.Lettering("Bold é “½”", new Point(0.3, 3.6), 0.3, Picture.Anchor.START, Picture.Weight.BOLD, BRICK);
        Picture turned = new Picture.Lettering("turned", Point.ORIGIN, 0.3, Picture.Anchor.END, Picture.Weight.REGULAR, NAVY)
                .turned(Angle.degrees(-20)).moved(5.6, 3.3);
        return Picture.group(ground, ring, leaves, big, dashes, squashed, words, bold, turned);
    }

    /** Half-square triangles in rows, as many as asked for, in labelled pairs. */
    static Picture patches(int count) {
        List<Picture> parts = new ArrayList<>();
        int across = (int) Math.ceil(Math.sqrt(count / 2.0));
        for (int i = 0; i < count / 2; i++) {
            double x = i % across;
            double y = i / across;
            Picture one = Picture.of(Region.polygon(new Point(x, y), new Point(x + 1, y), new Point(x, y + 1))).filled(NAVY).outlined(Pen.SEAM);
            Picture two = Picture.of(Region.polygon(new Point(x + 1, y), new Point(x + 1, y + 1), new Point(x, y + 1))).filled(SAND).outlined(Pen.SEAM);
            parts.add(Picture.group(one, two).labelled("b" + i, "unit " + i));
        }
        return Picture.group(parts);
    }
}
