package org.calicograph.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A notebook's file: read whole, saved whole. */
public final class NotebookFile {

    private NotebookFile() { }

    /** @throws NotebookException if there is no such file, it can't be read, or it is not a notebook */
    public static Notebook read(Path file) throws NotebookException {
        String name = file.toString();
        try {
            if (name.isEmpty()) {
                throw new NotebookException("''", "this is no name of a file; name a notebook");
            }
            if (Files.isDirectory(file)) {
                throw new NotebookException(name, "this is a folder; name a notebook in it");
            }
            if (!Files.exists(file)) {
                throw new NoSuchFileException(name);
            }
            if (!Files.isRegularFile(file)) {
                throw new NotebookException(name, "this is not an ordinary file; name a notebook");
            }
            if (Files.size(file) > NotebookReader.MOST_BYTES) {
                throw new NotebookException(name, NotebookReader.tooBig(Files.size(file)));
            }
            try (InputStream in = Files.newInputStream(file)) {
                return NotebookReader.read(in.readNBytes((int) NotebookReader.MOST_BYTES + 1), name);
            }
        } catch (NotebookException e) {
            throw e;
        } catch (IOException e) {
            throw new NotebookException(name, reason(e, "read"));
        }
    }

    /**
     * Saves a notebook in one step: the file is the old one or the new one at every moment, and on the disk when
     * this returns. A symbolic link stays one, and its file's permissions stay as they are.
     *
     * @throws NotebookException if it can't be saved; the file is then as it was
     */
    public static void save(Notebook notebook, Path file) throws NotebookException {
        save(notebook, file, file);
    }

    /** As {@link #save(Notebook, Path)}; a file that is not there yet gets the permissions of another, if that is there. */
    public static void save(Notebook notebook, Path file, Path like) throws NotebookException {
        String name = file.toString();
        try {
            Path target = WholeFile.followed(file);
            if (Files.isDirectory(target)) {
                throw new NotebookException(name, "this is a folder; give the notebook a name in it");
            }
            if (Files.exists(target) && !Files.isWritable(target)) {
                throw new NotebookException(name, "the file is write-protected; save under another name, or allow writing to it");
            }
            byte[] bytes = NotebookWriter.write(notebook).getBytes(StandardCharsets.UTF_8);
            if (bytes.length > NotebookReader.MOST_BYTES) {
                throw new NotebookException(name, "with its saved results the notebook has " + bytes.length + " bytes, and a file can have "
                        + NotebookReader.MOST_BYTES + " at most; save it without some results");
            }
            WholeFile.write(target, bytes, like);
        } catch (NotebookException e) {
            throw e;
        } catch (IOException e) {
            throw new NotebookException(name, reason(e, "saved"));
        }
    }

    private static String reason(IOException e, String done) {
        if (e instanceof NoSuchFileException) {
            return done.equals("read") ? "there is no such file; check the name" : "there is no such folder; make it first";
        }
        if (e instanceof AccessDeniedException) {
            return "access is denied; check the permissions of the file and its folder";
        }
        String why = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return "it can't be " + done + ": " + Excerpt.of(String.valueOf(why), 200) + "; check the disk and the permissions";
    }
}
