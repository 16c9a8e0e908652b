package org.calicograph.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The head of the window: the study's title, what to do with it, whether it is saved. */
final class Header extends HBox {

    private final TextField title = new TextField();
    private final Label saved = new Label();
    private final Button drawAll = new Button("Draw all");
    private final Button stop = new Button("Stop");
    private final Map<String, MenuButton> menus = new LinkedHashMap<>();
    private final Menu recent = new Menu("Recent");
    private boolean quiet;

    /** @param actions those that are in menus, in the order of the menus */
    Header(List<Action> actions, Consumer<String> retitle, Runnable onDrawAll, Runnable onStop) {
        super(8);
        getStyleClass().add("header");
        setAlignment(Pos.CENTER_LEFT);
        title.setId("title");
        title.getStyleClass().add("title");
        title.setPromptText("A title for the study");
        title.setAccessibleText("Title of the study");
        title.textProperty().addListener((all, before, now) -> {
            if (!quiet) {
                retitle.accept(now);
            }
        });
        HBox.setHgrow(title, Priority.ALWAYS);
        saved.setId("saved");
        saved.getStyleClass().add("saved");
        saved.setMinWidth(USE_PREF_SIZE);
        drawAll.setId("draw-all");
        drawAll.getStyleClass().add("chief");
        drawAll.setMinWidth(USE_PREF_SIZE);
        drawAll.setTooltip(new Tooltip("Draw every cell anew (Ctrl+Shift+Enter)"));
        drawAll.setOnAction(e -> onDrawAll.run());
        stop.setId("stop");
        stop.setMinWidth(USE_PREF_SIZE);
        stop.setTooltip(new Tooltip("Stop what is being drawn (Escape, or Ctrl+.)"));
        stop.setOnAction(e -> onStop.run());
        getChildren().addAll(title, saved, drawAll, stop);
        for (Action action : actions) {
            MenuItem item = new MenuItem(action.name());
            action.keys().ifPresent(item::setAccelerator);
            item.setOnAction(e -> action.deed().run());
            menu(action.group()).getItems().add(item);
        }
        menu("Study").getItems().add(2, recent);
    }

    private MenuButton menu(String name) {
        return menus.computeIfAbsent(name, n -> {
            MenuButton button = new MenuButton(n);
            button.setId("menu-" + n.toLowerCase(java.util.Locale.ROOT));
            button.setMinWidth(USE_PREF_SIZE);
            getChildren().add(button);
            return button;
        });
    }

    void title(String text) {
        quiet = true;
        if (!title.getText().equals(text)) {
            title.setText(text);
        }
        quiet = false;
    }

    void saved(String words) {
        saved.setText(words);
    }

    void atWork(boolean pending) {
        stop.setDisable(!pending);
    }

    /** @param files the words of a menu item and what it does */
    void recent(Map<String, Runnable> files) {
        recent.getItems().clear();
        files.forEach((name, deed) -> {
            MenuItem item = new MenuItem(name);
            item.setMnemonicParsing(false);
            item.setOnAction(e -> deed.run());
            recent.getItems().add(item);
        });
        recent.setDisable(files.isEmpty());
    }
}
