package org.calicograph.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.desk.cells.CodePane;
import org.calicograph.session.CellState;

/** When the book is drawn: at rest, now, anew, or not, and what is told of it. */
final class Drawing {

    private final DeskWindow window;
    private final Worktable worktable;
    private final Settling settling;
    private boolean waiting;

    Drawing(DeskWindow window, Worktable worktable) {
        this.window = window;
        this.worktable = worktable;
        this.settling = new Settling(worktable, id -> window.code(id).map(CodePane::text).orElse(""), this::isChoosing, this::waits);
    }

    private boolean isChoosing() {
        return window.pane().map(p -> p instanceof CodePane code && code.isBusyWriting()).orElse(false);
    }

    /** Draws what is from before the last change; where nothing is, or it needs mending, the passage one is in. */
    void now() {
        if (may()) {
            settling.done();
            Map<String, CellState> states = worktable.states();
            boolean older = states.values().stream().anyMatch(Drawing::isOlder);
            Optional<String> here = window.opened().chosen().filter(states::containsKey).filter(id -> !isOlder(states.get(id)));
            here.filter(id -> !older || states.get(id) instanceof CellState.Failed).ifPresent(id -> worktable.draw(List.of(id)));
            worktable.drawStale();
        }
    }

    private static boolean isOlder(CellState state) {
        return state instanceof CellState.Stale || state instanceof CellState.Undrawn;
    }

    void anew() {
        if (may()) {
            settling.done();
            worktable.drawAll();
        }
    }

    /** Drawing a stranger's notebook asks first. */
    boolean may() {
        if (!window.papers().isTrusted()) {
            window.papers().askTrust();
        }
        return window.papers().isTrusted();
    }

    /** Holds what is being drawn, and what waits. */
    void hold() {
        settling.done();
        worktable.stop();
    }

    private void waits(boolean something) {
        waiting = something;
        tell();
    }

    /** How far the drawing is, at the foot and by the needle. */
    void tell() {
        // An empty passage is no drawing.
        Map<String, CellState> written = new LinkedHashMap<>(worktable.states());
        written.keySet().removeIf(id -> window.opened().notebook().cell(id).map(c -> c.text().isBlank()).orElse(false));
        if (worktable.isOpen()) {
            window.status().progress(written.values(), waiting);
        }
        int pending = (int) written.values().stream().filter(CellState::pending).count();
        window.header().atWork(pending);
        if (worktable.isOpen() && worktable.states().values().stream().noneMatch(CellState::pending)) {
            window.pages().drawn();
        }
    }

    Settling settling() {
        return settling;
    }
}
