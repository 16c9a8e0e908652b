package org.calicograph.desk.opened;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;

/**
 * Unsaved work, kept beside its file as {@code .NAME.PID-BEGAN.unsaved} so that it outlives a killed window; whoever may
 * not read the file may not read this either. Work without a file yet, and work whose folder is gone, is kept in the
 * desk's own folder.
 */
public final class Recovery {

    private static final String END = ".unsaved";

    private final Path folder;
    private final Optional<Path> file;
    private final String name;
    private final Window window;

    private Recovery(Path folder, Optional<Path> file, String name, Window window) {
        this.folder = folder;
        this.file = file;
        this.name = name;
        this.window = window;
    }

    public static Recovery beside(Path file) {
        Path full = file.toAbsolutePath();
        return new Recovery(full.getParent(), Optional.of(full), full.getFileName().toString(), Window.here());
    }

    /** For a notebook that has no file yet, or none any more. */
    public static Recovery in(Path folder) {
        return new Recovery(folder, Optional.empty(), "untitled", Window.here());
    }

    /** The same place as another window would use it. */
    Recovery of(Window other) {
        return new Recovery(folder, file, name, other);
    }

    private Path own() {
        return folder.resolve("." + name + "." + window + END);
    }

    /**
     * Keeps this beside what it was kept as before, in one step. The folder of a file is never made anew: where it was
     * moved away, it is another's by now.
     *
     * @throws NotebookException if it can't be kept
     */
    public void keep(Notebook notebook) throws NotebookException {
        if (file.isEmpty()) {
            try {
                Files.createDirectories(folder);
            } catch (IOException e) {
                // Saving says what is wrong with the folder.
            }
        }
        NotebookFile.save(notebook, own(), file.orElse(own()));
    }

    /** Takes away what this window has kept. */
    public void clear() {
        try {
            Files.deleteIfExists(own());
        } catch (IOException e) {
            // It is offered once more at the next start, which harms nobody.
        }
    }

    /**
     * Where there is a copy, makes it what is about to be saved: a window killed between saving and {@link #clear} then
     * leaves nothing that is older than its file.
     */
    public void aboutToSave(Notebook notebook) {
        if (Files.exists(own())) {
            try {
                keep(notebook);
            } catch (NotebookException e) {
                // Saving says what is wrong with the disk.
            }
        }
    }

    /**
     * Makes what another window has left this one's own, in one step, so that it is never there twice.
     *
     * @throws NotebookException if it can't be
     */
    public void takeOver(Left left) throws NotebookException {
        try {
            Files.move(left.file(), own(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            keep(left.read());
            left.discard();
        }
    }

    /** What a window that is no more has left, the latest; nothing that the file holds already. */
    public Optional<Left> find() {
        String start = "." + name + ".";
        Optional<Left> found = Optional.empty();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, f -> f.getFileName().toString().startsWith(start))) {
            for (Path each : all) {
                String rest = each.getFileName().toString().substring(start.length());
                boolean left = rest.endsWith(END) && Window.read(rest.substring(0, rest.length() - END.length())).map(w -> !w.isAlive()).orElse(false);
                long when = left ? Files.getLastModifiedTime(each).toMillis() : 0;
                if (left && isSaved(each)) {
                    Files.deleteIfExists(each);
                } else if (left && (found.isEmpty() || found.get().when() < when)) {
                    found = Optional.of(new Left(each, when));
                }
            }
        } catch (IOException e) {
            return Optional.empty();
        }
        return found;
    }

    private boolean isSaved(Path left) {
        try {
            return file.isPresent() && NotebookFile.read(file.get()).withoutResults().equals(NotebookFile.read(left).withoutResults());
        } catch (NotebookException e) {
            return false;
        }
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
