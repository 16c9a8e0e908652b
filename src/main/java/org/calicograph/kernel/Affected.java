package org.calicograph.kernel;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.calicograph.wire.CellScan;

/** What must run again when something has changed. */
final class Affected {

    private Affected() { }

    /**
     * The pieces whose result may change: the seeds, those that read what a seed declares, and so on. A
     * statement may change the variables that it reads, so where one runs again they are first made
     * anew, and whatever reads them follows.
     *
     * @param cells the pieces of each cell, in order
     */
    static Set<Piece> by(List<Piece> seeds, List<List<Piece>> cells) {
        List<Piece> all = cells.stream().flatMap(List::stream).toList();
        Set<Piece> lasts = cells.stream().filter(c -> !c.isEmpty()).map(c -> c.get(c.size() - 1)).collect(Collectors.toSet());
        Set<String> variables = all.stream().map(Piece::reading).filter(r -> r.kind() == Reading.Kind.VARIABLE)
                .flatMap(r -> r.declares().stream()).map(CellScan.Declared::name).collect(Collectors.toSet());
        Set<Piece> affected = new LinkedHashSet<>(seeds);
        Set<String> changed = new HashSet<>();
        boolean grows = true;
        while (grows) {
            int size = affected.size();
            int names = changed.size();
            for (Piece piece : all) {
                Reading reading = piece.reading();
                boolean remade = reading.kind() == Reading.Kind.VARIABLE && reading.declaresAny(changed);
                if (reading.readsAny(changed) || remade) {
                    affected.add(piece);
                }
                if (affected.contains(piece)) {
                    reading.declares().forEach(d -> changed.add(d.name()));
                    changed.addAll(reading.writes());
                    if (piece.isStatement() && !lasts.contains(piece)) {
                        reading.reads().stream().filter(variables::contains).forEach(changed::add);
                    }
                }
            }
            grows = affected.size() > size || changed.size() > names;
        }
        return affected;
    }
}
