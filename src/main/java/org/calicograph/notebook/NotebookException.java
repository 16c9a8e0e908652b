package org.calicograph.notebook;

import java.io.IOException;

/** A notebook that can't be read or saved. The message is one line: the file, the place, the thing, the repair. */
public final class NotebookException extends IOException {

    private static final long serialVersionUID = 1;

    private final int line;
    private final int column;

    NotebookException(String file, String problem) {
        this(file, 0, 0, problem);
    }

    NotebookException(String file, int line, int column, String problem) {
        super(Excerpt.of(file, 500) + (line > 0 ? ", line " + line + ", column " + column : "") + ": " + problem);
        this.line = line;
        this.column = column;
    }

    /** The line in the file, from 1; 0 if the trouble has no place there. */
    public int line() {
        return line;
    }

    /** The column in characters, from 1; 0 if the trouble has no place there. */
    public int column() {
        return column;
    }
}
