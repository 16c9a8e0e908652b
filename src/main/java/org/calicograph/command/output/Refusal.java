package org.calicograph.command.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Why a command can't be carried out: one line for the error stream, and the exit code. */
public final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** A cell failed. */
    public static final int CELL = 1;
    /** A file can't be read or written, or the command was not understood. */
    public static final int FILE = 2;

    private final int code;

    public Refusal(int code, String line) {
        super(line);
        this.code = code;
    }

    public Refusal(int code, String line, Throwable cause) {
        super(line, cause);
        this.code = code;
    }

    /** Why a file could not be had, in a few words. */
    public static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access is denied";
        } else if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return "a file of that name is in the way";
        } else if (e instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        return e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : String.valueOf(e.getMessage());
    }

    public int code() {
        return code;
    }
}
