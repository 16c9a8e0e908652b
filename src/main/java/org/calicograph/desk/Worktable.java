package org.calicograph.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import org.calicograph.desk.cells.Advice;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Completions;
import org.calicograph.session.KernelState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;
import org.calicograph.session.Sketch;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.CutList;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Problem;
import org.calicograph.wire.Signature;

/**
 * The session of the open notebook, seen from the window's thread. What the session tells is gathered, and
 * of each cell only the newest state is handed on; what is typed is handed down in small batches.
 * There is no session while a notebook isn't trusted.
 */
final class Worktable implements Advice {

    /** Told on the window's thread. */
    interface Hearer {
        void stands(String cell, CellState state);

        void sketched(String cell, Sketch sketch);

        void dials(List<Dial> dials);

        void kernel(KernelState state);
    }

    private final Hearer hearer;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final PauseTransition pause = new PauseTransition(Duration.millis(150));
    private Optional<Session> session = Optional.empty();
    private Optional<News> news = Optional.empty();

    Worktable(Hearer hearer) {
        this.hearer = hearer;
        pause.setOnFinished(e -> handDown());
    }

    boolean isOpen() {
        return session.isPresent();
    }

    void open(Notebook notebook, SessionOptions options) {
        close();
        News mine = new News();
        news = Optional.of(mine);
        session = Optional.of(Session.open(sources(notebook), notebook.dialTexts(), options, mine));
    }

    void close() {
        pause.stop();
        typed.clear();
        news = Optional.empty();
        session.ifPresent(Session::close);
        session = Optional.empty();
    }

    static List<CellSource> sources(Notebook notebook) {
        return notebook.cells().stream().filter(c -> c instanceof Cell.Code).map(c -> new CellSource(c.id(), c.text())).toList();
    }

    void arrange(Notebook notebook) {
        typed.clear();
        session.ifPresent(s -> s.arrange(sources(notebook)));
    }

    void edit(String cell, String text) {
        typed.put(cell, text);
        pause.playFromStart();
    }

    private void handDown() {
        pause.stop();
        session.ifPresent(s -> typed.forEach(s::edit));
        typed.clear();
    }

    void draw(Collection<String> cells) {
        handDown();
        session.ifPresent(s -> s.draw(cells));
    }

    void drawAll() {
        handDown();
        session.ifPresent(Session::drawAll);
    }

    void drawStale() {
        handDown();
        session.ifPresent(Session::drawStale);
    }

    void stop() {
        session.ifPresent(Session::stop);
    }

    void restart() {
        session.ifPresent(Session::restart);
    }

    void kill() {
        session.ifPresent(Session::kill);
    }

    /** @throws IllegalArgumentException if the dial can't take the value */
    void setDial(String name, String value, List<PixelFrame> easels) {
        handDown();
        session.ifPresent(s -> s.setDial(name, value, easels));
    }

    Map<String, CellState> states() {
        return session.map(Session::states).orElse(Map.of());
    }

    Map<String, List<String>> needs() {
        return session.map(Session::needs).orElse(Map.of());
    }

    List<Dial> dials() {
        return session.map(Session::dials).orElse(List.of());
    }

    Optional<KernelState> kernel() {
        return session.map(Session::kernel);
    }

    @Override
    public CompletableFuture<Completions> complete(String cell, String text, int offset) {
        return asked(s -> s.complete(cell, text, offset), Completions.NONE);
    }

    @Override
    public CompletableFuture<List<Signature>> explain(String cell, String text, int offset) {
        return asked(s -> s.explain(cell, text, offset), List.of());
    }

    @Override
    public CompletableFuture<List<Problem>> check(String cell, String text) {
        return asked(s -> s.check(cell, text), List.of());
    }

    CompletableFuture<List<CellScan>> scan(List<CellSource> texts) {
        return asked(s -> s.scan(texts), List.of());
    }

    CompletableFuture<Catalogue> browse() {
        return asked(Session::browse, Catalogue.EMPTY);
    }

    CompletableFuture<CutList> plan(String cell) {
        return asked(s -> s.plan(cell), CutList.none("Nothing of this notebook is drawn yet."));
    }

    private <T> CompletableFuture<T> asked(Function<Session, CompletableFuture<T>> question, T otherwise) {
        return session.map(question).orElseGet(() -> CompletableFuture.completedFuture(otherwise));
    }

    /** What one session tells, gathered until the window's thread takes it. */
    private final class News implements SessionListener {
        private final Map<String, CellState> states = new LinkedHashMap<>();
        private final Map<String, Sketch> sketches = new LinkedHashMap<>();
        private Optional<List<Dial>> dials = Optional.empty();
        private Optional<KernelState> kernel = Optional.empty();
        private boolean called;

        @Override
        public synchronized void stands(String cell, CellState state) {
            states.remove(cell);
            states.put(cell, state);
            if (!state.pending()) {
                sketches.remove(cell);
            }
            call();
        }

        @Override
        public synchronized void sketched(String cell, Sketch sketch) {
            sketches.put(cell, sketch);
            call();
        }

        @Override
        public synchronized void dials(List<Dial> now) {
            dials = Optional.of(new ArrayList<>(now));
            call();
        }

        @Override
        public synchronized void kernel(KernelState state) {
            kernel = Optional.of(state);
            call();
        }

        private void call() {
            if (!called) {
                called = true;
                Platform.runLater(this::tell);
            }
        }

        private void tell() {
            Map<String, CellState> newStates;
            Map<String, Sketch> newSketches;
            Optional<List<Dial>> newDials;
            Optional<KernelState> newKernel;
            synchronized (this) {
                newStates = new LinkedHashMap<>(states);
                newSketches = new LinkedHashMap<>(sketches);
                newDials = dials;
                newKernel = kernel;
                states.clear();
                sketches.clear();
                dials = Optional.empty();
                kernel = Optional.empty();
                called = false;
            }
            if (news.equals(Optional.of(this))) {
                newKernel.ifPresent(hearer::kernel);
                newDials.ifPresent(hearer::dials);
                newStates.forEach(hearer::stands);
                newSketches.forEach(hearer::sketched);
            }
        }
    }
}
