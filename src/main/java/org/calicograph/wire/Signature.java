package org.calicograph.wire;

/**
 * A method, field or type at the cursor.
 *
 * @param declaration as Java writes it: {@code Star Star.of(int points)}
 * @param about       its Javadoc as plain words; empty where there is none
 */
public record Signature(String declaration, String about) { }
