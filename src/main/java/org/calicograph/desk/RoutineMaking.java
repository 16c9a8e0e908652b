package org.calicograph.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import org.calicograph.desk.code.Calls;
import org.calicograph.desk.shelf.OwnRoutine;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.WholeFile;
import org.calicograph.session.CellSource;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;

/** Moves a selected method or class of a cell to a file of its own, in the folder {@code stdlib} beside the notebook. */
final class RoutineMaking {

    private static final String SUBJECT = "routine";

    private final DeskWindow window;
    private Optional<Path> onTrial = Optional.empty();

    RoutineMaking(DeskWindow window) {
        this.window = window;
    }

    /** Begins with what is selected in the chosen cell, or with the whole cell if nothing is. */
    void begin() {
        Optional<String> cell = window.opened().chosen().filter(id -> window.opened().notebook().cell(id).orElseThrow() instanceof Cell.Code);
        if (cell.isEmpty()) {
            say("Select a method or class in working lines.");
        } else if (window.papers().path().isEmpty()) {
            say("Save the notebook first: its own routines are kept in the folder stdlib beside its file.");
        } else if (window.drawing().may()) {
            String selected = window.pane().map(p -> p.selected()).orElse("");
            String text = selected.isBlank() ? window.opened().notebook().cell(cell.get()).orElseThrow().text() : selected;
            List<CellSource> asked = new ArrayList<>(Worktable.sources(window.opened().notebook()));
            asked.add(new CellSource("selection", text));
            window.worktable().scan(asked).thenAccept(scans -> Platform.runLater(() -> look(cell.get(), text, scans)));
        }
    }

    private void say(String words) {
        window.notices().say(SUBJECT, words);
    }

    private void look(String cell, String text, List<CellScan> scans) {
        if (scans.isEmpty()) {
            say("Nothing can be drawn yet; try again in a moment.");
            return;
        }
        Map<String, String> declared = new HashMap<>();
        scans.subList(0, scans.size() - 1).forEach(s -> s.declares().forEach(d -> declared.putIfAbsent(d.name(), s.cell())));
        try {
            OwnRoutine routine = OwnRoutine.of(text, scans.get(scans.size() - 1), declared);
            if (routine.method()) {
                window.notices().ask(SUBJECT, "'" + routine.name() + "' goes to a file of its own. Name the class that it is to stand in:", routine.suggested(),
                        "Make the routine", name -> make(cell, routine, name.strip()));
            } else {
                make(cell, routine, routine.name());
            }
        } catch (IllegalArgumentException e) {
            say(e.getMessage());
        }
    }

    private void make(String cell, OwnRoutine routine, String name) {
        Path folder = window.papers().path().orElseThrow().resolveSibling("stdlib");
        Path file = folder.resolve(name + ".java");
        try {
            OwnRoutine.requireName(name);
            for (Path each : window.sessionOptions().stdlib()) {
                if (Files.exists(each.resolve(file.getFileName()))) {
                    throw new IllegalArgumentException("There is a '" + name + "' on the shelf already, in " + each + "; choose another name.");
                }
            }
            Notebook next = without(cell, routine, name);
            Files.createDirectories(folder);
            WholeFile.write(file, routine.source(name).getBytes(StandardCharsets.UTF_8));
            onTrial = Optional.of(file);
            window.opened().change(next);
            window.pages().reload();
        } catch (IllegalArgumentException e) {
            say(e.getMessage());
        } catch (IOException e) {
            say("The routine can't be written to " + file + ": " + e.getMessage());
        }
    }

    /** The notebook without the method, calls of it going to its new class. */
    private Notebook without(String cell, OwnRoutine routine, String name) {
        Notebook next = window.opened().notebook();
        for (Cell each : next.cells()) {
            if (each instanceof Cell.Code) {
                String text = each.text();
                if (each.id().equals(cell)) {
                    int at = text.indexOf(routine.text());
                    if (at < 0) {
                        throw new IllegalArgumentException("The passage " + cell + " has another text by now; select '" + routine.name() + "' again.");
                    }
                    text = (text.substring(0, at).stripTrailing() + "\n" + text.substring(at + routine.text().length()).stripLeading()).strip();
                }
                next = next.withText(each.id(), routine.method() ? Calls.qualified(text, routine.name(), name) : text);
            }
        }
        return next;
    }

    /** A kernel has read the library: a routine that does not compile is taken back. */
    void read(List<Catalogue.Broken> broken) {
        if (onTrial.isEmpty()) {
            return;
        }
        Path file = onTrial.get();
        onTrial = Optional.empty();
        Optional<Catalogue.Broken> bad = broken.stream().filter(b -> Path.of(b.file()).getFileName().equals(file.getFileName())).findFirst();
        if (bad.isEmpty()) {
            say("The routine stands in " + file + ". Undo puts the method back into the book; the file stays.");
            return;
        }
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            window.notices().say("file", file + " can't be taken away: " + e.getMessage());
        }
        window.opened().undo();
        window.pages().reload();
        say("It can't stand alone, so it was left where it was: line " + bad.get().problem().from().line() + ", " + bad.get().problem().message());
    }
}
