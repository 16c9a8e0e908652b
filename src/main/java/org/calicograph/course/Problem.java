package org.calicograph.course;

/**
 * A question for the workroom, with its numbers.
 *
 * @param question what is asked, all numbers given
 * @param answer   the right answer, as it is written down
 * @param working  how it is come by, in one line
 */
public record Problem(String question, String answer, String working) { }
