package org.calicograph.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.opened.OpenNotebook;

/** Everything that can be done from the menus, with its keys. */
final class MenuActions {

    private final DeskWindow window;
    private final List<Action> all = new ArrayList<>();

    MenuActions(DeskWindow window) {
        this.window = window;
        study();
        cell();
        view();
    }

    List<Action> all() {
        return List.copyOf(all);
    }

    private void add(String group, String name, String keys, Runnable deed) {
        all.add(Action.of(group, name, keys, deed));
    }

    private void study() {
        add("Study", "New", "Shortcut+N", () -> papers().leave(window::askWhere, () -> papers().openNew()));
        add("Study", "Open\u2026", "Shortcut+O", window::askOpen);
        add("Study", "Save", "Shortcut+S", () -> papers().save(window::askWhere));
        add("Study", "Save as\u2026", "Shortcut+Shift+S", () -> papers().saveAs(window::askWhere));
        add("Study", "Undo", "Shortcut+Z", () -> window.study().undo());
        add("Study", "Redo", "Shortcut+Shift+Z", () -> window.study().redo());
        add("Study", "Find\u2026", "Shortcut+F", () -> window.finding().open());
        add("Study", "Find next", "F3", () -> window.finding().go(1));
        add("Study", "Find the one before", "Shift+F3", () -> window.finding().go(-1));
        add("Study", "Draw all", "Shortcut+Shift+Enter", window::drawAll);
        add("Study", "Draw what is stale", "Shortcut+Alt+Enter", window::drawStale);
        add("Study", "Stop", "Shortcut+Period", window::stop);
    }

    private void cell() {
        add("Cell", "Draw", "Shortcut+Enter", () -> chosen(window::draw));
        add("Cell", "Draw from here on", "Alt+Enter", () -> chosen(window::drawFrom));
        add("Cell", "Write", "F2", () -> chosen(window::write));
        add("Cell", "Go up", "Shortcut+Up", () -> go(-1));
        add("Cell", "Go down", "Shortcut+Down", () -> go(1));
        add("Cell", "Add code beneath", "Shortcut+Shift+J", () -> add(true));
        add("Cell", "Add prose beneath", "Shortcut+Shift+P", () -> add(false));
        add("Cell", "Move up", "Alt+Up", () -> edit((s, id) -> s.move(id, -1)));
        add("Cell", "Move down", "Alt+Down", () -> edit((s, id) -> s.move(id, 1)));
        add("Cell", "Split before the caret's line", "Shortcut+Shift+K", () -> edit((s, id) -> s.split(id, window.pane().map(CellPane::caretLine).orElse(1))));
        add("Cell", "Join with the next", "Shortcut+J", () -> edit(OpenNotebook::join));
        add("Cell", "Copy beneath", "Shortcut+D", () -> edit(OpenNotebook::copy));
        add("Cell", "Fold or unfold", "Shortcut+Shift+F", () -> window.pane().ifPresent(CellPane::fold));
        add("Cell", "Turn into prose or code", "Shortcut+Shift+M", () -> edit(OpenNotebook::turnKind));
        add("Cell", "Make a routine of what is selected", "Shortcut+Shift+R", () -> window.crafting().begin());
        add("Cell", "Take out", "Shortcut+Shift+Delete", () -> edit(OpenNotebook::remove));
    }

    private void view() {
        add("View", "Variations", "Shortcut+Shift+V", () -> window.pages().variations());
        add("View", "Go through the lesson", "Shortcut+Shift+G", () -> window.pages().lesson());
        add("View", "Standard library", "Shortcut+L", () -> window.pages().library());
        add("View", "Day or night", "Shortcut+Shift+L", window::turnLook);
        add("View", "Inches or metric", "Shortcut+Shift+U", window::turnLengths);
        add("View", "Keys", "F1", () -> window.turnTo(() -> new KeysPage(all(), window::back)));
    }

    private Papers papers() {
        return window.papers();
    }

    private void chosen(Consumer<String> deed) {
        window.study().chosen().ifPresent(deed);
    }

    private void go(int steps) {
        window.study().chooseFrom(steps);
        focus();
    }

    /** The keyboard goes to the chosen cell, and the cell comes into sight. */
    private void focus() {
        window.choose();
        chosen(id -> window.column().reveal(id));
        window.pane().ifPresent(CellPane::focus);
    }

    private void add(boolean code) {
        if (window.study().chosen().isPresent()) {
            chosen(id -> window.addBehind(id, code));
        } else {
            window.write(code ? window.study().addCode(0) : window.study().addProse(0));
        }
    }

    private interface Edit {
        void of(OpenNotebook study, String cell);
    }

    /** An edit of the chosen cell; what can't be done is said. */
    private void edit(Edit edit) {
        try {
            window.study().chosen().ifPresent(id -> edit.of(window.study(), id));
            window.notices().hush("edit");
            focus();
        } catch (IllegalArgumentException e) {
            window.notices().say("edit", e.getMessage());
        }
    }
}
