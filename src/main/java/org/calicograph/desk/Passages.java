package org.calicograph.desk;

import java.util.Optional;
import java.util.regex.Pattern;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.SeparatorMenuItem;
import org.calicograph.desk.cells.Advice;
import org.calicograph.desk.cells.CellRequests;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.session.Sketch;

/** What the passages of the book ask for. */
final class Passages implements CellRequests {

    /** Lines that are more likely to be Java than words. */
    private static final Pattern WORKING = Pattern.compile("(?m)^\\s*(?:var|int|double|Length|boolean|String)\\s+\\w+\\s*=|^[A-Z]\\w*\\.\\w+\\(.*\\)\\s*;?\\s*$|;\\s*$");

    private final DeskWindow window;
    private ContextMenu menu = new ContextMenu();

    Passages(DeskWindow window) {
        this.window = window;
    }

    @Override
    public void chosen(String id) {
        if (window.opened().notebook().cell(id).isPresent()) {
            window.opened().choose(id);
            window.choose();
            window.wall().choose(id);
        }
    }

    @Override
    public void edited(String id, String text) {
        window.opened().setText(id, text);
    }

    @Override
    public void drew(String id, Exhibit exhibit, boolean current) {
        Optional<Integer> before = window.wall().pin(id);
        window.wall().hang(id, exhibit, current);
        if (!before.equals(window.wall().pin(id))) {
            window.number();
        }
        window.hangs();
    }

    @Override
    public void current(String id, boolean current) {
        window.wall().current(id, current);
    }

    @Override
    public void sketched(String id, Sketch sketch) {
        window.wall().sketch(id, sketch);
    }

    @Override
    public void pinned(String id) {
        window.wall().choose(id);
        window.hangs();
    }

    @Override
    public void pointedAt(String words) {
        window.status().pointedAt(words);
    }

    @Override
    public void addBehind(String id, boolean code) {
        int place = window.opened().notebook().indexOf(id) + 1;
        window.write(code ? window.opened().addCode(place) : window.opened().addProse(place));
    }

    @Override
    public void menu(String id, double x, double y) {
        menu.hide();
        menu = new ContextMenu();
        int part = 0;
        for (Action action : window.actions()) {
            if (action.menu().equals(MenuActions.BOOK)) {
                if (part != 0 && action.part() != part) {
                    menu.getItems().add(new SeparatorMenuItem());
                }
                part = action.part();
                menu.getItems().add(Header.item(action));
            }
        }
        window.column().pane(id).ifPresent(pane -> menu.show(pane, x, y));
    }

    @Override
    public void leftWords(String id, String text) {
        boolean working = WORKING.matcher(text).find() && text.lines().noneMatch(l -> l.startsWith("#"));
        if (working && window.opened().notebook().cell(id).orElse(null) instanceof Cell.Prose) {
            window.notices().say("working", "This reads like working lines.", java.util.Map.of("Make them so", () -> {
                window.opened().choose(id);
                window.opened().turnKind(id);
            }));
        }
    }

    @Override
    public Advice advice() {
        return window.worktable();
    }
}
