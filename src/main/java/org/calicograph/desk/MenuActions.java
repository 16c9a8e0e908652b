package org.calicograph.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.desk.results.PictureView;

/** Everything that can be done from the menus, with its keys. */
final class MenuActions {

    /** The menu of what can be done with a passage; a passage offers it where it stands too. */
    static final String BOOK = "Book";

    private final DeskWindow window;
    private final List<Action> all = new ArrayList<>();

    MenuActions(DeskWindow window) {
        this.window = window;
        notebook();
        book();
        wall();
        paper();
        help();
    }

    List<Action> all() {
        return List.copyOf(all);
    }

    private void add(String menu, int part, String name, String keys, Runnable deed) {
        all.add(Action.of(menu, part, name, keys, deed));
    }

    private void notebook() {
        String menu = "Notebook";
        add(menu, 1, "New", "Shortcut+N", () -> papers().leave(window::askWhere, () -> papers().openNew()));
        add(menu, 1, "Open\u2026", "Shortcut+O", window::askOpen);
        add(menu, 1, "What hung here last", "Shortcut+Shift+O", () -> window.pages().start());
        add(menu, 1, "Save", "Shortcut+S", () -> papers().save(window::askWhere));
        add(menu, 1, "Save as\u2026", "Shortcut+Shift+S", () -> papers().saveAs(window::askWhere));
        add(menu, 2, "Undo", "Shortcut+Z", () -> window.opened().undo());
        add(menu, 2, "Redo", "Shortcut+Shift+Z", () -> window.opened().redo());
        add(menu, 3, "Find\u2026", "Shortcut+F", () -> window.finding().open());
        add(menu, 3, "Find next", "F3", () -> window.finding().go(1));
        add(menu, 3, "Find the one before", "Shift+F3", () -> window.finding().go(-1));
        add(menu, 3, "Replace\u2026", "Shortcut+H", () -> window.finding().openReplacing());
        add(menu, 4, "Close", "Shortcut+W", window::askClose);
    }

    private void book() {
        String menu = BOOK;
        add(menu, 1, "Write", "F2", () -> chosen(window::write));
        add(menu, 1, "Go up", "Shortcut+Up", () -> go(-1));
        add(menu, 1, "Go down", "Shortcut+Down", () -> go(1));
        add(menu, 2, "Working lines beneath", "Shortcut+Shift+J", () -> add(true));
        add(menu, 2, "Words beneath", "Shortcut+Shift+P", () -> add(false));
        add(menu, 3, "Move up", "Alt+Up", () -> edit((s, id) -> s.move(id, -1)));
        add(menu, 3, "Move down", "Alt+Down", () -> edit((s, id) -> s.move(id, 1)));
        add(menu, 3, "Split before the caret's line", "Shortcut+Shift+K", () -> edit((s, id) -> s.split(id, window.pane().map(CellPane::caretLine).orElse(1))));
        add(menu, 3, "Join with the next", "Shortcut+J", () -> edit(OpenNotebook::join));
        add(menu, 3, "Copy beneath", "Shortcut+D", () -> edit(OpenNotebook::copy));
        add(menu, 3, "Fold or unfold", "Shortcut+Shift+F", () -> window.pane().ifPresent(CellPane::fold));
        add(menu, 3, "Turn into words or working lines", "Shortcut+Shift+M", () -> edit(OpenNotebook::turnKind));
        add(menu, 4, "Make a routine of what is selected", "Shortcut+Shift+R", () -> window.crafting().begin());
        add(menu, 4, "Go through the lesson", "Shortcut+Shift+G", () -> window.pages().lesson());
        add(menu, 5, "Take out", "Shortcut+Shift+Delete", () -> edit(OpenNotebook::remove));
    }

    private void wall() {
        String menu = "Wall";
        add(menu, 1, "Draw now", "F8", () -> window.drawing().now());
        add(menu, 1, "Draw everything anew", "Shift+F8", () -> window.drawing().anew());
        add(menu, 1, "Hold", "Shortcut+Period", () -> window.drawing().hold());
        add(menu, 2, "Step nearer", "Shortcut+Equals", () -> window.wall().meant().ifPresent(v -> v.step(1.25)));
        add(menu, 2, "Step back", "Shortcut+Minus", () -> window.wall().meant().ifPresent(v -> v.step(0.8)));
        add(menu, 2, "The whole of it", "Shortcut+0", () -> window.wall().meant().ifPresent(PictureView::whole));
        add(menu, 2, "Squint", "F6", () -> window.wall().turnSquint());
        add(menu, 2, "Tape measure", "F7", this::tape);
        add(menu, 2, "The wall alone", "F11", () -> window.open().turnAlone());
        add(menu, 3, "What is cut", "F9", () -> window.pages().cutting(Optional.empty()));
        add(menu, 3, "Variations", "Shortcut+Shift+V", () -> window.pages().variations());
    }

    private void paper() {
        String menu = "Paper";
        add(menu, 1, "Booklet\u2026", "Shortcut+B", () -> window.printing().booklet());
        add(menu, 2, "This picture\u2026", "Shortcut+P", () -> window.printing().picture());
        add(menu, 1, "Print the booklet\u2026", "Shortcut+Alt+B", () -> window.printing().printBooklet());
        add(menu, 2, "Print this picture\u2026", "Shortcut+Alt+P", () -> window.printing().printPicture());
        add(menu, 2, "Copy this picture", "Shortcut+Shift+C", () -> window.printing().copy());
    }

    private void help() {
        add("Shelf", 1, "Open the shelf", "Shortcut+L", () -> window.pages().library());
        add("Help", 1, "Keys", "F1", () -> window.open().overBook(() -> new KeysPage(all(), window::back)));
        add("Help", 2, "Day or night", "Shortcut+Shift+L", () -> window.dressing().turnLight());
        add("Help", 2, "Inches or metric", "Shortcut+Shift+U", window::turnLengths);
        add("Help", 3, "Larger letters", "Shortcut+Shift+Equals", () -> window.dressing().letters(1));
        add("Help", 3, "Smaller letters", "Shortcut+Shift+Minus", () -> window.dressing().letters(-1));
        add("Help", 3, "Letters as they come", "Shortcut+Shift+0", () -> window.dressing().letters(0));
        add("Help", 3, "Keep still, or move again", "Shortcut+Shift+Y", () -> window.dressing().turnStill());
    }

    private void tape() {
        window.status().tape(window.wall().turnTape());
    }

    private Papers papers() {
        return window.papers();
    }

    private void chosen(Consumer<String> deed) {
        window.opened().chosen().ifPresent(deed);
    }

    private void go(int steps) {
        window.opened().chooseFrom(steps);
        focus();
    }

    /** The keyboard goes to the chosen cell, and the cell comes into sight. */
    private void focus() {
        window.choose();
        chosen(id -> window.column().reveal(id));
        window.pane().ifPresent(CellPane::focus);
    }

    private void add(boolean code) {
        if (window.opened().chosen().isPresent()) {
            chosen(id -> window.passages().addBehind(id, code));
        } else {
            window.write(code ? window.opened().addCode(0) : window.opened().addProse(0));
        }
    }

    private interface Edit {
        void of(OpenNotebook opened, String cell);
    }

    /** An edit of the chosen cell; what can't be done is said. */
    private void edit(Edit edit) {
        try {
            window.opened().chosen().ifPresent(id -> edit.of(window.opened(), id));
            window.notices().hush("edit");
            focus();
        } catch (IllegalArgumentException e) {
            window.notices().say("edit", e.getMessage());
        }
    }
}
