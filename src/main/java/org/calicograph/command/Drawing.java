package org.calicograph.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import org.calicograph.command.output.Progress;
import org.calicograph.command.output.Refusal;
import org.calicograph.command.output.Terminal;
import org.calicograph.fabric.NearestNames;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;

/** A notebook being drawn for a command. The kernel starts while the file is still being read. */
final class Drawing implements AutoCloseable {

    /** Letters of a failure's words told; a report holds them all. */
    private static final int MOST_WORDS = 500;

    private final Notebook notebook;
    private final Session session;
    private final Progress progress;

    private Drawing(Notebook notebook, Session session, Progress progress) {
        this.notebook = notebook;
        this.session = session;
        this.progress = progress;
    }

    /**
     * Opens a notebook and gives the dials their values: those of the options before those of the file.
     *
     * @throws Refusal if the file can't be read
     */
    static Drawing open(Path file, DrawingOptions options, PrintWriter err) {
        Progress progress = new Progress(err, options.quiet());
        SessionOptions settings = options.session().beside(file);
        Session session = Session.open(List.of(), Map.of(), settings, progress);
        try {
            Notebook notebook = NotebookFile.read(file);
            Map<String, String> dials = new LinkedHashMap<>(notebook.dialTexts());
            dials.putAll(options.dials());
            dials.forEach(session::setDial);
            session.arrange(sources(notebook));
            return new Drawing(notebook, session, progress);
        } catch (NotebookException e) {
            session.close();
            throw new Refusal(Refusal.FILE, e.getMessage(), e);
        }
    }

    /**
     * Another notebook in the same kernel, which saves starting one. Only where neither has dials: a value of the one
     * must never reach the other. The cells of this one are taken out first.
     *
     * @return empty where a kernel of its own is needed
     * @throws NotebookException if the file can't be read
     */
    Optional<Drawing> next(Path file) throws NotebookException {
        Notebook other = NotebookFile.read(file);
        if (!session.dials().isEmpty() || !notebook.dialTexts().isEmpty() || !other.dialTexts().isEmpty()) {
            return Optional.empty();
        }
        session.arrange(List.of());
        session.arrange(sources(other));
        return Optional.of(new Drawing(other, session, progress));
    }

    private static List<CellSource> sources(Notebook notebook) {
        List<CellSource> sources = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Code code) {
                sources.add(new CellSource(code.id(), code.text()));
            }
        }
        return sources;
    }

    Notebook notebook() {
        return notebook;
    }

    Session session() {
        return session;
    }

    /** Draws every cell and waits for the end. */
    void drawAll() {
        progress.begin(sources(notebook).size());
        await(session.drawAll());
        progress.end();
    }

    /** Turns dials and waits until what depends on them is drawn. */
    void turn(Map<String, String> values) {
        try {
            values.forEach(session::setDial);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.FILE, e.getMessage(), e);
        }
        await(session.drawStale());
    }

    private static void await(java.util.concurrent.CompletableFuture<Void> end) {
        try {
            end.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(Refusal.FILE, "interrupted", e);
        }
    }

    /** @throws Refusal naming the dial and the nearest there are, if a name is not that of a dial */
    void requireDials(Iterable<String> names) {
        List<String> known = session.dials().stream().map(Dial::name).toList();
        for (String name : names) {
            if (!known.contains(name)) {
                refusal(name).ifPresent(why -> {
                    throw new Refusal(Refusal.FILE, why);
                });
                throw new Refusal(Refusal.FILE, known.isEmpty() ? "the notebook has no dials, so '" + name + "' can't be set"
                        : "there is no dial '" + name + "'" + NearestNames.question(name, known));
            }
        }
    }

    /** Why a dial could not take its value, if that is what kept its cell from being drawn. */
    private Optional<String> refusal(String dial) {
        return states().values().stream().filter(CellState.Failed.class::isInstance).map(s -> ((CellState.Failed) s).failure())
                .filter(f -> f instanceof Failure.DialRefused r && r.dial().equals(dial)).map(Failure::message).findFirst();
    }

    /** Draws one cell more, below all others, and gives its state; the next call takes it away again. */
    CellState alsoDraw(CellSource cell) {
        List<CellSource> all = sources(notebook);
        all.add(cell);
        session.arrange(all);
        await(session.drawStale());
        return session.states().get(cell.id());
    }

    /** How every code cell stands, in the order of the notebook. */
    Map<String, CellState> states() {
        return session.states();
    }

    /** Tells of every cell that failed, a line each, and gives the exit code. */
    int tellFailures(String name, PrintWriter err) {
        int code = 0;
        for (Map.Entry<String, CellState> cell : states().entrySet()) {
            if (cell.getValue() instanceof CellState.Failed failed) {
                String at = failed.failure().at().map(p -> " at " + p).orElse("");
                String why = Main.oneLine(failed.failure().message());
                err.println(name + ": cell " + cell.getKey() + " " + Terminal.alarming("failed") + at + ": " + (why.length() > MOST_WORDS ? why.substring(0, MOST_WORDS) + "…" : why));
                code = Refusal.CELL;
            }
        }
        return code;
    }

    @Override
    public void close() {
        session.close();
    }
}
