package org.calicograph.wire;

import java.util.List;

/** What the stdlib holds, found by parsing alone, in the order of the files' names. */
public record Catalogue(List<Entry> entries, List<Broken> broken) {

    /**
     * A class.
     *
     * @param about   the first sentence of its Javadoc; may be empty
     * @param file    where it is written
     * @param methods its public methods and constructors
     */
    public record Entry(String name, String about, String file, List<Routine> methods) {
        public Entry {
            methods = List.copyOf(methods);
        }
    }

    /**
     * A method.
     *
     * @param declaration as written, without its body
     * @param about       the first sentence of its Javadoc; may be empty
     * @param line        in its file
     */
    public record Routine(String declaration, String about, int line) { }

    /**
     * A file that does not compile, or needs one that does not; the others work without it.
     *
     * @param file    its full name
     * @param problem the first that the compiler names, with its place in the file
     */
    public record Broken(String file, Problem problem) { }

    public static final Catalogue EMPTY = new Catalogue(List.of(), List.of());

    public Catalogue {
        entries = List.copyOf(entries);
        broken = List.copyOf(broken);
    }
}
