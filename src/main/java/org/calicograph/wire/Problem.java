package org.calicograph.wire;

/**
 * One thing the compiler objects to in a cell.
 *
 * @param from    where it begins
 * @param to      just behind its last character; equal to {@code from} where it has no extent
 * @param message what is wrong, in the compiler's words or ours
 */
public record Problem(Place from, Place to, String message) { }
