package org.calicograph.reference;

import java.util.List;

/**
 * A type, a method or a constant.
 *
 * @param name   as it is written
 * @param form   its declaration, without its body
 * @param about  what is said of it, as plain text
 * @param parts  its parameters or parts of which something is said: name, then words
 * @param errors what it refuses; empty if nothing is said of that
 * @param words  a type's own words; none for a method
 */
public record Word(String name, String form, String about, List<List<String>> parts, String errors, List<Word> words) {

    public Word {
        parts = List.copyOf(parts);
        words = List.copyOf(words);
    }
}
