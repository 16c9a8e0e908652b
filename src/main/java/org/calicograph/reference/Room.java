package org.calicograph.reference;

import java.util.List;

/** A package's types that a cell can name, and what the package is for. */
public record Room(String name, String about, List<Word> types) {

    public Room {
        types = List.copyOf(types);
    }
}
