package org.calicograph.desk.opened;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.wire.Dial;

/** What cells came to, as a notebook keeps it with its texts. */
public final class Outcomes {

    private Outcomes() { }

    /**
     * The notebook with the results that it now has.
     *
     * @param states how cells stand
     * @param needs  for each cell those that it needs itself
     * @param dials  as declared, at their present values
     * @param older  results saved before; kept for cells that have no newer one and the same text
     */
    public static Notebook in(Notebook notebook, Map<String, CellState> states, Map<String, List<String>> needs, List<Dial> dials,
                              Map<String, Saved> older) {
        Notebook with = notebook.withoutResults();
        for (Cell cell : notebook.cells()) {
            String id = cell.id();
            CellState state = states.getOrDefault(id, new CellState.Undrawn());
            if (state instanceof CellState.Done done) {
                with = with.withResult(id, Saved.shown(key(notebook, id, needs, dials), done.exhibit(), done.output()));
            } else if (state instanceof CellState.Failed failed) {
                with = with.withResult(id, Saved.failed(key(notebook, id, needs, dials), failed.failure().message(), failed.output()));
            } else if (older.containsKey(id)) {
                with = with.withResult(id, older.get(id));
            }
        }
        return with;
    }

    private static String key(Notebook notebook, String id, Map<String, List<String>> needs, List<Dial> dials) {
        Set<String> parts = new LinkedHashSet<>();
        gather(id, needs, parts);
        List<String> texts = new ArrayList<>();
        notebook.cell(id).ifPresent(c -> texts.add(c.text()));
        notebook.cells().stream().filter(c -> parts.contains(c.id()) && !c.id().equals(id)).forEach(c -> texts.add(c.text()));
        Map<String, String> values = new LinkedHashMap<>();
        dials.stream().filter(d -> parts.contains(d.cell())).forEach(d -> values.put(d.name(), d.text()));
        return Saved.key(texts, values);
    }

    private static void gather(String id, Map<String, List<String>> needs, Set<String> into) {
        if (into.add(id)) {
            needs.getOrDefault(id, List.of()).forEach(n -> gather(n, needs, into));
        }
    }
}
