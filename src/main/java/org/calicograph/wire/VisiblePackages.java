package org.calicograph.wire;

import java.util.List;

/** The house's packages whose names can be used in a cell as they are, below {@code org.calicograph}. */
public final class VisiblePackages {

    public static final List<String> HOUSE = List.of("measure", "geometry", "drafting", "fabric", "quilt", "fitting", "workshop", "quilting",
            "scaling", "turning", "colouring", "drawing", "show", "workshop.pieces", "book");

    private VisiblePackages() { }
}
