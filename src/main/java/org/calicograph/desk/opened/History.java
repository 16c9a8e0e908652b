package org.calicograph.desk.opened;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.notebook.Notebook;

/**
 * A notebook with the way back and the way forward.
 *
 * @param past    what was before, the latest last
 * @param present the notebook now
 * @param future  what was undone, the next to be done again last
 * @param thread  what the latest step was about; steps of one thread join
 */
record History(List<Notebook> past, Notebook present, List<Notebook> future, String thread) {

    static final int LONGEST = 500;

    History {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    static History of(Notebook notebook) {
        return new History(List.of(), notebook, List.of(), "");
    }

    /** A step on; one of the same thread as the step before takes that one's place. An empty thread joins nothing. */
    History step(Notebook next, String about) {
        if (next.equals(present)) {
            return this;
        }
        if (!about.isEmpty() && about.equals(thread) && future.isEmpty()) {
            return new History(past, next, List.of(), about);
        }
        List<Notebook> longer = new ArrayList<>(past);
        longer.add(present);
        if (longer.size() > LONGEST) {
            longer.remove(0);
        }
        return new History(longer, next, List.of(), about);
    }

    /** The next step joins nothing. */
    History pause() {
        return new History(past, present, future, "");
    }

    boolean canUndo() {
        return !past.isEmpty();
    }

    boolean canRedo() {
        return !future.isEmpty();
    }

    History undo() {
        if (past.isEmpty()) {
            return this;
        }
        List<Notebook> ahead = new ArrayList<>(future);
        ahead.add(present);
        return new History(past.subList(0, past.size() - 1), past.get(past.size() - 1), ahead, "");
    }

    History redo() {
        if (future.isEmpty()) {
            return this;
        }
        List<Notebook> behind = new ArrayList<>(past);
        behind.add(present);
        return new History(behind, future.get(future.size() - 1), future.subList(0, future.size() - 1), "");
    }
}
