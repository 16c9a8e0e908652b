package org.calicograph.drafting;

import java.util.List;

/**
 * One step of a draft.
 *
 * @param words what to do, in a sentence
 * @param used  the names of what it was found from
 * @param made  the names of what it added
 */
public record Step(String words, List<String> used, List<String> made) {

    public Step {
        used = List.copyOf(used);
        made = List.copyOf(made);
    }
}
