package org.calicograph.session;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;

/**
 * How the cells stand, which needs which, where the dials stand; and the telling of it. Only the
 * conductor's thread changes anything here; what others may read is published as unchanging values.
 */
final class CellStandings {

    final Map<String, CellProgress> cells = new LinkedHashMap<>();
    final Map<String, String> dialValues = new LinkedHashMap<>();
    Dependencies graph = Dependencies.NONE;
    boolean graphIsOld = true;

    private final SessionListener listener;
    private final ExecutorService teller;
    private volatile boolean closed;

    private volatile Map<String, CellState> shownStates = Map.of();
    private volatile Map<String, List<String>> shownNeeds = Map.of();
    private volatile List<Dial> shownDials = List.of();
    private volatile Map<String, String> shownValues = Map.of();
    private volatile KernelState shownKernel = new KernelState.Starting();

    CellStandings(SessionListener listener) {
        this.listener = listener;
        this.teller = Executors.newSingleThreadExecutor(SessionQueue.named("session events"));
    }

    // --- Read from any thread ---

    Map<String, CellState> states() {
        return shownStates;
    }

    Map<String, List<String>> needs() {
        return shownNeeds;
    }

    List<Dial> dials() {
        return shownDials;
    }

    Map<String, String> values() {
        return shownValues;
    }

    KernelState kernel() {
        return shownKernel;
    }

    void requireKnown(Collection<String> ids) {
        for (String id : ids) {
            if (!shownStates.containsKey(id)) {
                throw new IllegalArgumentException("there is no code cell '" + id + "' in this notebook; it has " + shownStates.keySet());
            }
        }
    }

    // --- Cells ---

    List<CellProgress> works(Collection<String> ids) {
        return ids.stream().map(cells::get).filter(Objects::nonNull).toList();
    }

    /** The cells in the order in which they can be drawn; a cell that is new to the graph is not among them. */
    List<CellProgress> inOrder() {
        return works(graph.order());
    }

    List<CellProgress> dependents(String id) {
        return works(graph.dependents(id));
    }

    /** Puts the cell on the list of those to be drawn anew. */
    void request(CellProgress work) {
        work.wanted = true;
        work.alive = false;
        await(work);
        // What it assigns to must start anew, or the assignment would happen twice.
        work.scan.ifPresent(scan -> scan.writes().forEach(name -> cells.values().stream()
                .filter(w -> w != work && w.scan.isPresent() && w.scan.get().declares().stream().anyMatch(d -> d.name().equals(name)))
                .forEach(w -> w.alive = false)));
    }

    void await(CellProgress work) {
        if (!work.state.pending()) {
            work.before = work.state;
        }
        if (!(work.state instanceof CellState.Drawing)) {
            stands(work, new CellState.Waiting());
        }
    }

    void goStale(CellProgress work) {
        work.alive = false;
        CellState stale = new CellState.Stale();
        if (work.state.pending()) {
            work.before = work.before instanceof CellState.Undrawn ? work.before : stale;
        } else if (!(work.state instanceof CellState.Undrawn)) {
            stands(work, stale);
        }
    }

    /** Why the cell can't be drawn as things stand. */
    Optional<Failure> hopeless(CellProgress work) {
        Failure problem = graph.problems().get(work.id);
        if (problem != null) {
            return Optional.of(problem);
        }
        List<String> failed = works(graph.needs().get(work.id)).stream()
                .filter(w -> w.state instanceof CellState.Failed || !w.alive).map(w -> w.id).toList();
        return failed.isEmpty() ? Optional.empty() : Optional.of(new Failure.Depends(failed));
    }

    /** Where a turned dial made this cell fail, those that need it and have been drawn fail with it. */
    void failDependents(String id) {
        for (CellProgress other : dependents(id)) {
            if (other.drawnBefore() && !other.state.pending()) {
                other.alive = false;
                stands(other, new CellState.Failed(new Failure.Depends(List.of(id)), "", Duration.ZERO));
            }
        }
    }

    /** Gives a cell another text. */
    void retext(CellProgress work, String text) {
        if (!work.text.equals(text)) {
            work.text = text;
            work.scan = Optional.empty();
            goStale(work);
            dependents(work.id).forEach(this::goStale);
        }
    }

    void dialTurned(String name, String text) {
        dialValues.put(name, text);
        for (CellProgress work : cells.values()) {
            List<Dial> dials = new ArrayList<>();
            for (Dial dial : work.dials) {
                dials.add(dial.name().equals(name) ? dial.turnedTo(text) : dial);
            }
            work.dials = dials;
        }
    }

    /** Takes over new scans; cells whose needs have changed become stale, with those that depend on them. */
    void settleGraph() {
        if (!graphIsOld || cells.values().stream().anyMatch(w -> w.scan.isEmpty())) {
            return;
        }
        Dependencies old = graph;
        List<CellScan> scans = new ArrayList<>();
        cells.values().forEach(w -> w.scan.ifPresent(scans::add));
        graph = Dependencies.of(scans);
        graphIsOld = false;
        for (CellProgress work : cells.values()) {
            boolean same = Objects.equals(old.needs().get(work.id), graph.needs().get(work.id))
                    && Objects.equals(old.problems().get(work.id), graph.problems().get(work.id));
            if (!same && old.needs().containsKey(work.id)) {
                goStale(work);
                dependents(work.id).forEach(this::goStale);
            } else if (work.state instanceof CellState.Stale || work.state.pending() && !work.alive) {
                dependents(work.id).forEach(this::goStale);
            }
        }
    }

    // --- Telling ---

    void stands(CellProgress work, CellState state) {
        if (work.state.equals(state)) {
            return;
        }
        work.state = state;
        publish();
        tellLater(() -> listener.stands(work.id, state));
    }

    /** On any thread. */
    void sketched(String cell, Sketch sketch) {
        listener.sketched(cell, sketch);
    }

    void kernelStands(KernelState state) {
        shownKernel = state;
        tellLater(() -> listener.kernel(state));
    }

    void publish() {
        Map<String, CellState> states = new LinkedHashMap<>();
        Map<String, List<String>> needs = new LinkedHashMap<>();
        List<Dial> dials = new ArrayList<>();
        for (CellProgress work : cells.values()) {
            states.put(work.id, work.state);
            needs.put(work.id, List.copyOf(graph.needs().getOrDefault(work.id, Set.of())));
            dials.addAll(work.dials);
        }
        shownStates = Collections.unmodifiableMap(states);
        shownNeeds = Collections.unmodifiableMap(needs);
        shownValues = Map.copyOf(dialValues);
        if (!dials.equals(shownDials)) {
            List<Dial> now = List.copyOf(dials);
            shownDials = now;
            tellLater(() -> listener.dials(now));
        }
    }

    private void tellLater(Runnable telling) {
        try {
            teller.execute(() -> {
                if (!closed) {
                    telling.run();
                }
            });
        } catch (RejectedExecutionException e) {
            // Closed: the listener is told nothing more.
        }
    }

    /** Does this once the listener has been told all that has happened so far; at once if it is told nothing more. */
    void afterTelling(Runnable what) {
        try {
            teller.execute(what);
        } catch (RejectedExecutionException e) {
            what.run();
        }
    }

    void close() {
        closed = true;
        teller.shutdown();
    }
}
