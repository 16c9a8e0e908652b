package org.calicograph.desk.opened;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** One step of a notebook: what of the notebook is another now. */
public record Change(Notebook before, Notebook after) {

    public boolean ofCells() {
        return !before.cells().equals(after.cells());
    }

    /** True if cells have come, gone, moved or become of another kind, beyond what is written in them. */
    public boolean ofOrder() {
        return !before.ids().equals(after.ids()) || !codes(before).equals(codes(after));
    }

    /** The code cells with another text than before, by id. */
    public Map<String, String> texts() {
        Map<String, String> old = new LinkedHashMap<>();
        before.cells().forEach(c -> old.put(c.id(), c.text()));
        Map<String, String> texts = new LinkedHashMap<>();
        after.cells().stream().filter(c -> c instanceof Cell.Code && !c.text().equals(old.get(c.id()))).forEach(c -> texts.put(c.id(), c.text()));
        return texts;
    }

    /** The dials that have another value, or have one no more. */
    public List<String> dials() {
        Set<String> names = new LinkedHashSet<>(before.dials().keySet());
        names.addAll(after.dials().keySet());
        return names.stream().filter(n -> !Objects.equals(before.dials().get(n), after.dials().get(n))).toList();
    }

    /** The ids of a notebook's code cells, in order. */
    public static List<String> codes(Notebook notebook) {
        return notebook.cells().stream().filter(c -> c instanceof Cell.Code).map(Cell::id).toList();
    }
}
