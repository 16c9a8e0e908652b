package org.calicograph.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import org.calicograph.session.CellState;
import org.calicograph.wire.Problem;

/**
 * Draws what was written once the hand rests, if Java can read it by then. Work that took long the last time waits
 * until it is asked for.
 */
final class Settling {

    private static final javafx.util.Duration REST = javafx.util.Duration.millis(600);
    private static final Duration LONG = Duration.ofSeconds(3);

    private final Worktable worktable;
    /** The text of a passage, as it stands. */
    private final Function<String, String> text;
    private final BooleanSupplier busy;
    private final Consumer<Boolean> waits;
    private final Set<String> written = new LinkedHashSet<>();
    private final Map<String, Duration> times = new HashMap<>();
    private final PauseTransition rest = new PauseTransition(REST);
    private long asked;

    /**
     * @param busy  true while the hand is choosing how to go on
     * @param waits told whether something waits to be asked for
     */
    Settling(Worktable worktable, Function<String, String> text, BooleanSupplier busy, Consumer<Boolean> waits) {
        this.worktable = worktable;
        this.text = text;
        this.busy = busy;
        this.waits = waits;
        rest.setOnFinished(e -> settle());
    }

    /** Another notebook is laid out. */
    void forget() {
        asked++;
        rest.stop();
        written.clear();
        times.clear();
        waits.accept(false);
    }

    /** The text of a passage is another. */
    void written(String cell) {
        asked++;
        written.add(cell);
        rest.playFromStart();
    }

    /** Passages were added, moved or taken out. */
    void arranged() {
        asked++;
        rest.playFromStart();
    }

    /** How a passage stands, for knowing how long it takes. */
    void stands(String cell, CellState state) {
        if (state instanceof CellState.Done done) {
            times.put(cell, done.time());
        } else if (state instanceof CellState.Failed failed) {
            times.put(cell, failed.time());
        }
    }

    /** What was written is drawn now, or was held: nothing of it waits. */
    void done() {
        asked++;
        rest.stop();
        written.clear();
        waits.accept(false);
    }

    private void settle() {
        if (!worktable.isOpen()) {
            return;
        }
        if (busy.getAsBoolean()) {
            rest.playFromStart();
            return;
        }
        long number = ++asked;
        Map<String, CellState> states = worktable.states();
        List<String> cells = written.stream().filter(states::containsKey).toList();
        check(number, cells, 0, new ArrayList<>());
    }

    /** One after another: a check that is overtaken by the next would say nothing. */
    private void check(long number, List<String> cells, int at, List<Problem> found) {
        if (at == cells.size()) {
            if (found.isEmpty()) {
                draw(cells);
            }
            return;
        }
        CompletableFuture<List<Problem>> asking = worktable.check(cells.get(at), text.apply(cells.get(at)));
        asking.thenAccept(problems -> Platform.runLater(() -> {
            if (number == asked) {
                found.addAll(problems);
                check(number, cells, at + 1, found);
            }
        }));
    }

    private void draw(List<String> cells) {
        Map<String, CellState> states = worktable.states();
        Duration expected = Duration.ZERO;
        for (Map.Entry<String, CellState> each : states.entrySet()) {
            if (cells.contains(each.getKey()) || each.getValue() instanceof CellState.Stale) {
                expected = expected.plus(times.getOrDefault(each.getKey(), Duration.ZERO));
            }
        }
        if (expected.compareTo(LONG) > 0) {
            waits.accept(true);
            return;
        }
        written.clear();
        waits.accept(false);
        List<String> redrawn = cells.stream().filter(c -> states.get(c) instanceof CellState.Failed).toList();
        if (!redrawn.isEmpty()) {
            worktable.draw(redrawn);
        }
        worktable.drawStale();
    }
}
