package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.calicograph.kernel.numbers.WholeDivision;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/**
 * Says what the compiler will object to in a cell that is being written, without running anything.
 *
 * <p>It has a JShell of its own, whose engine loads and runs nothing, so it can neither disturb nor hold up
 * the cells. What the cell needs of others is declared there first; pieces that are the same as at the last
 * check are not compiled again. For one thread.
 */
final class Checker {

    /** A piece as this JShell knows it. */
    private static final class Known {
        final Reader.Cut cut;
        final List<Snippet> snippets = new ArrayList<>();
        final List<Diag> diags = new ArrayList<>();
        final List<WholeDivision.Found> divisions = new ArrayList<>();

        Known(Reader.Cut cut) {
            this.cut = cut;
        }
    }

    private final JShell jshell;
    private final SourceCodeAnalysis analysis;
    private final Reader reader = new Reader();
    private final Plainly plainly;
    private final WholeDivision division;
    private final Map<String, List<Known>> known = new LinkedHashMap<>();

    Checker(Stdlib stdlib) {
        this.jshell = JShell.builder().executionEngine(new ExecutionControlProvider() {
            @Override
            public String name() {
                return "calicograph-check";
            }

            @Override
            public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
                return new Idle();
            }
        }, Map.of()).compilerOptions(Imports.options(stdlib)).build();
        this.analysis = jshell.sourceCodeAnalysis();
        this.plainly = new Plainly(stdlib);
        this.division = Imports.division(stdlib);
        jshell.eval(Imports.text(!stdlib.isEmpty()));
    }

    /**
     * The problems of a cell's text, in its order; those that only follow from another are left out.
     *
     * @param others the texts of the other cells by id
     */
    List<Problem> check(String cell, String text, Map<String, String> others) {
        List<Reader.Cut> cuts = Reader.cut(text, analysis);
        List<Reading> readings = read(cuts);
        Map<String, List<Reading>> elsewhere = new LinkedHashMap<>();
        others.forEach((id, t) -> elsewhere.put(id, read(Reader.cut(t, analysis))));
        List<String> needed = needed(readings, elsewhere);
        forget(cell, needed);
        Set<String> missing = new HashSet<>();
        for (String other : needed) {
            List<Reader.Cut> its = Reader.cut(others.get(other), analysis);
            learn(other, its, elsewhere.get(other), missing);
        }
        Set<String> names = new LinkedHashSet<>();
        elsewhere.values().forEach(rs -> rs.forEach(r -> r.declares().forEach(d -> names.add(d.name()))));
        readings.forEach(r -> r.declares().forEach(d -> names.add(d.name())));
        List<Problem> problems = new ArrayList<>();
        learn(cell, cuts, readings, missing).forEach(piece -> {
            Piece at = new Piece(cell, piece.cut.source(), piece.cut.offset(), Reading.NOTHING);
            piece.diags.forEach(d -> problems.add(plainly.problem(d, at, text, names)));
            problems.addAll(Plainly.divisions(piece.divisions, piece.cut.offset(), text));
            problems.addAll(unresolved(piece, text, names));
        });
        problems.addAll(twice(cuts, readings, elsewhere, text));
        return problems.stream().distinct().sorted(java.util.Comparator.comparing(Problem::from)).toList();
    }

    private List<Reading> read(List<Reader.Cut> cuts) {
        return reader.read(cuts.stream().map(Reader.Cut::source).toList());
    }

    /** The cells that declare what these pieces read, each behind those that it needs itself. */
    private static List<String> needed(List<Reading> readings, Map<String, List<Reading>> elsewhere) {
        Set<String> found = new LinkedHashSet<>();
        gather(readings, elsewhere, new HashSet<>(), found);
        return List.copyOf(found);
    }

    private static void gather(List<Reading> readings, Map<String, List<Reading>> elsewhere, Set<String> begun, Set<String> found) {
        Set<String> names = new HashSet<>();
        readings.forEach(r -> {
            names.addAll(r.reads());
            names.addAll(r.writes());
        });
        elsewhere.forEach((id, its) -> {
            if (!begun.contains(id) && its.stream().anyMatch(r -> r.declaresAny(names) || r.kind() == Reading.Kind.IMPORT)) {
                begun.add(id);
                gather(its, elsewhere, begun, found);
                found.add(id);
            }
        });
    }

    /** Lets go of cells that aren't needed now: the cell may be about to take over a name of theirs. */
    private void forget(String cell, List<String> needed) {
        for (String id : List.copyOf(known.keySet())) {
            if (!id.equals(cell) && !needed.contains(id)) {
                drop(known.remove(id));
            }
        }
    }

    private void drop(List<Known> pieces) {
        List<Known> back = new ArrayList<>(pieces);
        Collections.reverse(back);
        back.forEach(piece -> piece.snippets.stream().filter(s -> jshell.status(s).isActive() && s.kind().isPersistent()).forEach(jshell::drop));
    }

    /**
     * Compiles what differs from the last time.
     *
     * @param missing names that couldn't be declared; pieces that use one are passed over
     */
    private List<Known> learn(String cell, List<Reader.Cut> cuts, List<Reading> readings, Set<String> missing) {
        List<Known> before = known.getOrDefault(cell, List.of());
        int same = 0;
        while (same < Math.min(before.size(), cuts.size()) && before.get(same).cut.source().equals(cuts.get(same).source())) {
            same++;
        }
        drop(before.subList(same, before.size()));
        List<Known> now = new ArrayList<>();
        boolean readable = true;
        for (int i = 0; i < cuts.size() && readable; i++) {
            Known piece = new Known(cuts.get(i));
            now.add(piece);
            if (i < same) {
                piece.snippets.addAll(before.get(i).snippets);
                piece.diags.addAll(before.get(i).diags);
                piece.divisions.addAll(before.get(i).divisions);
            }
            boolean hopeless = readings.get(i).readsAny(missing);
            // A piece that was passed over the last time may have a chance now.
            boolean fresh = i >= same || piece.snippets.isEmpty() && piece.diags.isEmpty();
            if (!hopeless && fresh) {
                piece.divisions.addAll(readings.get(i).divisions(division, piece.cut.source(), jshell));
                compile(piece);
            }
            if (hopeless || !piece.diags.isEmpty()) {
                readings.get(i).declares().forEach(d -> missing.add(d.name()));
            }
            readable = piece.diags.isEmpty() || readings.get(i) != Reading.NOTHING;
        }
        known.put(cell, now);
        return now;
    }

    private void compile(Known piece) {
        for (SnippetEvent event : jshell.eval(piece.cut.source())) {
            if (event.causeSnippet() != null) {
                continue;
            }
            if (event.status() == Snippet.Status.REJECTED) {
                jshell.diagnostics(event.snippet()).filter(Diag::isError).forEach(piece.diags::add);
            } else {
                piece.snippets.add(event.snippet());
            }
        }
    }

    private List<Problem> unresolved(Known piece, String text, Set<String> names) {
        List<Problem> problems = new ArrayList<>();
        for (Snippet snippet : piece.snippets) {
            if (snippet instanceof DeclarationSnippet declaration && jshell.status(snippet) != Snippet.Status.VALID) {
                jshell.unresolvedDependencies(declaration).forEach(name -> problems.add(plainly.unresolved(name, piece.cut, text, names)));
            }
        }
        return problems;
    }

    /** Names that another cell declares too. */
    private static List<Problem> twice(List<Reader.Cut> cuts, List<Reading> readings, Map<String, List<Reading>> elsewhere, String text) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            for (CellScan.Declared own : readings.get(i).declares()) {
                Reader.Cut cut = cuts.get(i);
                elsewhere.forEach((id, its) -> {
                    if (its.stream().anyMatch(r -> r.declares().contains(own))) {
                        int[] at = Plainly.word(own.name(), cut);
                        problems.add(new Problem(Place.of(text, at[0]), Place.of(text, at[1]),
                                "'" + own.name() + "' is declared in cell " + id + " too. Give one of the two another name."));
                    }
                });
            }
        }
        return problems;
    }

    /** An engine that loads nothing and runs nothing. */
    private static final class Idle implements ExecutionControl {
        @Override
        public void load(ClassBytecodes[] compiled) { }

        @Override
        public void redefine(ClassBytecodes[] compiled) { }

        @Override
        public String invoke(String className, String methodName) {
            return "";
        }

        @Override
        public String varValue(String className, String varName) {
            return "";
        }

        @Override
        public void addToClasspath(String path) { }

        @Override
        public void stop() { }

        @Override
        public Object extensionCommand(String command, Object arg) {
            return "";
        }

        @Override
        public void close() { }
    }
}
