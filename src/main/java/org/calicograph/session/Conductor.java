package org.calicograph.session;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Channel;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Signature;
import org.calicograph.wire.ToKernel;

/**
 * Decides what the kernel does next. All state is touched by one thread, {@code mind}; whatever comes
 * from outside is put in its queue, and after each thing it takes {@link #advance} looks for work.
 */
final class Conductor implements KernelProcess.Ear {

    private static final Duration GRACE = Duration.ofMillis(900);
    private static final int MOST_STARTS = 2;

    private final SessionOptions options;
    private final SessionListener listener;
    private final ScheduledExecutorService mind = Executors.newSingleThreadScheduledExecutor(named("session"));
    private final ExecutorService teller = Executors.newSingleThreadExecutor(named("session events"));

    private final Map<String, Work> cells = new LinkedHashMap<>();
    private final Map<String, String> dialValues = new LinkedHashMap<>();
    private final Set<String> turned = new LinkedHashSet<>();
    private final List<Promise> promises = new ArrayList<>();
    private final Map<Long, Consumer<Optional<FromKernel>>> answers = new LinkedHashMap<>();
    private final Map<String, Exhibit> exhibits = new LinkedHashMap<>();
    private final Map<String, FromKernel.Evaluated> verdicts = new LinkedHashMap<>();

    private Dependencies graph = Dependencies.NONE;
    private boolean graphIsOld = true;
    private boolean scanning;
    private Optional<KernelProcess> kernel = Optional.empty();
    private Optional<KernelProcess> spare = Optional.empty();
    private final Map<KernelProcess, FromKernel.Ready> ready = new LinkedHashMap<>();
    private int failedStarts;
    private Optional<Run> run = Optional.empty();
    private long tickets;
    private boolean closed;

    private volatile Map<String, CellState> shownStates = Map.of();
    private volatile Map<String, List<String>> shownNeeds = Map.of();
    private volatile List<Dial> shownDials = List.of();
    private volatile Map<String, String> shownValues = Map.of();
    private volatile KernelState shownKernel = new KernelState.Starting();

    private record Promise(Set<String> cells, CompletableFuture<Void> future) { }

    /** What the kernel is at: one cell, or the cells that follow from a dial. */
    private static final class Run {
        final long ticket;
        final boolean turn;
        Optional<String> cell = Optional.empty();
        boolean began;
        /** Why it is being ended, once it is. */
        Optional<Failure> ending = Optional.empty();

        Run(long ticket, boolean turn) {
            this.ticket = ticket;
            this.turn = turn;
        }
    }

    Conductor(List<CellSource> sources, Map<String, String> dials, SessionOptions options, SessionListener listener) {
        this.options = options;
        this.listener = listener;
        dialValues.putAll(dials);
        shownValues = Map.copyOf(dials);
        for (CellSource source : sources) {
            if (cells.put(source.id(), new Work(source)) != null) {
                throw new IllegalArgumentException("two cells have the id " + source.id() + "; give one of them another");
            }
        }
        publish();
        act(this::startKernel);
    }

    private static ThreadFactory named(String name) {
        return work -> {
            Thread thread = new Thread(work, "calicograph " + name);
            thread.setDaemon(true);
            return thread;
        };
    }

    // --- Called from any thread ---

    CompletableFuture<Void> draw(Collection<String> ids) {
        requireKnown(ids);
        return want(() -> ids);
    }

    CompletableFuture<Void> drawAll() {
        return want(() -> List.copyOf(cells.keySet()));
    }

    CompletableFuture<Void> drawStale() {
        CompletableFuture<Void> future = new CompletableFuture<>();
        want(() -> cells.values().stream()
                .filter(w -> w.state instanceof CellState.Undrawn || w.state instanceof CellState.Stale).map(w -> w.id).toList(),
                () -> Set.copyOf(cells.keySet()), future);
        return future;
    }

    private CompletableFuture<Void> want(java.util.function.Supplier<Collection<String>> which) {
        CompletableFuture<Void> future = new CompletableFuture<>();
        want(which, () -> Set.copyOf(which.get()), future);
        return future;
    }

    /** @param awaited the cells whose rest the future waits for */
    private CompletableFuture<Void> want(java.util.function.Supplier<Collection<String>> which,
                                         java.util.function.Supplier<Set<String>> awaited, CompletableFuture<Void> future) {
        act(() -> {
            Set<String> ids = new LinkedHashSet<>(which.get());
            ids.retainAll(cells.keySet());
            failedStarts = 0;
            Set<String> all = awaited.get();
            ids.forEach(id -> request(cells.get(id)));
            promises.add(new Promise(all, future));
        });
        if (closed) {
            future.complete(null);
        }
        return future;
    }

    void edit(String id, String text) {
        requireKnown(List.of(id));
        act(() -> {
            Work work = cells.get(id);
            if (work != null && !work.text.equals(text)) {
                work.text = text;
                work.scan = Optional.empty();
                goStale(work);
                graph.dependents(id).forEach(other -> goStale(cells.get(other)));
            }
        });
    }

    void arrange(List<CellSource> sources) {
        act(() -> {
            Map<String, Work> next = new LinkedHashMap<>();
            for (CellSource source : sources) {
                Work work = cells.containsKey(source.id()) ? cells.get(source.id()) : new Work(source);
                if (!work.text.equals(source.text())) {
                    work.text = source.text();
                    work.scan = Optional.empty();
                    goStale(work);
                }
                next.put(source.id(), work);
            }
            List<String> lost = cells.keySet().stream().filter(id -> !next.containsKey(id)).toList();
            for (String id : lost) {
                graph.dependents(id).forEach(other -> goStale(cells.get(other)));
                if (run.isPresent() && run.get().cell.equals(Optional.of(id))) {
                    end(new Failure.Stopped());
                }
            }
            cells.clear();
            cells.putAll(next);
            graphIsOld = true;
            if (!lost.isEmpty()) {
                kernel.ifPresent(k -> k.send(new ToKernel.Forget(lost)));
            }
        });
    }

    void setDial(String name, String value) {
        String kept = value;
        for (Dial dial : shownDials) {
            if (dial.name().equals(name)) {
                kept = dial.turnedTo(value).text();
            }
        }
        String text = kept;
        act(() -> {
            dialValues.put(name, text);
            turned.add(name);
            for (Work work : cells.values()) {
                List<Dial> dials = new ArrayList<>();
                for (Dial dial : work.dials) {
                    dials.add(dial.name().equals(name) ? dial.turnedTo(text) : dial);
                }
                work.dials = dials;
            }
        });
    }

    void stop() {
        act(() -> {
            for (Work work : cells.values()) {
                if (work.state instanceof CellState.Waiting) {
                    work.wanted = false;
                    stands(work, work.before);
                }
            }
            turned.clear();
            run.ifPresent(r -> end(new Failure.Stopped()));
        });
    }

    void kill(boolean again) {
        act(() -> {
            failedStarts = 0;
            run.ifPresent(r -> r.ending = r.ending.or(() -> Optional.of(new Failure.Stopped())));
            lose(again ? "restarted" : "ended on request");
            if (again) {
                startKernel();
            }
        });
    }

    CompletableFuture<Completions> complete(String cell, String text, int offset) {
        return ask(Completions.NONE, ticket -> new ToKernel.Complete(ticket, cell, unborn(cell), text, offset),
                said -> said instanceof FromKernel.Suggested s ? new Completions(s.anchor(), s.suggestions()) : Completions.NONE);
    }

    CompletableFuture<List<Signature>> explain(String cell, String text, int offset) {
        return ask(List.of(), ticket -> new ToKernel.Explain(ticket, cell, unborn(cell), text, offset),
                said -> said instanceof FromKernel.Explained e ? e.signatures() : List.of());
    }

    CompletableFuture<Catalogue> browse() {
        return ask(Catalogue.EMPTY, ToKernel.Browse::new, said -> said instanceof FromKernel.Browsed b ? b.catalogue() : Catalogue.EMPTY);
    }

    private <T> CompletableFuture<T> ask(T nothing, java.util.function.LongFunction<ToKernel> question,
                                         java.util.function.Function<FromKernel, T> answer) {
        CompletableFuture<T> future = new CompletableFuture<>();
        act(() -> {
            startKernel();
            if (kernel.isEmpty()) {
                future.complete(nothing);
                return;
            }
            long ticket = ++tickets;
            answers.put(ticket, said -> future.complete(said.map(answer).orElse(nothing)));
            kernel.get().send(question.apply(ticket));
        });
        if (closed) {
            future.complete(nothing);
        }
        return future;
    }

    /** The texts of cells whose names the kernel doesn't hold, in order. */
    private List<String> unborn(String but) {
        return cells.values().stream().filter(w -> !w.alive && !w.id.equals(but)).map(w -> w.text).toList();
    }

    List<Dial> dials() {
        return shownDials;
    }

    Map<String, String> dialValues() {
        return shownValues;
    }

    CellState state(String cell) {
        requireKnown(List.of(cell));
        CellState state = shownStates.get(cell);
        return state == null ? new CellState.Undrawn() : state;
    }

    Map<String, CellState> states() {
        return shownStates;
    }

    Map<String, List<String>> needs() {
        return shownNeeds;
    }

    KernelState kernelState() {
        return shownKernel;
    }

    void close() {
        act(() -> {
            closed = true;
            teller.shutdownNow();
            kernel.ifPresent(KernelProcess::kill);
            spare.ifPresent(KernelProcess::kill);
            kernel = Optional.empty();
            spare = Optional.empty();
            List.copyOf(answers.values()).forEach(a -> a.accept(Optional.empty()));
            promises.forEach(p -> p.future.complete(null));
            mind.shutdown();
        });
    }

    private void requireKnown(Collection<String> ids) {
        for (String id : ids) {
            if (!shownStates.containsKey(id)) {
                throw new IllegalArgumentException("there is no code cell '" + id + "' in this notebook; it has " + shownStates.keySet());
            }
        }
    }

    private void act(Runnable what) {
        try {
            mind.execute(() -> {
                if (closed) {
                    return;
                }
                try {
                    what.run();
                    if (!closed) {
                        advance();
                        publish();
                    }
                } catch (RuntimeException e) {
                    // A fault of ours: told, and the session goes on.
                    System.getLogger(Conductor.class.getName()).log(System.Logger.Level.ERROR, "the session stumbled", e);
                }
            });
        } catch (RejectedExecutionException e) {
            // Closed: nothing is to happen any more.
        }
    }

    private void later(Duration delay, Runnable what) {
        mind.schedule(() -> act(what), delay.toMillis(), TimeUnit.MILLISECONDS);
    }

    // --- What is to be drawn ---

    private void request(Work work) {
        work.wanted = true;
        work.alive = false;
        wait(work);
        // What it assigns to must start anew, or the assignment would happen twice.
        work.scan.ifPresent(scan -> scan.writes().forEach(name -> cells.values().stream()
                .filter(w -> w != work && w.scan.isPresent() && w.scan.get().declares().stream().anyMatch(d -> d.name().equals(name)))
                .forEach(w -> w.alive = false)));
    }

    private void wait(Work work) {
        if (!work.state.pending()) {
            work.before = work.state;
        }
        if (!(work.state instanceof CellState.Drawing)) {
            stands(work, new CellState.Waiting());
        }
    }

    private void goStale(Work work) {
        if (work == null) {
            return;
        }
        work.alive = false;
        work.dials = work.dials.stream().toList();
        CellState stale = new CellState.Stale();
        if (work.state.pending()) {
            work.before = work.before instanceof CellState.Undrawn ? work.before : stale;
        } else if (!(work.state instanceof CellState.Undrawn)) {
            stands(work, stale);
        }
    }

    private void advance() {
        keepPromises();
        if (kernel.isEmpty() || run.isPresent()) {
            if (kernel.isEmpty() && (cells.values().stream().anyMatch(w -> w.wanted))) {
                startKernel();
            }
            scan();
            return;
        }
        scan();
        if (scanning) {
            return;
        }
        settleGraph();
        if (turnDials()) {
            return;
        }
        while (run.isEmpty() && kernel.isPresent()) {
            Optional<Work> next = next();
            if (next.isEmpty()) {
                break;
            }
            draw(next.get());
        }
        keepPromises();
    }

    private void scan() {
        List<Work> unread = cells.values().stream().filter(w -> w.scan.isEmpty()).toList();
        if (scanning || unread.isEmpty() || kernel.isEmpty()) {
            return;
        }
        scanning = true;
        long ticket = ++tickets;
        Map<String, String> asked = new LinkedHashMap<>();
        unread.forEach(w -> asked.put(w.id, w.text));
        answers.put(ticket, said -> {
            scanning = false;
            if (said.isPresent() && said.get() instanceof FromKernel.Scanned scanned) {
                for (CellScan scan : scanned.scans()) {
                    Work work = cells.get(scan.cell());
                    if (work != null && work.text.equals(asked.get(scan.cell()))) {
                        work.scan = Optional.of(scan);
                    }
                }
                graphIsOld = true;
            }
        });
        kernel.get().send(new ToKernel.Scan(ticket, List.copyOf(asked.keySet()), List.copyOf(asked.values())));
        KernelProcess asker = kernel.get();
        later(options.patience(), () -> {
            if (answers.containsKey(ticket) && kernel.equals(Optional.of(asker))) {
                fallSilent();
            }
        });
    }

    private void settleGraph() {
        if (!graphIsOld || cells.values().stream().anyMatch(w -> w.scan.isEmpty())) {
            return;
        }
        Dependencies old = graph;
        graph = Dependencies.of(cells.values().stream().map(w -> w.scan.get()).toList());
        graphIsOld = false;
        for (Work work : cells.values()) {
            boolean same = Objects.equals(old.needs().get(work.id), graph.needs().get(work.id))
                    && Objects.equals(old.problems().get(work.id), graph.problems().get(work.id));
            if (!same && old.needs().containsKey(work.id)) {
                goStale(work);
                graph.dependents(work.id).forEach(other -> goStale(cells.get(other)));
            } else if (work.state instanceof CellState.Stale || work.state.pending() && !work.alive) {
                graph.dependents(work.id).forEach(other -> goStale(cells.get(other)));
            }
        }
    }

    /** The next cell to be drawn: wanted, or needed by a wanted one and not up to date. */
    private Optional<Work> next() {
        List<String> wanted = cells.values().stream().filter(w -> w.wanted).map(w -> w.id).toList();
        Set<String> due = new HashSet<>(wanted);
        for (String id : graph.needed(wanted)) {
            Work need = cells.get(id);
            if (!need.alive && !(need.state instanceof CellState.Failed)) {
                due.add(id);
            }
        }
        return graph.order().stream().filter(due::contains).findFirst().map(cells::get);
    }

    private void draw(Work work) {
        boolean rebuilt = !work.wanted && work.state instanceof CellState.Done;
        work.wanted = false;
        Optional<Failure> hopeless = Optional.ofNullable(graph.problems().get(work.id)).or(() -> {
            List<String> failed = graph.needs().get(work.id).stream()
                    .filter(id -> cells.get(id).state instanceof CellState.Failed || !cells.get(id).alive).toList();
            return failed.isEmpty() ? Optional.empty() : Optional.of(new Failure.Depends(failed));
        });
        Set<String> dependents = graph.dependents(work.id);
        if (!rebuilt) {
            dependents.stream().filter(id -> !graph.problems().containsKey(id)).forEach(id -> goStale(cells.get(id)));
        }
        if (hopeless.isPresent()) {
            work.alive = false;
            work.dials = List.of();
            stands(work, new CellState.Failed(hopeless.get(), "", Duration.ZERO));
            return;
        }
        wait(work);
        Run next = new Run(++tickets, false);
        next.cell = Optional.of(work.id);
        run = Optional.of(next);
        turned.removeAll(work.dials.stream().map(Dial::name).toList());
        List<String> stale = dependents.stream().filter(id -> !cells.get(id).alive).toList();
        kernel.get().send(new ToKernel.Evaluate(next.ticket, work.id, work.text, Map.copyOf(dialValues), stale));
        expectToBegin(next);
    }

    private void expectToBegin(Run expected) {
        later(options.patience(), () -> {
            if (run.equals(Optional.of(expected)) && !expected.began) {
                fallSilent();
            }
        });
    }

    private void fallSilent() {
        run.ifPresent(r -> r.ending = r.ending.or(() -> Optional.of(new Failure.KernelDied("it gave no answer for "
                + options.patience().toMillis() + " ms"))));
        failedStarts++;
        lose("it gave no answer for " + options.patience().toMillis() + " ms and was ended");
        startKernel();
    }

    /** Begins a turn if a dial has been turned; true if the kernel is at it now. */
    private boolean turnDials() {
        if (turned.isEmpty() || cells.values().stream().anyMatch(w -> w.wanted)) {
            return false;
        }
        Set<String> names = Set.copyOf(turned);
        turned.clear();
        List<Work> owners = cells.values().stream().filter(w -> w.dials.stream().anyMatch(d -> names.contains(d.name()))).toList();
        // A cell that refused a dial's value declares no dial; it may like the new value better.
        List<Work> refused = cells.values().stream().filter(w -> w.state instanceof CellState.Failed f
                && f.failure() instanceof Failure.DialRefused r && names.contains(r.dial())).toList();
        refused.forEach(this::request);
        Set<String> reached = new LinkedHashSet<>();
        for (Work owner : owners) {
            reached.add(owner.id);
            reached.addAll(graph.dependents(owner.id));
        }
        if (reached.isEmpty()) {
            return false;
        }
        if (owners.stream().anyMatch(w -> !w.alive)) {
            reached.stream().map(cells::get).filter(Work::drawnBefore).forEach(this::request);
            return false;
        }
        List<String> alive = graph.order().stream().filter(id -> cells.get(id).alive).toList();
        Run turn = new Run(++tickets, true);
        run = Optional.of(turn);
        answers.put(turn.ticket, said -> {
            run = Optional.empty();
            said.ifPresent(s -> {
                List<String> anew = s instanceof FromKernel.Turned t ? t.anew() : List.of();
                for (String id : graph.order()) {
                    Work work = cells.get(id);
                    boolean failedBefore = reached.contains(id) && !work.alive && work.drawnBefore();
                    if (work != null && (anew.contains(id) || failedBefore)) {
                        request(work);
                    }
                }
            });
        });
        kernel.get().send(new ToKernel.Turn(turn.ticket, Map.copyOf(dialValues), alive));
        return true;
    }

    /** A turned dial may still change what any promise is about. */
    private void keepPromises() {
        if (!closed && (!turned.isEmpty() && kernel.isPresent() || run.isPresent() && run.get().turn)) {
            return;
        }
        for (Promise promise : List.copyOf(promises)) {
            if (promise.cells.stream().map(cells::get).filter(Objects::nonNull).noneMatch(w -> w.wanted || w.state.pending())) {
                promises.remove(promise);
                publish();
                promise.future.complete(null);
            }
        }
    }

    // --- What the kernel says ---

    @Override
    public void said(KernelProcess from, FromKernel message) {
        act(() -> hear(from, message));
    }

    @Override
    public void delivered(KernelProcess from, Channel.Delivery delivery) {
        act(() -> {
            if (kernel.equals(Optional.of(from))) {
                String key = delivery.ticket() + " " + delivery.cell();
                FromKernel.Evaluated verdict = verdicts.remove(key);
                if (verdict != null) {
                    evaluated(verdict, delivery.exhibit());
                } else {
                    exhibits.put(key, delivery.exhibit());
                }
            }
        });
    }

    private void hear(KernelProcess from, FromKernel message) {
        if (message instanceof FromKernel.Ready said) {
            ready.put(from, said);
        }
        if (!kernel.equals(Optional.of(from))) {
            return;
        }
        if (message instanceof FromKernel.Ready said) {
            tell(new KernelState.Ready(from.pid(), said.broken()));
            if (options.spare() && spare.isEmpty()) {
                later(Duration.ofMillis(500), this::startSpare);
            }
        } else if (message instanceof FromKernel.Began said) {
            began(said);
        } else if (message instanceof FromKernel.Evaluated said) {
            String key = said.ticket() + " " + said.cell();
            if (!said.exhibit()) {
                evaluated(said, Exhibit.NOTHING);
            } else if (exhibits.containsKey(key)) {
                evaluated(said, exhibits.remove(key));
            } else {
                verdicts.put(key, said);
            }
        } else if (message instanceof FromKernel.Scanned said) {
            answer(said.ticket(), said);
        } else if (message instanceof FromKernel.Turned said) {
            // Exhibits that are still on their way belong to the turn; it ends behind them.
            if (verdicts.keySet().stream().anyMatch(k -> k.startsWith(said.ticket() + " "))) {
                later(Duration.ofMillis(5), () -> hear(from, said));
            } else {
                answer(said.ticket(), said);
            }
        } else if (message instanceof FromKernel.Suggested said) {
            answer(said.ticket(), said);
        } else if (message instanceof FromKernel.Explained said) {
            answer(said.ticket(), said);
        } else if (message instanceof FromKernel.Browsed said) {
            answer(said.ticket(), said);
        }
    }

    private void answer(long ticket, FromKernel message) {
        Consumer<Optional<FromKernel>> waiting = answers.remove(ticket);
        if (waiting != null) {
            waiting.accept(Optional.of(message));
        }
    }

    private void began(FromKernel.Began said) {
        if (run.isEmpty() || run.get().ticket != said.ticket()) {
            return;
        }
        Run current = run.get();
        current.cell = Optional.of(said.cell());
        current.began = true;
        Work work = cells.get(said.cell());
        if (work != null) {
            if (!work.state.pending()) {
                work.before = work.state;
            }
            stands(work, new CellState.Drawing(Instant.now()));
        }
        later(options.timeLimit(), () -> {
            if (run.equals(Optional.of(current)) && current.cell.equals(Optional.of(said.cell()))
                    && cells.get(said.cell()) == work && work.state instanceof CellState.Drawing) {
                end(new Failure.TimedOut(options.timeLimit().toMillis()));
            }
        });
    }

    private void evaluated(FromKernel.Evaluated said, Exhibit exhibit) {
        if (run.isEmpty() || run.get().ticket != said.ticket()) {
            return;
        }
        Run current = run.get();
        Work work = cells.get(said.cell());
        if (!current.turn) {
            run = Optional.empty();
        }
        failedStarts = 0;
        Optional<Failure> failure = said.failure();
        if (failure.isPresent() && failure.get() instanceof Failure.Stopped && current.ending.isPresent()) {
            failure = current.ending;
        }
        if (work != null) {
            boolean overtaken = work.before instanceof CellState.Stale && !work.wanted && work.scan.isEmpty();
            work.alive = failure.isEmpty() && !overtaken && !work.wanted;
            work.dials = failure.isEmpty() || !said.dials().isEmpty() ? said.dials() : work.dials;
            Duration time = Duration.ofNanos(said.nanos());
            CellState result = failure.isPresent() ? new CellState.Failed(failure.get(), said.output(), time)
                    : new CellState.Done(exhibit, said.kind(), said.output(), time);
            if (work.wanted) {
                work.before = result;
                stands(work, new CellState.Waiting());
            } else {
                stands(work, overtaken ? new CellState.Stale() : result);
            }
            if (failure.isPresent() && current.turn) {
                Failure depends = new Failure.Depends(List.of(work.id));
                for (String id : graph.dependents(work.id)) {
                    Work other = cells.get(id);
                    if (other.drawnBefore() && !other.state.pending()) {
                        other.alive = false;
                        stands(other, new CellState.Failed(depends, "", Duration.ZERO));
                    }
                }
            }
        }
        if (failure.isPresent() && failure.get() instanceof Failure.OutOfMemory) {
            lose("it ran out of memory");
            startKernel();
        }
    }

    /** Ends what the kernel is at, gently at first, by force after a while. */
    private void end(Failure why) {
        Run current = run.get();
        if (current.ending.isPresent()) {
            return;
        }
        current.ending = Optional.of(why);
        kernel.ifPresent(k -> k.send(new ToKernel.Stop()));
        later(GRACE, () -> {
            if (run.equals(Optional.of(current))) {
                lose("it didn't stop by itself and was ended");
                startKernel();
            }
        });
    }

    // --- The kernel's coming and going ---

    private void startKernel() {
        if (kernel.isPresent() || closed) {
            return;
        }
        if (failedStarts >= MOST_STARTS) {
            giveUp();
            return;
        }
        if (spare.isPresent()) {
            kernel = spare;
            spare = Optional.empty();
            FromKernel.Ready said = ready.get(kernel.get());
            if (said != null) {
                tell(new KernelState.Ready(kernel.get().pid(), said.broken()));
                later(Duration.ofMillis(500), this::startSpare);
            } else {
                tell(new KernelState.Starting());
            }
            return;
        }
        tell(new KernelState.Starting());
        try {
            kernel = Optional.of(new KernelProcess(options, this));
        } catch (IOException e) {
            failedStarts = MOST_STARTS;
            tell(new KernelState.Gone("it can't be started: " + e.getMessage()));
            giveUp();
        }
    }

    private void startSpare() {
        if (options.spare() && spare.isEmpty() && kernel.isPresent() && failedStarts == 0) {
            try {
                spare = Optional.of(new KernelProcess(options, this));
            } catch (IOException e) {
                spare = Optional.empty();
            }
        }
    }

    /** No kernel can be had: whoever waits for one is told so. */
    private void giveUp() {
        String why = shownKernel instanceof KernelState.Gone gone ? gone.why() : "it could not be started";
        for (Work work : cells.values()) {
            if (work.wanted || work.state.pending()) {
                work.wanted = false;
                stands(work, new CellState.Failed(new Failure.KernelDied(why), "", Duration.ZERO));
            }
        }
        turned.clear();
        forgetQuestions();
        keepPromises();
    }

    private void forgetQuestions() {
        List<Consumer<Optional<FromKernel>>> open = List.copyOf(answers.values());
        answers.clear();
        open.forEach(a -> a.accept(Optional.empty()));
    }

    /** Ends the kernel, if it still runs, and everything that it held. */
    private void lose(String why) {
        if (kernel.isEmpty()) {
            return;
        }
        KernelProcess old = kernel.get();
        kernel = Optional.empty();
        ready.remove(old);
        old.kill();
        afterLoss(new Failure.KernelDied(why), why);
    }

    private void afterLoss(Failure unlessEnding, String why) {
        exhibits.clear();
        verdicts.clear();
        cells.values().forEach(w -> w.alive = false);
        if (run.isPresent()) {
            Run lost = run.get();
            run = Optional.empty();
            Failure failure = lost.ending.orElse(unlessEnding);
            for (Work work : cells.values()) {
                boolean atWork = lost.cell.equals(Optional.of(work.id)) && work.state.pending() || work.state instanceof CellState.Drawing;
                if (atWork && !work.wanted) {
                    stands(work, new CellState.Failed(failure, "", Duration.ZERO));
                } else if (atWork) {
                    stands(work, new CellState.Waiting());
                }
            }
        }
        scanning = false;
        forgetQuestions();
        tell(new KernelState.Gone(why));
    }

    @Override
    public void gone(KernelProcess from, int code, String lastWords) {
        act(() -> {
            FromKernel.Ready was = ready.remove(from);
            if (spare.equals(Optional.of(from))) {
                spare = Optional.empty();
            }
            if (!kernel.equals(Optional.of(from))) {
                return;
            }
            kernel = Optional.empty();
            boolean began = run.isPresent() && run.get().began;
            String how = how(code, lastWords);
            if (!began) {
                failedStarts++;
            }
            boolean exited = began && code >= 0 && code < 128 && was != null && code != ToKernel.LOST && code != ToKernel.NO_MEMORY;
            Failure failure = exited ? new Failure.ExitedKernel(code)
                    : code == ToKernel.NO_MEMORY ? new Failure.OutOfMemory(options.heapMegabytes()) : new Failure.KernelDied(how);
            if (!began && run.isPresent() && failedStarts < MOST_STARTS) {
                // It never came to the cell: the next kernel draws it.
                run.get().cell.map(cells::get).ifPresent(w -> w.wanted = true);
            }
            afterLoss(failure, exited ? "a cell ended it with System.exit(" + code + ")" : how);
            startKernel();
        });
    }

    private static String how(int code, String lastWords) {
        String end = code > 128 ? "it was ended by signal " + (code - 128) : "it ended with code " + code;
        return lastWords.isBlank() ? end : end + " (" + lastWords.lines().findFirst().orElse("") + ")";
    }

    // --- What is told ---

    private void stands(Work work, CellState state) {
        if (work.state.equals(state)) {
            return;
        }
        work.state = state;
        publish();
        tellLater(() -> listener.stands(work.id, state));
    }

    private void tell(KernelState state) {
        shownKernel = state;
        tellLater(() -> listener.kernel(state));
    }

    private void publish() {
        Map<String, CellState> states = new LinkedHashMap<>();
        Map<String, List<String>> needs = new LinkedHashMap<>();
        List<Dial> dials = new ArrayList<>();
        for (Work work : cells.values()) {
            states.put(work.id, work.state);
            needs.put(work.id, List.copyOf(graph.needs().getOrDefault(work.id, Set.of())));
            dials.addAll(work.dials);
        }
        shownStates = java.util.Collections.unmodifiableMap(states);
        shownNeeds = java.util.Collections.unmodifiableMap(needs);
        shownValues = Map.copyOf(dialValues);
        if (!dials.equals(shownDials)) {
            List<Dial> now = List.copyOf(dials);
            shownDials = now;
            tellLater(() -> listener.dials(now));
        }
    }

    private void tellLater(Runnable telling) {
        try {
            teller.execute(telling);
        } catch (RejectedExecutionException e) {
            // Closed: the listener is told nothing more.
        }
    }
}
