package org.calicograph.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.application.Platform;
import org.calicograph.colour.Colour;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.cuts.RulerWords;
import org.calicograph.desk.swatches.Dropped;
import org.calicograph.desk.swatches.SwatchTrial;
import org.calicograph.desk.wall.ClothShare;
import org.calicograph.desk.wall.WallRequests;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellState;

/** What hands do at the wall: pressing a patch leads to its words in the book, dials turn. */
final class Hands implements WallRequests {

    /** A cloth as a working line names it, with its colour. */
    private static final Pattern CLOTH = Pattern.compile("Fabric\\s*\\.\\s*of\\(\\s*\"([^\"\\n]+)\",\\s*\"(#[0-9a-fA-F]{6})\"");

    private final DeskWindow window;
    private Optional<Picture.Label> pressed = Optional.empty();

    Hands(DeskWindow window) {
        this.window = window;
    }

    @Override
    public void pointedAt(String words) {
        window.status().pointedAt(words);
    }

    @Override
    public String words(String cell, Picture.Label part) {
        return window.pages().cuts().of(cell, window.wall().exhibit(cell)).flatMap(list -> list.of(part.id())).orElseGet(() -> RulerWords.of(part.title()));
    }

    @Override
    public void cut(String cloth) {
        window.pages().cutting(Optional.of(cloth));
    }

    /** How the patch is cut, as soon as the plan is there. */
    private void tell(String cell, Picture.Label part) {
        if (ClothShare.named(part.title()).isEmpty() || !(window.worktable().states().get(cell) instanceof CellState.Done)) {
            pointedAt(RulerWords.of(part.title()));
            return;
        }
        Picture.Label asked = part;
        pressed = Optional.of(part);
        pointedAt(words(cell, part));
        window.pages().cuts().of(cell, window.wall().exhibit(cell), list -> {
            if (pressed.filter(p -> p == asked).isPresent()) {
                list.of(part.id()).ifPresent(this::pointedAt);
            }
        });
    }

    @Override
    public void undo() {
        window.opened().undo();
    }

    @Override
    public void redo() {
        window.opened().redo();
    }

    @Override
    public void squint() {
        window.wall().turnSquint();
    }

    @Override
    public void tape() {
        window.status().tape(window.wall().turnTape());
    }

    @Override
    public void turnLengths() {
        window.turnLengths();
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
    public void put(String call) {
        if (window.drawing().may()) {
            window.pages().put(call);
        }
    }

    @Override
    public void spread(String dial) {
        window.pages().spread(dial);
    }

    @Override
    public Map<String, Colour> cloths() {
        Map<String, Colour> named = new LinkedHashMap<>();
        for (Cell cell : window.opened().notebook().cells()) {
            Matcher m = CLOTH.matcher(cell instanceof Cell.Code ? cell.text() : "");
            while (m.find()) {
                named.put(m.group(1), Colour.hex(m.group(2)));
            }
        }
        return named;
    }

    @Override
    public void dye(int picture, Point place, String cloth, String swatch) {
        Optional<String> hung = window.wall().hung();
        if (hung.isEmpty() || !window.drawing().may()) {
            return;
        }
        Notebook before = window.opened().notebook();
        window.status().pointedAt("Looking for the words that lay " + cloth + " there\u2026");
        SwatchTrial.find(new Dropped(hung.get(), picture, place, cloth, swatch), Worktable.sources(before), window.worktable().needs(), before.dialTexts(),
                window.sessionOptions().alone()).whenComplete((found, trouble) -> Platform.runLater(() -> {
                    if (trouble != null) {
                        window.notices().say("swatch", "The change can't be tried: " + trouble.getMessage());
                    } else if (found.texts().isEmpty()) {
                        window.notices().say("swatch", found.words());
                    } else {
                        dyed(before, found);
                    }
                }));
    }

    private void dyed(Notebook before, SwatchTrial.Outcome found) {
        Notebook changed = window.opened().notebook();
        for (Map.Entry<String, String> each : found.texts().entrySet()) {
            if (!changed.cell(each.getKey()).equals(before.cell(each.getKey()))) {
                window.notices().say("swatch", "The book was written in meanwhile; set the swatch down once more.");
                return;
            }
            changed = changed.withText(each.getKey(), each.getValue());
        }
        window.notices().hush("swatch");
        window.opened().change(changed);
        window.drawing().now();
        window.status().pointedAt(found.words());
    }

    @Override
    public Length.System lengths() {
        return window.lengths();
    }

    /** Takes the caret to where the book names the part, in its own passage first and then in those that it needs. */
    @Override
    public void picked(String cell, Picture.Label part) {
        String title = part.title();
        Notebook notebook = window.opened().notebook();
        List<String> cells = new ArrayList<>(List.of(cell));
        List<String> needed = window.worktable().needs().getOrDefault(cell, List.of());
        cells.addAll(needed);
        needed.forEach(n -> cells.addAll(window.worktable().needs().getOrDefault(n, List.of())));
        String name = ClothShare.named(title).orElse(title.replaceFirst(",.*", ""));
        tell(cell, part);
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
