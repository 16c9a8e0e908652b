package org.calicograph.desk.cells;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import org.calicograph.desk.prose.Prose;
import org.calicograph.desk.spoken.Name;

/** Words: read as a page, written as Markdown after a double click or Enter, read again after Escape. Two empty lines at the end begin a passage. */
public final class ProsePane extends CellPane {

    private final StackPane page = new StackPane();
    private String text;
    private Optional<TextArea> writing = Optional.empty();
    private String sought = "";
    private boolean folded;
    private boolean quiet;

    public ProsePane(String id, String text, CellRequests wishes) {
        super(id, wishes);
        this.text = text;
        getStyleClass().add("words-passage");
        page.getStyleClass().add("prose-page");
        page.setFocusTraversable(true);
        page.setAccessibleRole(AccessibleRole.TEXT);
        page.setAccessibleHelp("Press Enter to write");
        page.setOnMouseClicked(e -> {
            page.requestFocus();
            if (e.getClickCount() == 2 || text().isBlank()) {
                write();
            }
        });
        page.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && !e.isShortcutDown() && !e.isAltDown()) {
                write();
                e.consume();
            }
        });
        page.focusedProperty().addListener((all, before, now) -> {
            if (now) {
                wishes.chosen(id);
            }
        });
        read();
    }

    private String text() {
        return text;
    }

    @Override
    public void showText(String other) {
        if (!other.equals(text)) {
            text = other;
            if (writing.isPresent()) {
                quiet = true;
                int caret = writing.get().getCaretPosition();
                writing.get().setText(other);
                writing.get().positionCaret(Math.min(caret, other.length()));
                quiet = false;
            } else {
                read();
            }
        }
    }

    private void read() {
        writing = Optional.empty();
        String shown = folded ? text.strip().split("\n", 2)[0] : text;
        page.getChildren().setAll(Prose.of(shown, sought));
        page.setAccessibleText(Prose.spoken(shown));
        body.getChildren().setAll(page);
    }

    @Override
    public void write() {
        if (writing.isEmpty()) {
            TextArea area = new TextArea(text);
            area.getStyleClass().add("prose-editor");
            area.setWrapText(true);
            Name.of(area, "Words");
            area.setId("prose-" + id);
            area.setPrefRowCount(1);
            area.textProperty().addListener((all, before, now) -> {
                grow(area);
                if (!quiet && now.endsWith("\n\n\n")) {
                    leave(now);
                } else if (!quiet) {
                    text = now;
                    wishes.edited(id, now);
                }
            });
            area.widthProperty().addListener((all, before, now) -> grow(area));
            area.addEventFilter(KeyEvent.KEY_PRESSED, this::writingKey);
            area.focusedProperty().addListener((all, before, now) -> {
                if (now) {
                    wishes.chosen(id);
                } else if (writing.isPresent()) {
                    read();
                    wishes.leftWords(id, text);
                }
            });
            writing = Optional.of(area);
            body.getChildren().setAll(area);
            grow(area);
        }
        writing.get().requestFocus();
        writing.get().end();
    }

    /** Two empty lines: the words end before them, and another passage begins. */
    private void leave(String now) {
        text = now.stripTrailing();
        wishes.edited(id, text);
        javafx.application.Platform.runLater(() -> {
            if (writing.isPresent()) {
                read();
            }
            wishes.addBehind(id, false);
        });
    }

    @Override
    public void focus() {
        if (writing.isEmpty()) {
            page.requestFocus();
        } else {
            writing.get().requestFocus();
        }
    }

    private void writingKey(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            finish();
            event.consume();
        }
    }

    /** From writing back to reading; the keyboard stays with the cell. */
    public void finish() {
        if (writing.isPresent()) {
            read();
            page.requestFocus();
            wishes.leftWords(id, text);
        }
    }

    private static void grow(TextArea area) {
        Text probe = new Text(area.getText() + "\n");
        probe.setFont(area.getFont());
        probe.setWrappingWidth(Math.max(100, area.getWidth() - 40));
        double height = probe.getLayoutBounds().getHeight() * 1.06 + 34;
        area.setMinHeight(height);
        area.setPrefHeight(height);
    }

    @Override
    public String selected() {
        return writing.map(TextArea::getSelectedText).orElse("");
    }

    @Override
    public void select(int start, int end) {
        if (folded) {
            fold();
        }
        writing.ifPresent(area -> area.selectRange(start, end));
    }

    @Override
    public void seek(String words) {
        if (!words.equals(sought)) {
            sought = words;
            if (writing.isEmpty()) {
                read();
            }
        }
    }

    @Override
    public void fold() {
        folded = !folded;
        read();
    }

    @Override
    public int caretLine() {
        return writing.map(a -> 1 + (int) a.getText(0, a.getCaretPosition()).chars().filter(c -> c == '\n').count()).orElse(1);
    }
}
