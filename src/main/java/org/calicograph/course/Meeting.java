package org.calicograph.course;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/**
 * One evening of the class.
 *
 * @param begins by the clock of the place
 * @param bring  what each student brings
 * @param lesson the notebook or the handout that belongs to it; may be empty
 */
public record Meeting(LocalDateTime begins, Duration lasts, Season season, String topic, List<String> bring, String lesson) {

    /** @throws IllegalArgumentException if it lasts no time, or has no topic */
    public Meeting {
        bring = List.copyOf(bring);
        if (lasts.isNegative() || lasts.isZero()) {
            throw new IllegalArgumentException("the meeting '" + topic + "' lasts " + lasts.toMinutes() + " minutes; give it more");
        }
        if (topic.isBlank()) {
            throw new IllegalArgumentException("the meeting of " + begins + " has no topic; say what it is about");
        }
    }

    /** When it is over. */
    public LocalDateTime ends() {
        return begins.plus(lasts);
    }
}
