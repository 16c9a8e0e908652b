package org.calicograph.session;

import java.util.List;
import org.calicograph.wire.Suggestion;

/**
 * Ways to go on writing.
 *
 * @param anchor      the offset in the cell's text from which a suggestion stands in place of what was written
 * @param suggestions those that fit first
 */
public record Completions(int anchor, List<Suggestion> suggestions) {

    public static final Completions NONE = new Completions(0, List.of());

    public Completions {
        suggestions = List.copyOf(suggestions);
    }
}
