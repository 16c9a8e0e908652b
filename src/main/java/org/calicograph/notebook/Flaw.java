package org.calicograph.notebook;

/** What is wrong with a text, and where; the reader adds the file's name. */
final class Flaw extends RuntimeException {

    private static final long serialVersionUID = 1;

    final int line;
    final int column;

    Flaw(int line, int column, String problem) {
        super(problem, null, false, false);
        this.line = line;
        this.column = column;
    }
}
