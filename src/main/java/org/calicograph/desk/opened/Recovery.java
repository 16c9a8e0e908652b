package org.calicograph.desk.opened;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;

/**
 * Unsaved work, kept beside its file as {@code .NAME.PID.unsaved} so that it outlives a killed window.
 * Work without a file yet is kept in the desk's own folder.
 */
public final class Recovery {

    private final Path folder;
    private final String name;
    private final long pid;

    private Recovery(Path folder, String name, long pid) {
        this.folder = folder;
        this.name = name;
        this.pid = pid;
    }

    public static Recovery beside(Path study) {
        Path full = study.toAbsolutePath();
        return new Recovery(full.getParent(), full.getFileName().toString(), ProcessHandle.current().pid());
    }

    /** For a study that has no file yet. */
    public static Recovery in(Path folder) {
        return new Recovery(folder, "untitled", ProcessHandle.current().pid());
    }

    /** The same place as another process would use it. */
    Recovery of(long other) {
        return new Recovery(folder, name, other);
    }

    private Path own() {
        return folder.resolve("." + name + "." + pid + ".unsaved");
    }

    /** @throws NotebookException if it can't be kept */
    public void keep(Notebook notebook) throws NotebookException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            // Saving says what is wrong with the folder.
        }
        NotebookFile.save(notebook, own());
    }

    /** Takes away what this window has kept. */
    public void clear() {
        try {
            Files.deleteIfExists(own());
        } catch (IOException e) {
            // It is offered once more at the next start, which harms nobody.
        }
    }

    /** What a window that is no more has left, the latest. */
    public Optional<Left> find() {
        Pattern form = Pattern.compile(Pattern.quote("." + name + ".") + "(\\d{1,18})\\.unsaved");
        Optional<Left> found = Optional.empty();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, f -> f.getFileName().toString().endsWith(".unsaved"))) {
            for (Path each : all) {
                Matcher m = form.matcher(each.getFileName().toString());
                if (m.matches() && ProcessHandle.of(Long.parseLong(m.group(1))).isEmpty()) {
                    long when = Files.getLastModifiedTime(each).toMillis();
                    if (found.isEmpty() || found.get().when() < when) {
                        found = Optional.of(new Left(each, when));
                    }
                }
            }
        } catch (IOException e) {
            return Optional.empty();
        }
        return found;
    }

    /**
     * Work left behind.
     *
     * @param when in milliseconds since 1970
     */
    public record Left(Path file, long when) {

        /** @throws NotebookException if it can't be read */
        public Notebook read() throws NotebookException {
            return NotebookFile.read(file);
        }

        public void discard() {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                // Offered again at the next start.
            }
        }
    }
}
