package org.calicograph.session;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Channel;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Failure;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.ToKernel;

/** What the kernel does next, and what becomes of what it does. All on the conductor's thread. */
final class KernelWork implements Kernels.Watch {

    private static final Duration GRACE = Duration.ofMillis(900);

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

    private final SessionOptions options;
    private final SessionQueue conductor;
    private final CellStandings board;
    private final Kernels kernels;
    private final Set<String> turned = new LinkedHashSet<>();
    private final Sketches sketches = new Sketches();
    private final Map<String, Exhibit> exhibits = new LinkedHashMap<>();
    private final Map<String, FromKernel.Evaluated> verdicts = new LinkedHashMap<>();
    private Optional<Run> run = Optional.empty();
    private boolean scanning;

    KernelWork(SessionOptions options, SessionQueue conductor, CellStandings board) {
        this.options = options;
        this.conductor = conductor;
        this.board = board;
        this.kernels = new Kernels(options, conductor, board, this);
    }

    Kernels kernels() {
        return kernels;
    }

    void turned(String dial, List<PixelFrame> easels) {
        turned.add(dial);
        sketches.moved(easels);
    }

    /** True while a turned dial has not come into effect yet. */
    boolean isTurning() {
        return (!turned.isEmpty() || !sketches.owed().isEmpty()) && kernels.isThere() || run.isPresent() && run.get().turn;
    }

    /** Takes all cells off the list, also one that is at work and was wanted once more, and ends the one at work. */
    void stop() {
        for (CellProgress work : board.cells.values()) {
            work.wanted = false;
            if (work.state instanceof CellState.Waiting) {
                board.stands(work, work.before);
            }
        }
        turned.clear();
        end(new Failure.Stopped());
    }

    boolean isAt(String cell) {
        return run.isPresent() && run.get().cell.equals(Optional.of(cell));
    }

    // --- What comes next ---

    void advance() {
        if (!kernels.isThere() && board.cells.values().stream().anyMatch(w -> w.wanted)) {
            kernels.start();
        }
        scan();
        if (!kernels.isThere() || run.isPresent() || scanning) {
            return;
        }
        board.settleGraph();
        if (turnDials()) {
            return;
        }
        while (run.isEmpty() && kernels.isThere()) {
            Optional<CellProgress> next = next();
            if (next.isEmpty()) {
                break;
            }
            draw(next.get());
        }
        if (run.isEmpty() && kernels.isThere() && sketches.areDue()) {
            deliver();
        }
    }

    private void scan() {
        List<CellProgress> unread = board.cells.values().stream().filter(w -> w.scan.isEmpty()).toList();
        if (scanning || unread.isEmpty() || !kernels.isThere()) {
            return;
        }
        scanning = true;
        Map<String, String> asked = new LinkedHashMap<>();
        unread.forEach(w -> asked.put(w.id, w.text));
        kernels.demand(ticket -> new ToKernel.Scan(ticket, List.copyOf(asked.keySet()), List.copyOf(asked.values())), said -> {
            scanning = false;
            if (said.isPresent() && said.get() instanceof FromKernel.Scanned scanned) {
                for (CellScan scan : scanned.scans()) {
                    CellProgress work = board.cells.get(scan.cell());
                    if (work != null && work.text.equals(asked.get(scan.cell()))) {
                        work.scan = Optional.of(scan);
                    }
                }
                board.graphIsOld = true;
            }
        });
    }

    /** The next cell to be drawn: wanted, or needed by a wanted one and not up to date. */
    private Optional<CellProgress> next() {
        List<String> wanted = board.cells.values().stream().filter(w -> w.wanted).map(w -> w.id).toList();
        Set<String> due = new HashSet<>(wanted);
        for (CellProgress need : board.works(board.graph.needed(wanted))) {
            if (!need.alive && !(need.state instanceof CellState.Failed)) {
                due.add(need.id);
            }
        }
        return board.inOrder().stream().filter(w -> due.contains(w.id)).findFirst();
    }

    private void draw(CellProgress work) {
        boolean rebuilt = !work.wanted && work.state instanceof CellState.Done;
        work.wanted = false;
        List<CellProgress> dependents = board.dependents(work.id);
        if (!rebuilt) {
            dependents.stream().filter(w -> !board.graph.problems().containsKey(w.id)).forEach(board::goStale);
        }
        Optional<Failure> hopeless = board.hopeless(work);
        if (hopeless.isPresent()) {
            work.alive = false;
            work.dials = List.of();
            board.stands(work, new CellState.Failed(hopeless.get(), "", Duration.ZERO));
            return;
        }
        board.await(work);
        Run next = new Run(kernels.ticket(), false);
        next.cell = Optional.of(work.id);
        run = Optional.of(next);
        turned.removeAll(work.dials.stream().map(Dial::name).toList());
        List<String> stale = dependents.stream().filter(w -> !w.alive).map(w -> w.id).toList();
        kernels.send(new ToKernel.Evaluate(next.ticket, work.id, work.text, Map.copyOf(board.dialValues), stale));
        kernels.unless(() -> next.began || !run.equals(Optional.of(next)));
    }

    /** Begins a turn if a dial has been turned; true if the kernel is at it now. */
    private boolean turnDials() {
        if (turned.isEmpty() || board.cells.values().stream().anyMatch(w -> w.wanted)) {
            return false;
        }
        Set<String> names = Set.copyOf(turned);
        turned.clear();
        // A cell that refused a dial's value declares no dial; it may like the new value better.
        board.cells.values().stream().filter(w -> w.state instanceof CellState.Failed f
                && f.failure() instanceof Failure.DialRefused r && names.contains(r.dial())).forEach(board::request);
        List<CellProgress> owners = board.cells.values().stream().filter(w -> w.dials.stream().anyMatch(d -> names.contains(d.name()))).toList();
        Set<CellProgress> reached = new LinkedHashSet<>(owners);
        owners.forEach(w -> reached.addAll(board.dependents(w.id)));
        if (reached.isEmpty()) {
            return false;
        }
        if (owners.stream().anyMatch(w -> !w.alive)) {
            reached.stream().filter(CellProgress::drawnBefore).forEach(board::request);
            return false;
        }
        List<CellProgress> stalled = reached.stream().filter(w -> !w.alive && w.drawnBefore()).toList();
        List<String> alive = board.inOrder().stream().filter(w -> w.alive).map(w -> w.id).toList();
        List<PixelFrame> easels = sketches.easels();
        long ticket = kernels.ask(t -> new ToKernel.Turn(t, Map.copyOf(board.dialValues), alive, sketches.slate(), easels), said -> {
            run = Optional.empty();
            if (said.isPresent() && said.get() instanceof FromKernel.Turned t) {
                sketches.turned(t.owed());
                conductor.later(Sketches.REST, () -> { });
                board.inOrder().stream().filter(w -> t.anew().contains(w.id) || stalled.contains(w))
                        .forEach(board::request);
            }
        });
        run = Optional.of(new Run(ticket, true));
        return true;
    }

    /** Asks for the exhibits of cells that have only been sketched, as far as those cells are still the same. */
    private void deliver() {
        List<CellProgress> due = board.works(sketches.owed()).stream().filter(w -> w.state instanceof CellState.Drawing).toList();
        due.stream().filter(w -> !w.alive).forEach(w -> board.stands(w, w.before));
        List<String> cells = due.stream().filter(w -> w.alive).map(w -> w.id).toList();
        if (cells.isEmpty()) {
            sketches.owed().clear();
            return;
        }
        long ticket = kernels.ask(t -> new ToKernel.Deliver(t, cells), said -> {
            run = Optional.empty();
            sketches.owed().clear();
            // What the kernel doesn't hold any more is drawn again.
            board.works(cells).stream().filter(w -> said.isPresent() && w.state instanceof CellState.Drawing).forEach(board::request);
        });
        run = Optional.of(new Run(ticket, true));
    }

    // --- What the kernel says ---

    @Override
    public void heard(FromKernel message) {
        if (message instanceof FromKernel.Began said) {
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
        } else if (message instanceof FromKernel.Turned said) {
            // Exhibits that are still on their way belong to the turn; it ends behind them.
            if (verdicts.keySet().stream().anyMatch(k -> k.startsWith(said.ticket() + " "))) {
                conductor.later(Duration.ofMillis(2), () -> heard(said));
            } else {
                kernels.answer(said.ticket(), said);
            }
        } else if (message instanceof FromKernel.Answer said) {
            kernels.answer(said.ticket(), said);
        }
    }

    @Override
    public void sketched(FromKernel.Sketched said) {
        sketches.fetch(said).ifPresent(sketch -> board.sketched(said.cell(), sketch));
    }

    @Override
    public void delivered(Channel.Delivery delivery) {
        String key = delivery.ticket() + " " + delivery.cell();
        FromKernel.Evaluated verdict = verdicts.remove(key);
        if (verdict != null) {
            evaluated(verdict, delivery.exhibit());
        } else {
            exhibits.put(key, delivery.exhibit());
        }
    }

    private void began(FromKernel.Began said) {
        if (run.isEmpty() || run.get().ticket != said.ticket()) {
            return;
        }
        Run current = run.get();
        current.cell = Optional.of(said.cell());
        current.began = true;
        CellProgress work = board.cells.get(said.cell());
        if (work == null) {
            end(new Failure.Stopped());
            return;
        }
        if (!work.state.pending()) {
            work.before = work.state;
        }
        boolean onward = work.state instanceof CellState.Drawing && sketches.owed().contains(work.id);
        CellState drawing = onward ? work.state : new CellState.Drawing(Instant.now());
        board.stands(work, drawing);
        conductor.later(options.timeLimit(), () -> {
            if (run.equals(Optional.of(current)) && current.cell.equals(Optional.of(said.cell())) && work.state == drawing) {
                end(new Failure.TimedOut(options.timeLimit().toMillis()));
            }
        });
    }

    private void evaluated(FromKernel.Evaluated said, Exhibit exhibit) {
        if (run.isEmpty() || run.get().ticket != said.ticket()) {
            return;
        }
        Run current = run.get();
        if (!current.turn) {
            run = Optional.empty();
        }
        kernels.proven();
        Optional<Failure> failure = said.failure();
        if (failure.isPresent() && failure.get() instanceof Failure.Stopped && current.ending.isPresent()) {
            failure = current.ending;
        }
        CellProgress work = board.cells.get(said.cell());
        if (work != null) {
            settle(work, said, failure, exhibit);
            if (failure.isPresent() && current.turn) {
                board.failDependents(work.id);
            }
        }
        if (failure.isPresent() && failure.get() instanceof Failure.OutOfMemory) {
            kernels.lose("it ran out of memory", failure.get());
            kernels.start();
        }
    }

    private void settle(CellProgress work, FromKernel.Evaluated said, Optional<Failure> failure, Exhibit exhibit) {
        boolean overtaken = work.before instanceof CellState.Stale && !work.wanted && work.scan.isEmpty();
        work.alive = failure.isEmpty() && !overtaken && !work.wanted;
        work.dials = failure.isEmpty() || !said.dials().isEmpty() ? said.dials() : work.dials;
        Duration time = Duration.ofNanos(said.nanos());
        CellState result = failure.isPresent() ? new CellState.Failed(failure.get(), said.output(), time)
                : new CellState.Done(exhibit, said.kind(), said.output(), time);
        if (work.wanted) {
            work.before = result;
            board.stands(work, new CellState.Waiting());
        } else {
            board.stands(work, overtaken ? new CellState.Stale() : result);
        }
    }

    /** Ends what the kernel is at, gently at first, by force after a while. */
    void end(Failure why) {
        if (run.isEmpty() || run.get().ending.isPresent()) {
            return;
        }
        Run current = run.get();
        current.ending = Optional.of(why);
        kernels.send(new ToKernel.Stop());
        conductor.later(GRACE, () -> {
            if (run.equals(Optional.of(current))) {
                kernels.lose("it didn't stop by itself and was ended", why);
                kernels.start();
            }
        });
    }

    // --- The kernel's end ---

    @Override
    public boolean atWork() {
        return run.isPresent() && run.get().began;
    }

    @Override
    public void lost(Failure failure, String why) {
        exhibits.clear();
        verdicts.clear();
        scanning = false;
        board.cells.values().forEach(w -> w.alive = false);
        board.works(sketches.owed()).stream().filter(w -> w.state instanceof CellState.Drawing).forEach(board::request);
        sketches.lost();
        if (run.isEmpty()) {
            return;
        }
        Run current = run.get();
        run = Optional.empty();
        if (!current.began && current.ending.isEmpty() && kernels.mayStartAgain()) {
            // It never came to the cell: the next kernel draws it.
            current.cell.map(board.cells::get).ifPresent(w -> w.wanted = true);
        }
        for (CellProgress work : board.cells.values()) {
            boolean at = current.cell.equals(Optional.of(work.id)) && work.state.pending() || work.state instanceof CellState.Drawing;
            if (at) {
                board.stands(work, work.wanted ? new CellState.Waiting()
                        : new CellState.Failed(current.ending.orElse(failure), "", Duration.ZERO));
            }
        }
    }

    @Override
    public void givenUp(String why) {
        for (CellProgress work : board.cells.values()) {
            if (work.wanted || work.state.pending()) {
                work.wanted = false;
                board.stands(work, new CellState.Failed(new Failure.KernelDied(why), "", Duration.ZERO));
            }
        }
        turned.clear();
    }
}
