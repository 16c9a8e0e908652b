package org.calicograph.reference;

import java.util.List;
import java.util.Set;

/** A package's types that a cell can name, and what the package is for. */
public record Room(String name, String about, List<Word> types) {

    public Room {
        types = List.copyOf(types);
    }

    /** The same less the types of these names. */
    public Room without(Set<String> names) {
        return new Room(name, about, types.stream().filter(t -> !names.contains(t.name())).toList());
    }
}
