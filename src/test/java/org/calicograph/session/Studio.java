package org.calicograph.session;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;

/** A session for tests: cells named a1, a2 …, a listener that remembers, and waiting without sleeping. */
final class Studio implements AutoCloseable, SessionListener {

    static final Duration PATIENCE = Duration.ofSeconds(30);

    final Session session;
    final List<String> events = Collections.synchronizedList(new ArrayList<>());
    final List<String> threads = Collections.synchronizedList(new ArrayList<>());

    final Map<String, Sketch> sketches = new java.util.concurrent.ConcurrentHashMap<>();

    private Studio(List<CellSource> cells, Map<String, String> dials, SessionOptions options) {
        this.session = Session.open(cells, dials, options, this);
    }

    static SessionOptions options(Path cache) {
        return SessionOptions.standard().withStdlib(List.of()).withCache(cache).withHeap(256);
    }

    static Studio open(SessionOptions options, Map<String, String> dials, String... texts) {
        return new Studio(cells(texts), dials, options);
    }

    static Studio open(Path cache, String... texts) {
        return open(options(cache), Map.of(), texts);
    }

    static List<CellSource> cells(String... texts) {
        List<CellSource> cells = new ArrayList<>();
        for (String text : texts) {
            cells.add(new CellSource("a" + (cells.size() + 1), text));
        }
        return cells;
    }

    /** Other cells in the same session, all undrawn. */
    Studio put(String... texts) {
        session.arrange(List.of());
        await("the old cells to go", () -> session.states().isEmpty());
        session.arrange(cells(texts));
        await("the new cells", () -> session.states().size() == texts.length);
        events.clear();
        return this;
    }

    Studio drawAll() {
        join(session.drawAll());
        return this;
    }

    Studio draw(String... cells) {
        join(session.draw(cells));
        return this;
    }

    private static void join(java.util.concurrent.CompletableFuture<?> future) {
        get(future);
    }

    static <T> T get(java.util.concurrent.CompletableFuture<T> future) {
        try {
            return future.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new AssertionError("no end within " + PATIENCE, e);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** What a drawn cell says, if its value is words. */
    String words(String cell) {
        CellState state = session.state(cell);
        if (state instanceof CellState.Done done) {
            return done.exhibit() instanceof Exhibit.Words words ? words.text() : done.exhibit().toString();
        }
        throw new AssertionError(cell + " is " + state);
    }

    CellState.Done done(String cell) {
        words(cell);
        return (CellState.Done) session.state(cell);
    }

    <F extends Failure> F failure(String cell, Class<F> kind) {
        if (session.state(cell) instanceof CellState.Failed failed && kind.isInstance(failed.failure())) {
            return kind.cast(failed.failure());
        }
        throw new AssertionError(cell + " is " + session.state(cell) + ", not failed with " + kind.getSimpleName());
    }

    void await(String what, java.util.function.BooleanSupplier happened) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!happened.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain for " + what + "; cells are " + session.states() + ", the kernel is " + session.kernel());
            }
            try {
                Thread.sleep(5);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    Map<String, Dial> dials() {
        Map<String, Dial> dials = new LinkedHashMap<>();
        session.dials().forEach(d -> dials.put(d.name(), d));
        return dials;
    }

    @Override
    public void stands(String cell, CellState state) {
        events.add(cell + " " + state.getClass().getSimpleName());
        threads.add(Thread.currentThread().getName());
    }

    @Override
    public void sketched(String cell, Sketch sketch) {
        sketches.put(cell, sketch);
    }

    @Override
    public void kernel(KernelState state) {
        events.add("kernel " + state.getClass().getSimpleName());
    }

    @Override
    public void close() {
        session.close();
    }
}
