package org.calicograph.session;

import java.util.List;

/** A code cell as the session sees it: its id in the notebook and its text, lines parted by {@code \n}. */
public record CellSource(String id, String text) {

    public CellSource {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a cell has no id; give it one such as a1");
        }
    }

    public static CellSource of(String id, List<String> lines) {
        return new CellSource(id, String.join("\n", lines));
    }
}
