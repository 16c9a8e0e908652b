package org.calicograph.desk.cells;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import javafx.stage.Screen;
import org.calicograph.desk.code.CodeEditor;
import org.calicograph.session.Completions;
import org.calicograph.wire.Signature;
import org.calicograph.wire.Suggestion;

/** Ways to go on writing, on Ctrl+Space and behind a dot, and what a method takes, on Ctrl+Shift+Space or behind an opening bracket. */
final class Suggesting {

    private static final KeyCombination GO_ON = new KeyCodeCombination(KeyCode.SPACE, KeyCombination.CONTROL_DOWN);
    private static final KeyCombination EXPLAIN = new KeyCodeCombination(KeyCode.SPACE, KeyCombination.CONTROL_DOWN, KeyCombination.SHIFT_DOWN);
    private static final double ROW = 26;
    private static final int MOST_ROWS = 9;

    private final String cell;
    private final CodeEditor editor;
    private final Advice advice;
    private final ListView<Suggestion> list = new ListView<>();
    private final VBox explanation = new VBox(4);
    private final Popup popup = new Popup();
    private final Popup note = new Popup();
    private int anchor;
    private long asked;

    Suggesting(String cell, CodeEditor editor, Advice advice) {
        this.cell = cell;
        this.editor = editor;
        this.advice = advice;
        list.getStyleClass().add("suggestions");
        list.setId("suggestions");
        list.setFocusTraversable(false);
        list.setAccessibleText("Ways to go on");
        list.setCellFactory(l -> new Row());
        list.setOnMouseClicked(e -> accept());
        popup.getContent().add(list);
        popup.setAutoHide(true);
        explanation.getStyleClass().add("explanation");
        explanation.setMaxWidth(560);
        note.getContent().add(explanation);
        note.setAutoHide(true);
        editor.keysFirst(this::key);
        editor.addEventFilter(KeyEvent.KEY_TYPED, e -> {
            if (e.getCharacter().equals("(") || e.getCharacter().equals(",")) {
                Platform.runLater(this::explain);
            } else if (e.getCharacter().equals(")")) {
                note.hide();
            } else if (e.getCharacter().equals(".")) {
                Platform.runLater(this::askBehindDot);
            }
        });
        editor.textProperty().addListener((all, before, now) -> {
            if (popup.isShowing()) {
                Platform.runLater(this::ask);
            }
        });
        editor.focusedProperty().addListener((all, before, now) -> {
            if (!now) {
                popup.hide();
                note.hide();
            }
        });
    }

    private void key(KeyEvent event) {
        if (GO_ON.match(event)) {
            ask();
            event.consume();
        } else if (EXPLAIN.match(event)) {
            explain();
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && (popup.isShowing() || note.isShowing())) {
            popup.hide();
            note.hide();
            event.consume();
        } else if (popup.isShowing()) {
            choosing(event);
        }
    }

    private void choosing(KeyEvent event) {
        int at = list.getSelectionModel().getSelectedIndex();
        switch (event.getCode()) {
            case DOWN -> select(at + 1);
            case UP -> select(at - 1);
            case PAGE_DOWN -> select(at + MOST_ROWS - 1);
            case PAGE_UP -> select(at - MOST_ROWS + 1);
            case ENTER, TAB -> accept();
            default -> {
                return;
            }
        }
        event.consume();
    }

    boolean isOpen() {
        return popup.isShowing();
    }

    /** Not behind a number, where a dot begins its fraction, and not in words or remarks. */
    private void askBehindDot() {
        int caret = editor.getCaretPosition();
        String line = editor.getText(0, caret).replaceFirst("(?s).*\n", "");
        boolean name = line.matches("(.*\\W)?([A-Za-z_]\\w*|[)\\]\"])\\s*\\.") && !line.contains("//") && line.chars().filter(c -> c == '"').count() % 2 == 0;
        if (name) {
            ask();
        }
    }

    private void select(int at) {
        int bounded = Math.max(0, Math.min(list.getItems().size() - 1, at));
        list.getSelectionModel().select(bounded);
        list.scrollTo(Math.max(0, bounded - MOST_ROWS / 2));
    }

    private void ask() {
        long number = ++asked;
        String text = editor.getText();
        advice.complete(cell, text, editor.getCaretPosition()).thenAccept(found -> Platform.runLater(() -> {
            if (number == asked && text.equals(editor.getText()) && editor.isFocused()) {
                offer(found);
            }
        }));
    }

    private void offer(Completions found) {
        if (found.suggestions().isEmpty()) {
            popup.hide();
            return;
        }
        anchor = found.anchor();
        list.getItems().setAll(found.suggestions());
        list.setPrefHeight(Math.min(MOST_ROWS, found.suggestions().size()) * Math.max(ROW, list.getFixedCellSize()) + 8);
        select(0);
        double[] at = editor.caretOnScreen();
        double floor = Screen.getScreensForRectangle(at[0], at[1], 1, 1).stream().mapToDouble(s -> s.getVisualBounds().getMaxY()).max().orElse(Double.MAX_VALUE);
        popup.show(editor, at[0], at[1] + 2);
        // Beneath the line that is written; above it where there is no room beneath. Never over it.
        if (at[1] + 2 + popup.getHeight() > floor) {
            popup.setY(at[2] - popup.getHeight() - 2);
        }
    }

    private void accept() {
        Suggestion chosen = list.getSelectionModel().getSelectedItem();
        popup.hide();
        asked++;
        if (chosen != null && anchor <= editor.getCaretPosition()) {
            editor.replaceText(anchor, editor.getCaretPosition(), chosen.insert());
            if (chosen.insert().endsWith("(")) {
                explain();
            }
        }
    }

    private void explain() {
        String text = editor.getText();
        advice.explain(cell, text, editor.getCaretPosition()).thenAccept(found -> Platform.runLater(() -> {
            if (text.equals(editor.getText()) && editor.isFocused()) {
                tell(found);
            }
        }));
    }

    private void tell(List<Signature> found) {
        if (found.isEmpty()) {
            note.hide();
            return;
        }
        explanation.getChildren().clear();
        for (Signature signature : found.subList(0, Math.min(5, found.size()))) {
            Label declaration = new Label(signature.declaration());
            declaration.getStyleClass().addAll("code", "explanation-code");
            declaration.setWrapText(true);
            explanation.getChildren().add(declaration);
            if (!signature.about().isBlank()) {
                Label about = new Label(signature.about().strip());
                about.setWrapText(true);
                about.getStyleClass().add("explanation-words");
                explanation.getChildren().add(about);
            }
        }
        double[] at = editor.caretOnScreen();
        note.show(editor, at[0], at[1] + 4);
    }

    /** A way to go on; what suits the place is marked. */
    private static final class Row extends ListCell<Suggestion> {
        @Override
        protected void updateItem(Suggestion item, boolean empty) {
            super.updateItem(item, empty);
            getStyleClass().remove("fits");
            setText(empty || item == null ? "" : (item.fits() ? "\u2022 " : "   ") + item.insert());
            if (!empty && item != null && item.fits()) {
                getStyleClass().add("fits");
            }
        }
    }
}
