package org.calicograph.command;

/** Why a command can't be carried out: one line for the error stream, and the exit code. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** A cell failed. */
    static final int CELL = 1;
    /** A file can't be read or written, or the command was not understood. */
    static final int FILE = 2;

    private final int code;

    Refusal(int code, String line) {
        super(line);
        this.code = code;
    }

    Refusal(int code, String line, Throwable cause) {
        super(line, cause);
        this.code = code;
    }

    int code() {
        return code;
    }
}
