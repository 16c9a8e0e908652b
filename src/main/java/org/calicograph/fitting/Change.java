package org.calicograph.fitting;

/**
 * Something that was asked given up, and what fits then.
 *
 * @param words    what is given up, as an order to the maker: 'space them 5 1/4 in apart'
 * @param solution the best that fits then
 */
public record Change<S>(String words, S solution) {

    @Override
    public String toString() {
        return words + ": " + solution;
    }
}
