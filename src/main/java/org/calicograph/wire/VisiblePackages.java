package org.calicograph.wire;

import java.util.List;
import java.util.Set;

/** What a cell can name: the house's rooms, less the machinery in them. docs/cells.md lists the types. */
public final class VisiblePackages {

    /** The rooms whose names can be used in a cell as they are, below {@code org.calicograph}. */
    public static final List<String> HOUSE = List.of("measure", "geometry", "drafting", "colour", "fabric", "covering", "patchwork", "setting",
            "border", "quilt", "fitting", "turning", "cutting", "cutting.pieces", "piecing", "piecing.batch", "finishing", "costing", "quilting", "stitching",
            "colouring", "colouring.wish", "scaling", "drawing", "show", "book", "course", "exhibition");

    /**
     * Public types in those rooms that other rooms build with and no quilter writes or receives: no word of a type in
     * docs/cells.md gives or takes one of them. They are not offered while one writes, nor told in the words.
     */
    public static final Set<String> MACHINERY = Set.of("BlockSymmetry", "Clusters", "ColourName", "CommaLines", "CutOutline", "EvenSteps", "FittedCurve",
            "NearestNames", "Neighbours", "Offset", "Outline", "OwnBox", "Polygons", "Said", "StashReading", "Surface", "SvgPathData", "TopPicture", "Trim", "Typeface", "View", "Walk");

    private VisiblePackages() { }
}
