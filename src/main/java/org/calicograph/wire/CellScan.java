package org.calicograph.wire;

import java.util.List;

/**
 * What a cell says about names, found by parsing alone.
 *
 * @param declares what other cells can use: variables, methods, types
 * @param reads    names it uses without declaring them, keywords and members left out; more than it
 *                 truly needs, since a parser can't tell a package from a variable
 * @param writes   names it assigns to without declaring them
 */
public record CellScan(String cell, List<Declared> declares, List<String> reads, List<String> writes) {

    /**
     * @param name the simple name
     * @param key  what must be unique: the name, for a method with its parameters' types
     */
    public record Declared(String name, String key) { }

    public CellScan {
        declares = List.copyOf(declares);
        reads = List.copyOf(reads);
        writes = List.copyOf(writes);
    }
}
