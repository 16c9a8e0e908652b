package org.calicograph.desk.code;

/**
 * A stretch of a Java text that is coloured alike.
 *
 * @param start offset of its first character
 * @param end   offset just behind its last
 */
record Token(int start, int end, Kind kind) {

    enum Kind { KEYWORD, TYPE, NUMBER, TEXT, REMARK, ANNOTATION, CALL }
}
