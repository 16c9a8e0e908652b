package org.calicograph.desk.opened;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;

/** The file of a notebook, and what it looked like when it was last read or saved here. */
public final class OpenFile {

    private final Path path;
    private volatile String seen;

    private OpenFile(Path path, String seen) {
        this.path = path.toAbsolutePath().normalize();
        this.seen = seen;
    }

    /** A file as it is on disk now, or one yet to be. */
    public static OpenFile at(Path path) {
        return new OpenFile(path, print(path));
    }

    public Path path() {
        return path;
    }

    /** The file's name without {@code .json}. */
    public String name() {
        return path.getFileName().toString().replaceFirst("\\.(calicograph\\.)?json$", "");
    }

    /** @throws NotebookException if it can't be read */
    public Notebook read() throws NotebookException {
        String before = print(path);
        Notebook notebook = NotebookFile.read(path);
        seen = before;
        return notebook;
    }

    /** @throws NotebookException if it can't be saved; the file is then as it was */
    public void save(Notebook notebook) throws NotebookException {
        NotebookFile.save(notebook, path);
        seen = print(path);
    }

    /** True if somebody else has written the file since it was last read or saved here. */
    public boolean isChangedElsewhere() {
        String now = print(path);
        return !now.isEmpty() && !now.equals(seen);
    }

    /** True if it was there, and is no more: taken away, or its folder moved. */
    public boolean isGone() {
        return !seen.isEmpty() && !Files.exists(path);
    }

    /** What the file holds now has been seen, and will not be told again. */
    public void overlook() {
        seen = print(path);
    }

    private static String print(Path path) {
        try {
            return Files.isRegularFile(path)
                    ? HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path))) : "";
        } catch (IOException e) {
            return "";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256, which every Java has to have", e);
        }
    }
}
