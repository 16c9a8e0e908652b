package org.calicograph.desk;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.calicograph.desk.opened.Finder;
import org.calicograph.notebook.Cell;
import org.calicograph.desk.spoken.Name;

/** Finds words across all passages: every place is marked, the keyboard goes from one to the next, and other words can be put there. */
final class FindBar extends VBox {

    /** How many letters are told before a place, and in all. */
    private static final int LEAD = 14;
    private static final int SEEN = 30;

    private final DeskWindow window;
    private final TextField words = new TextField();
    private final TextField others = new TextField();
    private final Label told = new Label();
    private int at = -1;

    FindBar(DeskWindow window) {
        super(8);
        this.window = window;
        getStyleClass().add("finding");
        words.setId("find");
        words.setPromptText("Find in the book");
        Name.of(words, "Words to find in the book");
        words.setPrefColumnCount(24);
        told.setId("found");
        told.setMinWidth(USE_PREF_SIZE);
        words.textProperty().addListener((all, before, now) -> seek());
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        others.setId("replace");
        others.setPromptText("What to write instead");
        Name.of(others, "Words to put in their place");
        others.setPrefColumnCount(24);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox.setHgrow(others, Priority.ALWAYS);
        words.setMinWidth(60);
        others.setMinWidth(60);
        Label find = new Label("Find");
        Label instead = new Label("Instead");
        instead.setMinWidth(USE_PREF_SIZE);
        find.setMinWidth(USE_PREF_SIZE);
        find.prefWidthProperty().bind(instead.widthProperty());
        getChildren().addAll(row(find, words, button("Next", "Next place (Enter or F3)", () -> go(1)),
                button("Previous", "Place before (Shift+Enter or Shift+F3)", () -> go(-1)), button("Done", "Done with finding (Escape)", this::shut)),
                row(instead, others, button("Here", "Put the other words here and go to the next place (Enter)", this::replace),
                        button("Everywhere", "Put the other words in all places (Shift+Enter); undo takes it back", this::replaceAll), told));
        show(false);
    }

    private static HBox row(Node... parts) {
        HBox row = new HBox(8, parts);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Button button(String name, String spoken, Runnable deed) {
        Button button = new Button(name);
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip(spoken));
        button.setAccessibleText(spoken);
        button.setOnAction(e -> deed.run());
        return button;
    }

    private void show(boolean on) {
        setVisible(on);
        setManaged(on);
    }

    /** Opens the line, with the words that are selected if there are any on one line. */
    void open() {
        String selected = window.pane().map(p -> p.selected()).orElse("");
        window.back();
        show(true);
        if (!selected.isBlank() && selected.indexOf('\n') < 0) {
            words.setText(selected);
        }
        words.requestFocus();
        words.selectAll();
        seek();
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && event.getTarget() == words) {
            go(event.isShiftDown() ? -1 : 1);
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && event.getTarget() == others) {
            if (event.isShiftDown()) {
                replaceAll();
            } else {
                replace();
            }
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            shut();
            event.consume();
        }
    }

    private void shut() {
        show(false);
        window.column().seek("");
        window.pane().ifPresent(p -> p.focus());
    }

    /** Marks every place, and goes to none yet. */
    private void seek() {
        at = -1;
        window.column().seek(words.getText());
        int count = hits().size();
        told.setText(words.getText().isEmpty() ? "" : count == 0 ? "nowhere" : count == 1 ? "in 1 place" : "in " + count + " places");
    }

    private List<Finder.Hit> hits() {
        return Finder.hits(window.opened().notebook(), words.getText());
    }

    /** Goes a place on or back; from the last on to the first. */
    void go(int step) {
        if (!isVisible()) {
            open();
        }
        List<Finder.Hit> hits = hits();
        if (hits.isEmpty()) {
            seek();
            return;
        }
        visit(hits, at < 0 ? (step > 0 ? firstBelow(hits) : hits.size() - 1) : Math.floorMod(at + step, hits.size()));
    }

    private void visit(List<Finder.Hit> hits, int place) {
        at = place;
        Finder.Hit hit = hits.get(at);
        told.setText((at + 1) + " of " + hits.size() + ", at \u201c" + about(hit) + "\u201d");
        window.opened().choose(hit.cell());
        window.choose();
        window.column().seek(words.getText());
        window.column().reveal(hit.cell());
        window.column().pane(hit.cell()).ifPresent(p -> p.select(hit.start(), hit.end()));
    }

    /** The words about a place: of its line, those from just before it on. */
    private String about(Finder.Hit hit) {
        String text = window.opened().notebook().cell(hit.cell()).map(Cell::text).orElse("");
        int from = text.lastIndexOf('\n', hit.start() - 1) + 1;
        int end = text.indexOf('\n', hit.start());
        int to = end < 0 ? text.length() : end;
        int begin = hit.start() - from <= LEAD ? from : text.indexOf(' ', hit.start() - LEAD) + 1;
        begin = begin <= from || begin > hit.start() ? Math.max(from, hit.start() - LEAD) : begin;
        int stop = Math.min(to, Math.max(hit.end(), begin + SEEN));
        return (begin > from ? "\u2026" : "") + text.substring(begin, Math.max(begin, stop)).strip() + (stop < to ? "\u2026" : "");
    }

    /** Opens the line with the keyboard on what to write instead. */
    void openReplacing() {
        open();
        if (!words.getText().isEmpty()) {
            others.requestFocus();
            others.selectAll();
        }
    }

    /** Puts the other words at the place that was gone to, and goes to the next; goes to the first if none was gone to. */
    private void replace() {
        List<Finder.Hit> hits = hits();
        if (at < 0 || at >= hits.size()) {
            go(1);
            others.requestFocus();
            return;
        }
        Finder.Hit done = hits.get(at);
        window.opened().change(Finder.replaced(window.opened().notebook(), done, others.getText()));
        int behind = done.start() + others.getText().length();
        List<Finder.Hit> left = hits();
        List<String> ids = window.opened().notebook().ids();
        // What was put there may hold the words again: the next place is behind it.
        at = -1;
        for (int i = 0; i < left.size() && at < 0; i++) {
            int order = ids.indexOf(left.get(i).cell()) - ids.indexOf(done.cell());
            at = order > 0 || order == 0 && left.get(i).start() >= behind ? i : -1;
        }
        if (left.isEmpty()) {
            seek();
            told.setText("it was the last place");
        } else {
            visit(left, Math.max(0, at));
        }
        others.requestFocus();
    }

    private void replaceAll() {
        int count = hits().size();
        if (count > 0) {
            window.opened().change(Finder.replaced(window.opened().notebook(), words.getText(), others.getText()));
            seek();
        }
        told.setText(count == 0 ? "nowhere" : count == 1 ? "changed in 1 place" : "changed in " + count + " places");
    }

    /** The first place in the chosen cell or below it. */
    private int firstBelow(List<Finder.Hit> hits) {
        List<String> ids = window.opened().notebook().ids();
        int from = window.opened().chosen().map(ids::indexOf).orElse(0);
        for (int i = 0; i < hits.size(); i++) {
            if (ids.indexOf(hits.get(i).cell()) >= from) {
                return i;
            }
        }
        return 0;
    }
}
