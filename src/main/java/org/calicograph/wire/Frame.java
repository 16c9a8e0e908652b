package org.calicograph.wire;

/**
 * One step of the way to an exception, in a cell or in a stdlib file.
 *
 * @param source the cell's id or the file's name
 * @param inCell true for a cell
 * @param line   from 1
 * @param within the method's name; empty for the top of a cell
 */
public record Frame(String source, boolean inCell, int line, String within) { }
