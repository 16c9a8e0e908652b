package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The cutting line of a finished shape: the seam line moved out by the seam allowance. */
public final class CutOutline {

    /** Longer than the point of any corner that is drawn; the trimming decides how far a point reaches. */
    private static final double MITRE = 60;
    private static final double ACCURACY = 1e-3;

    private CutOutline() { }

    /**
     * Corners mitred; sharp ones trimmed for matching: square to each of their two seams, one allowance beyond
     * its end, which is where a square corner's edge lies and that of any other point trimmed so. Raw
     * edges of neighbours then meet at both ends (common practice). Holes shrink. Curves become polygons
     * within 0.001 in.
     */
    public static Region of(Region finished, Length seam) {
        Geometry grown = grown(finished, seam, BufferParameters.JOIN_MITRE);
        for (Region end : ends(finished.outer().clockwise().joined(), seam.inInches())) {
            grown = Polygons.difference(grown, Polygons.of(end, ACCURACY));
        }
        return largest(grown);
    }

    /** The cutting line of a shape whose edge is turned under: the finished line moved out, round at the corners. */
    public static Region turned(Region finished, Length allowance) {
        return largest(grown(finished, allowance, BufferParameters.JOIN_ROUND));
    }

    private static Geometry grown(Region finished, Length by, int join) {
        BufferParameters how = new BufferParameters(64, BufferParameters.CAP_FLAT, join, MITRE);
        return BufferOp.bufferOp(Polygons.of(finished, ACCURACY), by.inInches(), how);
    }

    private static Region largest(Geometry shape) {
        return Polygons.regions(shape).stream().max(Comparator.comparingDouble(r -> r.area().squareInches())).orElseThrow();
    }

    /** What is trimmed off at corners below a right angle: all that lies beyond the end of either seam. */
    private static List<Region> ends(Path outer, double seam) {
        List<Region> ends = new ArrayList<>();
        List<Segment> s = outer.segments();
        for (int i = 0; i < s.size(); i++) {
            Point corner = s.get(i).to();
            Point in = s.get(i).heading(1).unit();
            Point out = s.get((i + 1) % s.size()).heading(0).unit();
            double angle = Math.PI - s.get(i).turnInto(s.get((i + 1) % s.size()));
            if (angle > Math.PI / 2 - 1e-6) {
                continue;
            }
            // Beyond the end of a seam the point is nowhere wider than an allowance on either side; that of a curve
            // that runs into an edge has no end.
            double reach = Math.min(MITRE, 1.1 * seam / Math.sin(angle / 2));
            for (Point along : List.of(in, out.times(-1))) {
                Point from = corner.plus(along.times(seam));
                Point aside = along.quarterTurned().times(1.1 * seam);
                ends.add(Region.polygon(from.plus(aside), from.minus(aside), from.minus(aside).plus(along.times(reach)),
                        from.plus(aside).plus(along.times(reach))));
            }
        }
        return ends;
    }
}
