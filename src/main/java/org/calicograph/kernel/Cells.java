package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.calicograph.drawing.Exhibit;
import org.calicograph.show.Show;
import org.calicograph.kernel.numbers.WholeDivision;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Dial;
import org.calicograph.wire.ExhibitFormat;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/**
 * The cells of a notebook as this process holds them: evaluates them with JShell and runs them again
 * when a dial turns. One thread evaluates; scans may come from another.
 */
final class Cells {

    /**
     * How a cell ended.
     *
     * @param exhibit as bytes; empty if there is nothing to see
     */
    record Result(Optional<Failure> failure, Optional<byte[]> exhibit, String kind, String output, List<Dial> dials, long nanos) { }

    private final ReentrantLock compiler = new ReentrantLock();
    private final Running running;
    private final Printing printing = new Printing();
    private final Reader reader = new Reader();
    private final Origins origins = new Origins();
    final Map<String, KernelCell> held = new LinkedHashMap<>();
    private final Faults faults;
    private final Plainly plainly;
    private final WholeDivision division;
    private final InProcess engine;
    private final JShell jshell;
    private final SourceCodeAnalysis analysis;
    private long evaluations;
    private long typesWithState;

    Cells(Running running, Stdlib stdlib, int heapMegabytes) {
        this.running = running;
        this.faults = new Faults(origins, cell -> held.containsKey(cell) ? held.get(cell).text : "", heapMegabytes);
        this.engine = new InProcess(running, compiler, new InProcess.Classes(stdlib.classes()));
        this.plainly = new Plainly(stdlib);
        this.division = Imports.division(stdlib);
        compiler.lock();
        try {
            this.jshell = JShell.builder().executionEngine(new jdk.jshell.spi.ExecutionControlProvider() {
                @Override
                public String name() {
                    return "calicograph";
                }

                @Override
                public jdk.jshell.spi.ExecutionControl generate(jdk.jshell.spi.ExecutionEnv env, Map<String, String> parameters) {
                    return engine;
                }
            }, Map.of()).compilerOptions(Imports.options(stdlib)).build();
            this.analysis = jshell.sourceCodeAnalysis();
            for (SnippetEvent event : jshell.eval(Imports.text(!stdlib.isEmpty()))) {
                if (event.status() != Snippet.Status.VALID) {
                    throw new IllegalStateException("the imports of the house do not compile: "
                            + jshell.diagnostics(event.snippet()).map(d -> d.getMessage(null)).collect(Collectors.joining("; ")));
                }
            }
        } finally {
            compiler.unlock();
        }
    }

    /** From now on what is printed in this process belongs to the cell at work. */
    void takeOverOutput() {
        printing.takeOver();
    }

    ReentrantLock compiler() {
        return compiler;
    }

    SourceCodeAnalysis analysis() {
        return analysis;
    }

    Reader reader() {
        return reader;
    }

    /** How many pieces have been compiled since the start. */
    long evaluations() {
        return evaluations;
    }

    List<CellScan> scan(List<String> cells, List<String> texts) {
        return reader.whole(cells, texts.stream().map(text -> cut(text).stream().map(Reader.Cut::source).toList()).toList());
    }

    private List<Reader.Cut> cut(String text) {
        compiler.lock();
        try {
            return Reader.cut(text, analysis);
        } finally {
            compiler.unlock();
        }
    }

    // --- Evaluation ---

    Result evaluate(String cell, String text, Map<String, String> dials, List<String> stale) {
        long start = System.nanoTime();
        stale.forEach(this::forget);
        forget(cell);
        KernelCell now = new KernelCell(text);
        held.put(cell, now);
        DialBoard.set(dials);
        List<Reader.Cut> cuts = cut(text);
        List<Reading> readings = reader.read(cuts.stream().map(Reader.Cut::source).toList());
        for (int i = 0; i < cuts.size(); i++) {
            now.pieces.add(piece(cell, cuts.get(i), readings.get(i)));
        }
        Optional<Failure> failure = Optional.empty();
        for (int i = 0; i < now.pieces.size() && failure.isEmpty(); i++) {
            Piece piece = now.pieces.get(i);
            printing.begin(now.printed());
            List<Problem> problems = compileAndRun(piece, text);
            piece.output = printing.end();
            failure = problems.isEmpty() ? taken(piece) : Optional.of(new Failure.DoesNotCompile(withLater(problems, now, i)));
        }
        if (failure.isEmpty()) {
            failure = unresolved(now);
        }
        now.complete = failure.isEmpty();
        return ended(cell, now, failure, start, Optional.empty());
    }

    /**
     * JShell takes the class that it has where the same text compiles to the same bytes. A type that
     * computes something once must be a new class each time, so it begins on another line each time.
     */
    private Piece piece(String cell, Reader.Cut cut, Reading reading) {
        int lines = reading.state() ? (int) (++typesWithState % 50_000) : 0;
        return new Piece(cell, "\n".repeat(lines) + cut.source(), cut.offset() - lines, reading);
    }

    private List<Problem> compileAndRun(Piece piece, String text) {
        evaluations++;
        DialBoard.at(piece);
        compiler.lock();
        try {
            List<Problem> problems = new ArrayList<>(Plainly.divisions(piece.reading().divisions(division, piece.source(), jshell), piece.offset(), text));
            for (SnippetEvent event : problems.isEmpty() ? jshell.eval(piece.source()) : List.<SnippetEvent>of()) {
                if (event.causeSnippet() != null) {
                    continue;
                }
                Snippet snippet = event.snippet();
                if (event.status() == Snippet.Status.REJECTED) {
                    jshell.diagnostics(snippet).filter(Diag::isError).forEach(d -> problems.add(plainly.problem(d, piece, text, names())));
                    if (problems.isEmpty()) {
                        Place at = Place.of(text, piece.offset());
                        problems.add(new Problem(at, at, "This does not compile."));
                    }
                } else {
                    piece.snippets.add(snippet);
                }
            }
            origins.add(piece, analysis);
            return problems;
        } finally {
            compiler.unlock();
            DialBoard.at(Piece.NONE);
        }
    }

    /** What all cells declare. */
    private Set<String> names() {
        return held.values().stream().flatMap(h -> h.pieces.stream()).flatMap(p -> p.reading().declares().stream())
                .map(CellScan.Declared::name).collect(Collectors.toSet());
    }

    /** Takes over what the engine ran for the piece; a failure if it threw. */
    private Optional<Failure> taken(Piece piece) {
        Optional<Failure> failure = Optional.empty();
        for (InProcess.Outcome outcome : engine.outcomes()) {
            piece.runs.add(outcome.method());
            piece.value = outcome.value();
            piece.hasValue = true;
            if (outcome.thrown().isPresent() && failure.isEmpty()) {
                failure = Optional.of(thrown(piece, outcome.thrown().get()));
            }
        }
        return failure;
    }

    private Failure thrown(Piece piece, Throwable thrown) {
        if (running.isStopping() && !(thrown instanceof OutOfMemoryError)) {
            return new Failure.Stopped();
        }
        return faults.of(piece.cell(), thrown);
    }

    /** The problems of the pieces behind a rejected one, without running them, as far as they don't follow from it. */
    private List<Problem> withLater(List<Problem> first, KernelCell cell, int rejected) {
        List<Problem> all = new ArrayList<>(first);
        Set<String> missing = new HashSet<>();
        cell.pieces.get(rejected).reading().declares().forEach(d -> missing.add(d.name()));
        boolean cut = cell.pieces.get(rejected).reading() == Reading.NOTHING;
        engine.dry(true);
        try {
            for (int i = rejected + 1; i < cell.pieces.size() && !cut; i++) {
                Piece piece = cell.pieces.get(i);
                List<Problem> more = piece.reading().readsAny(missing) ? List.of() : compileAndRun(piece, cell.text);
                all.addAll(more);
                if (!more.isEmpty() || piece.reading().readsAny(missing)) {
                    piece.reading().declares().forEach(d -> missing.add(d.name()));
                }
            }
        } finally {
            engine.dry(false);
        }
        return all.stream().distinct().sorted(java.util.Comparator.comparing(Problem::from)).toList();
    }

    /** Methods and types that compile only once a name is declared, which nothing has done. */
    private Optional<Failure> unresolved(KernelCell cell) {
        List<Problem> problems = new ArrayList<>();
        for (Piece piece : cell.pieces) {
            for (Snippet snippet : piece.snippets) {
                if (snippet instanceof jdk.jshell.DeclarationSnippet declaration && jshell.status(snippet) != Snippet.Status.VALID) {
                    Reader.Cut cut = new Reader.Cut(piece.source(), piece.offset());
                    jshell.unresolvedDependencies(declaration).forEach(name -> problems.add(plainly.unresolved(name, cut, cell.text, names())));
                }
            }
        }
        compiler.lock();
        try {
            cell.pieces.forEach(p -> origins.add(p, analysis));
        } finally {
            compiler.unlock();
        }
        return problems.isEmpty() ? Optional.empty() : Optional.of(new Failure.DoesNotCompile(problems));
    }

    private Result ended(String cell, KernelCell now, Optional<Failure> soFar, long start, Optional<Turning> turning) {
        long ran = System.nanoTime();
        now.owed = Optional.empty();
        Optional<Failure> failure = soFar;
        Optional<byte[]> bytes = Optional.empty();
        String kind = "";
        Piece last = now.pieces.isEmpty() ? Piece.NONE : now.pieces.get(now.pieces.size() - 1);
        boolean shows = failure.isEmpty() && last.hasValue && last.value != null && !isDial(last);
        String shown = "";
        if (shows) {
            kind = last.value.getClass().getSimpleName();
            printing.begin(now.printed());
            try {
                bytes = Optional.of(running.run(() -> {
                    Exhibit exhibit = Show.of(last.value);
                    boolean silent = turning.isPresent() && now.pieces.stream().allMatch(p -> p.output.isEmpty());
                    if (silent && turning.get().sketched(cell, exhibit, start, ran)) {
                        now.owed = Optional.of(new KernelCell.Owed(exhibit, last.value.getClass().getSimpleName(), System.nanoTime() - start));
                        return new byte[0];
                    }
                    return ExhibitFormat.bytes(exhibit);
                }));
            } catch (Throwable t) {
                Failure why = running.isStopping() ? new Failure.Stopped() : faults.of(cell, t);
                failure = Optional.of(why instanceof Failure.Threw threw ? new Failure.ShowFailed(kind, threw) : why);
            }
            shown = printing.end();
        }
        String output = now.pieces.stream().map(p -> p.output).collect(Collectors.joining()) + shown;
        return new Result(failure, failure.isPresent() ? Optional.empty() : bytes, kind, output, DialBoard.of(cell), System.nanoTime() - start);
    }

    /** A dial's own declaration shows nothing: the dial itself is there to be seen. */
    private static boolean isDial(Piece piece) {
        return piece.reading().kind() == Reading.Kind.VARIABLE && DialBoard.declares(piece);
    }

    void forget(String cell) {
        KernelCell old = held.remove(cell);
        DialBoard.forget(cell);
        if (old == null) {
            return;
        }
        origins.forget(cell);
        compiler.lock();
        try {
            List<Piece> back = new ArrayList<>(old.pieces);
            Collections.reverse(back);
            for (Piece piece : back) {
                piece.letGo();
                for (Snippet snippet : piece.snippets) {
                    if (jshell.status(snippet).isActive() && snippet.kind().isPersistent()) {
                        jshell.drop(snippet);
                    }
                }
            }
        } finally {
            compiler.unlock();
        }
    }

    // --- Dials ---

    /**
     * Runs again what depends on dials whose values have changed.
     *
     * @param order the cells that may be run, each behind those that it needs
     */
    Turning.End turn(Map<String, String> dials, List<String> order, Turning turning) {
        DialBoard.set(dials);
        List<String> cells = order.stream().filter(c -> held.containsKey(c) && held.get(c).complete).toList();
        Set<Piece> affected = Affected.by(DialBoard.turned(), cells.stream().map(c -> held.get(c).pieces).toList());
        List<String> reached = cells.stream().filter(c -> held.get(c).pieces.stream().anyMatch(affected::contains)).toList();
        if (affected.stream().anyMatch(p -> p.reading().state())) {
            return new Turning.End(reached, List.of());
        }
        Set<String> lost = new HashSet<>();
        List<String> owed = new ArrayList<>();
        for (String cell : reached) {
            KernelCell now = held.get(cell);
            if (now.pieces.stream().anyMatch(p -> p.reading().readsAny(lost))) {
                now.pieces.forEach(p -> p.reading().declares().forEach(d -> lost.add(d.name())));
                continue;
            }
            turning.begins(cell);
            long start = System.nanoTime();
            Optional<Failure> failure = Optional.empty();
            for (Piece piece : now.pieces) {
                if (affected.contains(piece) && failure.isEmpty()) {
                    failure = again(piece, now);
                }
            }
            Result result = ended(cell, now, failure, start, Optional.of(turning));
            if (result.failure().isPresent()) {
                now.pieces.forEach(p -> p.reading().declares().forEach(d -> lost.add(d.name())));
            }
            if (now.owed.isPresent() && result.failure().isEmpty()) {
                owed.add(cell);
            } else {
                turning.ends(cell, result);
            }
        }
        return new Turning.End(List.of(), owed);
    }

    /** What is owed for a cell; empty if nothing is, or not any more. */
    Optional<Result> owed(String cell) {
        KernelCell now = held.get(cell);
        if (now == null || now.owed.isEmpty()) {
            return Optional.empty();
        }
        KernelCell.Owed owed = now.owed.get();
        now.owed = Optional.empty();
        try {
            byte[] bytes = running.run(() -> ExhibitFormat.bytes(owed.exhibit()));
            return Optional.of(new Result(Optional.empty(), Optional.of(bytes), owed.kind(), "", DialBoard.of(cell), owed.nanos()));
        } catch (Throwable t) {
            Failure why = running.isStopping() ? new Failure.Stopped() : faults.of(cell, t);
            return Optional.of(new Result(Optional.of(why), Optional.empty(), owed.kind(), "", DialBoard.of(cell), owed.nanos()));
        }
    }

    private Optional<Failure> again(Piece piece, KernelCell cell) {
        piece.output = "";
        printing.begin(cell.printed());
        DialBoard.at(piece);
        try {
            for (java.lang.reflect.Method method : piece.runs) {
                InProcess.Outcome outcome = engine.run(method);
                piece.value = outcome.value();
                if (outcome.thrown().isPresent()) {
                    return Optional.of(thrown(piece, outcome.thrown().get()));
                }
            }
            return Optional.empty();
        } finally {
            DialBoard.at(Piece.NONE);
            piece.output = printing.end();
        }
    }
}
