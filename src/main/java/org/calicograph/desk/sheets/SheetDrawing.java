package org.calicograph.desk.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;

/** Draws one cell at one set of dial values after another, in a kernel of its own. */
final class SheetDrawing implements AutoCloseable {

    private final Session session;
    private final String cell;
    private final List<Map<String, String>> variations;
    private final BiConsumer<Integer, CellState> drawn;
    private volatile boolean closed;

    /**
     * @param cells the code cells, those that the cell needs among them
     * @param needs for each cell those that it needs itself
     * @param dials the values that all variations share
     * @param drawn told the number of each variation, from 0, and what it came to, on another thread
     */
    SheetDrawing(List<CellSource> cells, Map<String, List<String>> needs, Map<String, String> dials, String cell,
                 List<Map<String, String>> variations, SessionOptions options, BiConsumer<Integer, CellState> drawn) {
        this.cell = cell;
        this.variations = List.copyOf(variations);
        this.drawn = drawn;
        Set<String> parts = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(cell));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (parts.add(next)) {
                open.addAll(needs.getOrDefault(next, List.of()));
            }
        }
        List<CellSource> needed = new ArrayList<>(cells);
        needed.removeIf(c -> !parts.contains(c.id()));
        session = Session.open(needed, dials, options, SessionListener.NONE);
    }

    /** Begins; done when the last variation is drawn or the drawing is closed. */
    CompletableFuture<Void> begin() {
        return session.draw(cell).thenCompose(done -> next(0));
    }

    private CompletableFuture<Void> next(int number) {
        if (closed || number == variations.size()) {
            return CompletableFuture.completedFuture(null);
        }
        try {
            variations.get(number).forEach(session::setDial);
        } catch (IllegalArgumentException e) {
            drawn.accept(number, new CellState.Failed(new org.calicograph.wire.Failure.DialRefused("", e.getMessage()), "", java.time.Duration.ZERO));
            return next(number + 1);
        }
        return session.drawStale().thenCompose(done -> {
            drawn.accept(number, session.state(cell));
            return next(number + 1);
        });
    }

    @Override
    public void close() {
        closed = true;
        session.close();
    }
}
