package org.calicograph.desk.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.Saved;

/**
 * Whose code may run. Code in a notebook can do whatever its reader can do, so a notebook is drawn only
 * if it was written here, or if the person has said that it may be.
 *
 * <p>What is trusted is the code as it stands: a digest of all code cells. The same notebook with one
 * letter changed by somebody else is not trusted.
 */
public final class Trust {

    private static final int MOST = 2000;

    private final Path file;
    private final Path product;

    /**
     * @param folder  where the list of digests is kept
     * @param product the product's own folder; its notebooks are trusted
     */
    public Trust(Path folder, Path product) {
        this.file = folder.resolve("trusted.txt");
        this.product = product.toAbsolutePath().normalize();
    }

    /** A notebook without code has nothing to run, and may. */
    public boolean holds(Notebook notebook, Path from) {
        return code(notebook).stream().allMatch(String::isBlank)
                || from.toAbsolutePath().normalize().startsWith(product)
                || Lines.read(file).contains(digest(notebook));
    }

    public void grant(Notebook notebook) {
        Set<String> all = new LinkedHashSet<>(Lines.read(file));
        if (all.add(digest(notebook))) {
            List<String> kept = new ArrayList<>(all);
            Lines.write(file, kept.subList(Math.max(0, kept.size() - MOST), kept.size()));
        }
    }

    private static String digest(Notebook notebook) {
        return Saved.key(code(notebook), Map.of());
    }

    private static List<String> code(Notebook notebook) {
        return notebook.cells().stream().filter(c -> c instanceof Cell.Code).map(Cell::text).toList();
    }
}
