package org.calicograph.desk.opened;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.Saved;

/**
 * Whose code may run. Code in a notebook can do whatever its reader can do, so a notebook is drawn only
 * if it was written here, came with the product, or if the person has said that it may be.
 *
 * <p>What is trusted is the code as it stands: a digest of all code cells, and of the routines in the
 * folder {@code stdlib} beside the notebook, which run with it. The same notebook with one letter changed
 * by somebody else is not trusted.
 *
 * <p>A notebook came with the product if it lies in the product's folder and its code is that of the
 * notebook of the same name that the program carries in itself. One that was changed or added there
 * is as strange as any other.
 */
public final class Trust {

    private static final int MOST = 2000;
    private static final String SHIPPED = "shipped/";

    private final Path file;
    private final Path product;

    /**
     * @param folder  where the list of digests is kept
     * @param product the folder of the notebooks that come with the product
     */
    public Trust(Path folder, Path product) {
        this.file = folder.resolve("trusted.txt");
        this.product = product.toAbsolutePath().normalize();
    }

    /** A notebook without code, and without routines beside it, has nothing to run, and may. */
    public boolean holds(Notebook notebook, Path from) {
        List<String> code = code(notebook);
        List<String> routines = routines(from);
        return routines.isEmpty() && (code.stream().allMatch(String::isBlank) || isShipped(code, from))
                || Lines.read(file).contains(digest(code, routines));
    }

    private boolean isShipped(List<String> code, Path from) {
        Path place = from.toAbsolutePath().normalize();
        if (!product.equals(place.getParent())) {
            return false;
        }
        try (InputStream in = Trust.class.getResourceAsStream(SHIPPED + place.getFileName())) {
            if (in == null) {
                return false;
            }
            Path copy = Files.createTempFile("shipped", ".json");
            try {
                Files.write(copy, in.readAllBytes());
                return code(NotebookFile.read(copy)).equals(code);
            } finally {
                Files.delete(copy);
            }
        } catch (IOException e) {
            return false;
        }
    }

    /** A notebook that has no file yet. */
    public void grant(Notebook notebook) {
        grant(digest(code(notebook), List.of()));
    }

    public void grant(Notebook notebook, Path from) {
        grant(digest(code(notebook), routines(from)));
    }

    private void grant(String digest) {
        Set<String> all = new LinkedHashSet<>(Lines.read(file));
        if (all.add(digest)) {
            List<String> kept = new ArrayList<>(all);
            Lines.write(file, kept.subList(Math.max(0, kept.size() - MOST), kept.size()));
        }
    }

    private static String digest(List<String> code, List<String> routines) {
        List<String> all = new ArrayList<>(code);
        all.addAll(routines);
        return Saved.key(all, Map.of());
    }

    /** The sources that are compiled together with a notebook in this place, by name. */
    private static List<String> routines(Path from) {
        Path folder = from.toAbsolutePath().resolveSibling("stdlib");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<String> all = new ArrayList<>();
            for (Path each : files.filter(Files::isRegularFile).filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                all.add(folder.relativize(each) + "\n" + Files.readString(each, java.nio.charset.StandardCharsets.ISO_8859_1));
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> code(Notebook notebook) {
        return notebook.cells().stream().filter(c -> c instanceof Cell.Code).map(Cell::text).toList();
    }
}
