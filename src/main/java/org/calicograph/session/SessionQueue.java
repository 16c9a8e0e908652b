package org.calicograph.session;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.CutList;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Failure;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Problem;
import org.calicograph.wire.Signature;
import org.calicograph.wire.ToKernel;

/**
 * Puts whatever comes from outside in the queue of one thread, which alone touches the
 * {@link CellStandings} and the {@link KernelWork}; after each thing it looks for what comes next.
 */
final class SessionQueue {

    private final ScheduledExecutorService mind = Executors.newSingleThreadScheduledExecutor(named("session"));
    private final CellStandings board;
    private final KernelWork course;
    private final List<Promise> promises = new ArrayList<>();
    private volatile boolean closed;

    private record Promise(Set<String> cells, CompletableFuture<Void> future) { }

    SessionQueue(List<CellSource> sources, Map<String, String> dials, SessionOptions options, SessionListener listener) {
        this.board = new CellStandings(listener);
        this.course = new KernelWork(options, this, board);
        board.dialValues.putAll(dials);
        for (CellSource source : sources) {
            if (board.cells.put(source.id(), new CellProgress(source)) != null) {
                throw new IllegalArgumentException("two cells have the id " + source.id() + "; give one of them another");
            }
        }
        board.publish();
        act(() -> course.kernels().start());
    }

    static ThreadFactory named(String name) {
        return work -> {
            Thread thread = new Thread(work, "calicograph " + name);
            thread.setDaemon(true);
            return thread;
        };
    }

    CellStandings board() {
        return board;
    }

    boolean isClosed() {
        return closed;
    }

    void act(Runnable what) {
        try {
            mind.execute(() -> {
                if (closed) {
                    return;
                }
                try {
                    what.run();
                    if (!closed) {
                        keepPromises();
                        course.advance();
                        keepPromises();
                        board.publish();
                    }
                } catch (RuntimeException e) {
                    // A fault of ours: told, and the session goes on.
                    System.getLogger(SessionQueue.class.getName()).log(System.Logger.Level.ERROR, "the session stumbled", e);
                }
            });
        } catch (RejectedExecutionException e) {
            // Closed: nothing is to happen any more.
        }
    }

    void later(Duration delay, Runnable what) {
        try {
            mind.schedule(() -> act(what), delay.toMillis(), TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            // Closed: nothing is to happen any more.
        }
    }

    /** A turned dial may still change what any promise is about. */
    private void keepPromises() {
        if (course.isTurning()) {
            return;
        }
        for (Promise promise : List.copyOf(promises)) {
            if (board.works(promise.cells).stream().noneMatch(w -> w.wanted || w.state.pending())) {
                promises.remove(promise);
                board.publish();
                board.afterTelling(() -> promise.future.complete(null));
            }
        }
    }

    CompletableFuture<Void> draw(Collection<String> ids) {
        board.requireKnown(ids);
        return want(() -> ids, () -> ids);
    }

    CompletableFuture<Void> drawAll() {
        return want(() -> List.copyOf(board.cells.keySet()), () -> List.copyOf(board.cells.keySet()));
    }

    CompletableFuture<Void> drawStale() {
        return want(() -> board.cells.values().stream()
                .filter(w -> w.state instanceof CellState.Undrawn || w.state instanceof CellState.Stale).map(w -> w.id).toList(),
                () -> List.copyOf(board.cells.keySet()));
    }

    /** @param awaited the cells whose rest the future waits for */
    private CompletableFuture<Void> want(Supplier<Collection<String>> which, Supplier<Collection<String>> awaited) {
        CompletableFuture<Void> future = new CompletableFuture<>();
        act(() -> {
            Set<String> ids = new LinkedHashSet<>(which.get());
            course.kernels().proven();
            board.works(ids).forEach(board::request);
            promises.add(new Promise(new LinkedHashSet<>(awaited.get()), future));
        });
        return unlessClosed(future, null);
    }

    private <T> CompletableFuture<T> unlessClosed(CompletableFuture<T> future, T nothing) {
        if (closed) {
            future.complete(nothing);
        }
        return future;
    }

    void edit(String id, String text) {
        board.requireKnown(List.of(id));
        act(() -> board.works(List.of(id)).forEach(work -> board.retext(work, text)));
    }

    void arrange(List<CellSource> sources) {
        act(() -> {
            Map<String, CellProgress> next = new LinkedHashMap<>();
            for (CellSource source : sources) {
                CellProgress work = board.cells.containsKey(source.id()) ? board.cells.get(source.id()) : new CellProgress(source);
                board.retext(work, source.text());
                next.put(source.id(), work);
            }
            List<String> lost = board.cells.keySet().stream().filter(id -> !next.containsKey(id)).toList();
            for (String id : lost) {
                board.dependents(id).forEach(board::goStale);
                if (course.isAt(id)) {
                    course.end(new Failure.Stopped());
                }
            }
            board.cells.clear();
            board.cells.putAll(next);
            board.graphIsOld = true;
            if (!lost.isEmpty()) {
                course.kernels().send(new ToKernel.Forget(lost));
            }
        });
    }

    void setDial(String name, String value, List<PixelFrame> easels) {
        String kept = value;
        for (Dial dial : board.dials()) {
            if (dial.name().equals(name)) {
                kept = dial.turnedTo(value).text();
            }
        }
        String text = kept;
        act(() -> {
            board.dialTurned(name, text);
            course.turned(name, easels);
        });
    }

    void stop() {
        act(course::stop);
    }

    void kill(boolean again) {
        act(() -> {
            course.kernels().proven();
            course.kernels().lose(again ? "restarted" : "ended on request", new Failure.Stopped());
            if (again) {
                course.kernels().start();
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

    CompletableFuture<List<Problem>> check(String cell, String text) {
        return ask(List.of(), ticket -> {
            List<CellProgress> others = board.cells.values().stream().filter(w -> !w.id.equals(cell)).toList();
            return new ToKernel.Check(ticket, cell, text, others.stream().map(w -> w.id).toList(), others.stream().map(w -> w.text).toList());
        }, said -> said instanceof FromKernel.Checked c ? c.problems() : List.of());
    }

    CompletableFuture<List<CellScan>> scan(List<CellSource> texts) {
        return ask(List.of(), ticket -> new ToKernel.Scan(ticket, texts.stream().map(CellSource::id).toList(), texts.stream().map(CellSource::text).toList()),
                said -> said instanceof FromKernel.Scanned s ? s.scans() : List.of());
    }

    CompletableFuture<Catalogue> browse() {
        return ask(Catalogue.EMPTY, ToKernel.Browse::new, said -> said instanceof FromKernel.Browsed b ? b.catalogue() : Catalogue.EMPTY);
    }

    CompletableFuture<CutList> plan(String cell) {
        CutList none = CutList.none("It has to be drawn first.");
        return ask(none, ticket -> new ToKernel.Plan(ticket, cell), said -> said instanceof FromKernel.Planned p ? p.list() : none);
    }

    private <T> CompletableFuture<T> ask(T nothing, LongFunction<ToKernel> question, Function<FromKernel, T> answer) {
        CompletableFuture<T> future = new CompletableFuture<>();
        act(() -> {
            course.kernels().start();
            course.kernels().ask(question, said -> future.complete(said.map(answer).orElse(nothing)));
        });
        return unlessClosed(future, nothing);
    }

    /** The texts of cells whose names the kernel doesn't hold, in order. */
    private List<String> unborn(String but) {
        return board.cells.values().stream().filter(w -> !w.alive && !w.id.equals(but)).map(w -> w.text).toList();
    }

    void close() {
        act(() -> {
            closed = true;
            board.close();
            course.kernels().close();
            promises.forEach(p -> p.future.complete(null));
            mind.shutdownNow();
        });
    }
}
