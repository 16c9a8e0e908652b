package org.calicograph.desk.opened;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.DialValue;
import org.calicograph.notebook.Notebook;

/**
 * A notebook at work: the notebook, its undo and redo, which cell is chosen, and what of it is saved.
 *
 * <p>To be used from one thread. Watchers hear of every change of the notebook, with the one before and
 * the one after. Results are not part of the history: undoing an edit never brings an old drawing back.
 */
public final class OpenNotebook {

    private final List<BiConsumer<Notebook, Notebook>> watchers = new ArrayList<>();
    private History history;
    private Notebook saved;
    private Optional<String> chosen;

    public OpenNotebook(Notebook notebook) {
        this.history = History.of(notebook.withoutResults());
        this.saved = history.present();
        this.chosen = notebook.ids().stream().findFirst();
    }

    public Notebook notebook() {
        return history.present();
    }

    public void watch(BiConsumer<Notebook, Notebook> watcher) {
        watchers.add(watcher);
    }

    /** True if there is anything that the last save didn't hold. */
    public boolean isUnsaved() {
        return !history.present().equals(saved);
    }

    /** The notebook as it is now is what the file holds. */
    public void markSaved() {
        markSaved(history.present());
    }

    /** This, which it was when saving began, is saved now; what came since is not. */
    public void markSaved(Notebook then) {
        saved = then;
        history = history.pause();
    }

    /** What is shown was never saved as it is: taken up from unsaved work. */
    public void markUnsaved() {
        saved = Notebook.titled("");
    }

    public Optional<String> chosen() {
        return chosen;
    }

    /** @throws IllegalArgumentException if there is no such cell */
    public void choose(String id) {
        notebook().indexOf(id);
        if (!chosen.equals(Optional.of(id))) {
            chosen = Optional.of(id);
            history = history.pause();
        }
    }

    /** Chooses the cell so many places further down, or up if below 0, as far as there are cells. */
    public void chooseFrom(int steps) {
        List<String> ids = notebook().ids();
        if (!ids.isEmpty()) {
            int at = chosen.map(ids::indexOf).orElse(0) + steps;
            choose(ids.get(Math.max(0, Math.min(ids.size() - 1, at))));
        }
    }

    /** Gives a cell another text. Letters typed one after another undo together; a new line or a paste is a step of its own. */
    public void setText(String id, String text) {
        String before = notebook().cells().get(notebook().indexOf(id)).text();
        boolean letter = Math.abs(text.length() - before.length()) <= 1 && count(text) == count(before);
        if (!letter) {
            history = history.pause();
        }
        step(notebook().withText(id, text), letter ? "text of " + id : "");
    }

    private static long count(String text) {
        return text.chars().filter(c -> c == '\n').count();
    }

    public void setTitle(String title) {
        step(notebook().withTitle(title), "title");
    }

    /** A turned dial; turns of one dial undo together. */
    public void setDial(String name, String value) {
        step(notebook().withDial(name, DialValue.of(value)), "dial " + name);
    }

    /** Puts an empty code cell behind the given place, 0 for the top, and chooses it. */
    public String addCode(int place) {
        return add(place, Cell.code(notebook().freshId(), ""));
    }

    public String addProse(int place) {
        return add(place, Cell.prose(notebook().freshId(), ""));
    }

    private String add(int place, Cell cell) {
        step(notebook().add(place, cell), "");
        choose(cell.id());
        return cell.id();
    }

    /** A copy of the cell beneath it, chosen. */
    public String copy(String id) {
        int at = notebook().indexOf(id);
        return add(at + 1, notebook().cells().get(at).withId(notebook().freshId()));
    }

    /** Takes the cell out and chooses the one that comes into its place. */
    public void remove(String id) {
        int at = notebook().indexOf(id);
        step(notebook().remove(id), "");
        List<String> ids = notebook().ids();
        chosen = ids.isEmpty() ? Optional.empty() : Optional.of(ids.get(Math.min(at, ids.size() - 1)));
    }

    /** Moves the cell so many places down, or up if below 0, as far as there are places. */
    public void move(String id, int steps) {
        int at = notebook().indexOf(id);
        int to = Math.max(0, Math.min(notebook().cells().size() - 1, at + steps));
        if (to != at) {
            step(notebook().move(id, to), "");
        }
    }

    /** @throws IllegalArgumentException if the cell can't be split before that line */
    public void split(String id, int line) {
        step(notebook().split(id, line), "");
    }

    /** @throws IllegalArgumentException if there is no next cell of the same kind */
    public void join(String id) {
        step(notebook().join(id), "");
        choose(id);
    }

    /** Makes prose of a code cell, and code of prose. */
    public void turnKind(String id) {
        Cell cell = notebook().cells().get(notebook().indexOf(id));
        step(notebook().replace(cell instanceof Cell.Code ? Cell.prose(id, cell.text()) : Cell.code(id, cell.text())), "");
    }

    /** Any other edit, as a step of its own. */
    public void change(Notebook next) {
        step(next.withoutResults(), "");
    }

    public boolean canUndo() {
        return history.canUndo();
    }

    public boolean canRedo() {
        return history.canRedo();
    }

    public void undo() {
        become(history.undo());
    }

    public void redo() {
        become(history.redo());
    }

    private void step(Notebook next, String thread) {
        become(history.step(next, thread));
    }

    private void become(History other) {
        Notebook before = history.present();
        history = other;
        Notebook after = other.present();
        if (chosen.isEmpty() || after.cell(chosen.get()).isEmpty()) {
            chosen = after.ids().stream().findFirst();
        }
        if (!before.equals(after)) {
            watchers.forEach(w -> w.accept(before, after));
        }
    }
}
