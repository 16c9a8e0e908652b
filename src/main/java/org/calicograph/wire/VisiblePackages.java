package org.calicograph.wire;

import java.util.List;

/** The house's packages whose names can be used in a cell as they are, below {@code org.calicograph}. */
public final class VisiblePackages {

    public static final List<String> HOUSE = List.of("measure", "geometry", "drafting", "colour", "fabric", "covering", "patchwork", "setting",
            "border", "quilt", "fitting", "turning", "cutting", "cutting.pieces", "piecing", "finishing", "costing", "quilting", "stitching",
            "colouring", "scaling", "drawing", "show", "book", "course", "exhibition");

    private VisiblePackages() { }
}
