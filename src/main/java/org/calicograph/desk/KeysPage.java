package org.calicograph.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** All keys, by menu, in the book's place. */
final class KeysPage extends BorderPane {

    private static final Map<String, String> WRITING = keys("Ctrl+Space", "ways to go on", "Ctrl+Shift+Space", "what a method takes",
            "Tab", "a step inwards in working lines", "Shift+Tab", "the control before",
            "two empty lines", "a new passage", "Escape", "hold; leave a page");
    private static final Map<String, String> PICTURE = keys("+, \u2212", "zoom", "arrows", "pan", "0", "the whole picture");

    private final Button back = new Button("Back to the book");

    KeysPage(List<Action> actions, Runnable onBack) {
        Map<String, Map<String, String>> groups = new LinkedHashMap<>();
        actions.forEach(a -> a.keys().ifPresent(k -> groups.computeIfAbsent(a.menu(), g -> new LinkedHashMap<>())
                .put(k.getDisplayText(), a.name().replace("\u2026", ""))));
        groups.put("While writing", WRITING);
        groups.put("In a picture", PICTURE);
        List<VBox> columns = new ArrayList<>();
        groups.forEach((name, keys) -> columns.add(column(name, keys)));
        FlowPane all = new FlowPane(48, 28);
        all.getStyleClass().add("sheet");
        all.getChildren().setAll(columns);
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("column");
        HBox head = new HBox(back);
        head.setAlignment(Pos.CENTER_RIGHT);
        head.getStyleClass().add("sheet-head");
        setId("keys");
        setTop(head);
        setCenter(scroll);
        back.setOnAction(e -> onBack.run());
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                onBack.run();
                e.consume();
            }
        });
    }

    private static Map<String, String> keys(String... pairs) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            keys.put(pairs[i], pairs[i + 1]);
        }
        return keys;
    }

    private static VBox column(String name, Map<String, String> keys) {
        Label title = new Label(name);
        title.getStyleClass().add("lesson-title");
        GridPane grid = new GridPane();
        grid.setHgap(16);
        grid.setVgap(5);
        keys.forEach((key, deed) -> {
            Label pressed = new Label(key);
            pressed.getStyleClass().add("key");
            Label done = new Label(deed);
            done.getStyleClass().add("words");
            grid.addRow(grid.getRowCount(), pressed, done);
        });
        return new VBox(10, title, grid);
    }

    @Override
    public void requestFocus() {
        back.requestFocus();
    }
}
