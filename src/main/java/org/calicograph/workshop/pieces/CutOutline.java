package org.calicograph.workshop.pieces;

import java.util.List;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The cutting line of a finished shape: the seam line moved out by the seam allowance. */
public final class CutOutline {

    /** Corners sharper than 60 degrees have their points trimmed, so that edges match at the machine. */
    private static final double MITRE = 2.0;
    private static final double ACCURACY = 1e-3;

    private CutOutline() { }

    /** Corners mitred, sharp points trimmed. Holes shrink. Curves become polygons within 0.001 in. */
    public static Region of(Region finished, Length seam) {
        BufferParameters how = new BufferParameters(64, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE + 1e-9);
        Geometry grown = BufferOp.bufferOp(Polygons.of(finished, ACCURACY), seam.inInches(), how);
        List<Region> regions = Polygons.regions(grown);
        return regions.get(0);
    }
}
