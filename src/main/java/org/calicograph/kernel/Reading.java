package org.calicograph.kernel;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import org.calicograph.kernel.numbers.WholeDivision;
import org.calicograph.wire.CellScan;

/**
 * What one piece of a cell says about names, found by parsing alone.
 *
 * @param reads  names used and not declared within; not only variables
 * @param writes names assigned to, or whose parts are assigned to
 * @param state  true for a type that computes something once, when it is first used: it can't be run again
 */
record Reading(Kind kind, List<CellScan.Declared> declares, Set<String> reads, Set<String> writes, boolean state) {

    enum Kind { IMPORT, VARIABLE, METHOD, TYPE, STATEMENT }

    static final Reading NOTHING = new Reading(Kind.STATEMENT, List.of(), Set.of(), Set.of(), false);

    boolean declaresAny(Set<String> names) {
        return declares.stream().anyMatch(d -> names.contains(d.name()));
    }

    /** Divisions of whole numbers in the source that says this; none where it doesn't parse. */
    List<WholeDivision.Found> divisions(WholeDivision division, String source, JShell jshell) {
        return this == NOTHING || kind == Kind.IMPORT ? List.of() : division.in(source, kind == Kind.METHOD || kind == Kind.TYPE,
                declares.stream().map(CellScan.Declared::name).collect(Collectors.toSet()), jshell);
    }

    boolean readsAny(Set<String> names) {
        return reads.stream().anyMatch(names::contains) || writes.stream().anyMatch(names::contains);
    }
}
