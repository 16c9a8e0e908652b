package org.calicograph.command.output;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * Where a command may write: on an ordinary file or none, never on a notebook, and never on a file that begins
 * otherwise than what is to be written, since that is somebody's own.
 */
public final class OutputPlace {

    private static final Pattern NOTEBOOK = Pattern.compile("(?<!\\\\)\"calicograph\"\\s*:\\s*\\d");
    /** More than the longest title that a notebook of ours begins with. */
    private static final int LOOK = 1 << 20;

    private OutputPlace() { }

    /**
     * Looks before anything is drawn.
     *
     * @param begins what the file will begin with, in ASCII; empty where anything may
     * @throws Refusal naming the file and what to do
     */
    public static void require(Path file, Path notebook, String begins) {
        if (OutputFiles.isStandardOutput(file) || !Files.exists(file)) {
            return;
        }
        try {
            if (Files.exists(notebook) && Files.isSameFile(file, notebook)) {
                throw new Refusal(Refusal.FILE, file + ": this is the notebook itself; give --out another name");
            }
            require(file, begins);
        } catch (IOException e) {
            throw unseen(file, e);
        }
    }

    /**
     * The same for a command that reads no notebook.
     *
     * @param begins what the file will begin with, in ASCII; empty where anything may
     * @throws Refusal naming the file and what to do
     */
    public static void require(Path file, String begins) {
        if (OutputFiles.isStandardOutput(file) || !Files.exists(file)) {
            return;
        }
        try {
            require(file);
            byte[] head = head(file, 64);
            byte[] wanted = begins.getBytes(StandardCharsets.US_ASCII);
            if (head.length > 0 && !begins.isEmpty() && !Arrays.equals(head, 0, Math.min(head.length, wanted.length), wanted, 0, wanted.length)) {
                throw new Refusal(Refusal.FILE, file + ": there is a file of another kind by this name; give --out another name, or move the file away");
            }
        } catch (IOException e) {
            throw unseen(file, e);
        }
    }

    private static Refusal unseen(Path file, IOException e) {
        return new Refusal(Refusal.FILE, file + ": it can't be looked at (" + Refusal.reason(e) + "); give --out another name", e);
    }

    /** @throws Refusal if the file is no ordinary one, write-protected, or a notebook */
    public static void require(Path file) throws IOException {
        if (!Files.exists(file)) {
            return;
        }
        if (file.toString().isEmpty()) {
            throw new Refusal(Refusal.FILE, "'' is no name of a file; give --out another name");
        }
        if (!Files.isRegularFile(file)) {
            throw new Refusal(Refusal.FILE, file + ": this is not an ordinary file; give --out another name");
        }
        if (!Files.isWritable(file)) {
            throw new Refusal(Refusal.FILE, file + ": the file is write-protected; give --out another name, or allow writing to it");
        }
        if (NOTEBOOK.matcher(new String(head(file, LOOK), StandardCharsets.UTF_8)).find()) {
            throw new Refusal(Refusal.FILE, file + ": this is a notebook; give --out another name");
        }
    }

    private static byte[] head(Path file, int bytes) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(bytes);
        }
    }
}
