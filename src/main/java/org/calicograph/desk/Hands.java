package org.calicograph.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.wall.ClothShare;
import org.calicograph.desk.wall.WallRequests;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** What hands do at the wall: pressing a patch leads to its words in the book, dials turn. */
final class Hands implements WallRequests {

    private final DeskWindow window;

    Hands(DeskWindow window) {
        this.window = window;
    }

    @Override
    public void pointedAt(String words) {
        window.status().pointedAt(words);
    }

    @Override
    public void turn(String dial, String value) {
        window.opened().setDial(dial, value);
    }

    @Override
    public void hung(String cell) {
        window.opened().choose(cell);
        window.choose();
        window.column().reveal(cell);
        window.hangs();
    }

    @Override
    public Length.System lengths() {
        return window.lengths();
    }

    /** Takes the caret to where the book names the part, in its own passage first and then in those that it needs. */
    @Override
    public void picked(String cell, String title) {
        Notebook notebook = window.opened().notebook();
        List<String> cells = new ArrayList<>(List.of(cell));
        List<String> needed = window.worktable().needs().getOrDefault(cell, List.of());
        cells.addAll(needed);
        needed.forEach(n -> cells.addAll(window.worktable().needs().getOrDefault(n, List.of())));
        String name = ClothShare.named(title).orElse(title.replaceFirst(",.*", ""));
        window.status().pointedAt(title);
        for (String id : cells) {
            Optional<String> text = notebook.cell(id).filter(c -> c instanceof Cell.Code).map(Cell::text);
            Matcher m = Pattern.compile("(?i)\\b" + Pattern.quote(name) + "\\b").matcher(text.orElse(""));
            if (!name.isBlank() && m.find()) {
                show(id, m.start(), m.end());
                return;
            }
        }
        window.opened().choose(cell);
        window.choose();
        window.column().reveal(cell);
    }

    private void show(String id, int start, int end) {
        window.opened().choose(id);
        window.choose();
        Optional<CellPane> pane = window.column().pane(id);
        pane.ifPresent(p -> p.select(start, end));
        window.column().reveal(id);
        pane.ifPresent(CellPane::focus);
    }
}
