package org.calicograph.desk;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import org.calicograph.desk.opened.Finder;

/** Finds words across all cells: every place is marked, and the keyboard goes from one to the next. */
final class FindBar extends HBox {

    private final DeskWindow window;
    private final TextField words = new TextField();
    private final Label told = new Label();
    private int at = -1;

    FindBar(DeskWindow window) {
        super(8);
        this.window = window;
        getStyleClass().add("finding");
        setAlignment(Pos.CENTER_LEFT);
        words.setId("find");
        words.setPromptText("Find in the book");
        words.setAccessibleText("Words to find in the book");
        words.setPrefColumnCount(24);
        told.setId("found");
        told.setMinWidth(USE_PREF_SIZE);
        words.textProperty().addListener((all, before, now) -> seek());
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        getChildren().addAll(new Label("Find"), words, button("Next", "Next place (Enter or F3)", 1), button("Previous", "Place before (Shift+Enter or Shift+F3)", -1),
                told, shutting());
        show(false);
    }

    private Button button(String name, String spoken, int step) {
        Button button = new Button(name);
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip(spoken));
        button.setAccessibleText(spoken);
        button.setOnAction(e -> go(step));
        return button;
    }

    private Button shutting() {
        Button shut = new Button("Done");
        shut.setMinWidth(USE_PREF_SIZE);
        shut.setAccessibleText("Done with finding (Escape)");
        shut.setOnAction(e -> shut());
        return shut;
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
        at = at < 0 ? (step > 0 ? firstBelow(hits) : hits.size() - 1) : Math.floorMod(at + step, hits.size());
        Finder.Hit hit = hits.get(at);
        told.setText((at + 1) + " of " + hits.size() + ", in " + hit.cell());
        window.opened().choose(hit.cell());
        window.choose();
        window.column().seek(words.getText());
        window.column().reveal(hit.cell());
        window.column().pane(hit.cell()).ifPresent(p -> p.select(hit.start(), hit.end()));
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
