/**
 * A year's class: how far each quilt has come, and what is wrong with it, in words.
 *
 * <p>{@link org.calicograph.course.Standing} asks everything else in the house about one quilt and gives
 * {@link org.calicograph.course.Finding}s, season by season. {@link org.calicograph.course.StandingReport} is the same as it
 * is shown, and is read back from what was shown, so that a page over a whole class needs no cell run twice.
 * {@link org.calicograph.course.Worksheet} sets problems with numbers of their own for every student, and keeps the answers apart.
 */
package org.calicograph.course;
