package org.calicograph.stitching.route;

import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/** Tells which pieces of an arrangement come from lines that must be sewn. */
public final class RequiredPieces {

    private static final double CHORD = 1e-4;

    private final STRtree chords = new STRtree();

    public static RequiredPieces of(List<Segment> lines) {
        RequiredPieces index = new RequiredPieces();
        for (Segment s : lines) {
            Coordinate[] c = Polygons.coordinates(new Path(List.of(s)).flattened(CHORD));
            for (int i = 1; i < c.length; i++) {
                LineSegment chord = new LineSegment(c[i - 1], c[i]);
                index.chords.insert(new Envelope(c[i - 1], c[i]), chord);
            }
        }
        return index;
    }

    public boolean holds(Segment piece) {
        return near(piece.at(0.5)) && near(piece.at(0.25)) && near(piece.at(0.8));
    }

    private boolean near(Point p) {
        Box box = new Box(p.x(), p.y(), p.x(), p.y()).grownBy(3 * CHORD);
        for (Object chord : chords.query(new Envelope(box.left(), box.right(), box.top(), box.bottom()))) {
            if (((LineSegment) chord).distance(new Coordinate(p.x(), p.y())) < 3 * CHORD) {
                return true;
            }
        }
        return false;
    }
}
