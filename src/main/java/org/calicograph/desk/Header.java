package org.calicograph.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.calicograph.desk.spoken.Name;

/** The top band: the notebook's name, a sentence on what hangs, the needle, whether all is saved, and the menus. */
final class Header extends HBox {

    /** The size of the name, as the style sheet has it; four fifths of it is the least. */
    private static final double LETTERS = 20;

    private final TextField title = new TextField();
    private final Label sentence = new Label();
    private final Label saved = new Label();
    private final Needle needle;
    private final Map<String, MenuButton> menus = new LinkedHashMap<>();
    private final Menu recent = new Menu("Recent");
    private boolean quiet;

    /** @param actions those that are in menus, in the order of the menus */
    Header(List<Action> actions, Consumer<String> retitle, Runnable hold) {
        super(8);
        getStyleClass().add("header");
        setAlignment(Pos.CENTER_LEFT);
        needle = new Needle(hold);
        title.setId("title");
        title.getStyleClass().add("title");
        title.setPromptText("A name for the notebook");
        Name.of(title, "Name of the notebook");
        title.setMinWidth(120);
        title.fontProperty().addListener((all, before, now) -> widen());
        title.textProperty().addListener((all, before, now) -> {
            widen();
            if (!quiet) {
                retitle.accept(now);
            }
        });
        sentence.setId("sentence");
        sentence.getStyleClass().add("sentence");
        sentence.setMinWidth(0);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        saved.setId("saved");
        saved.getStyleClass().add("saved");
        saved.setMinWidth(USE_PREF_SIZE);
        needle.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(title, sentence, gap, needle, saved);
        String part = "";
        for (Action action : actions) {
            MenuButton menu = menu(action.menu());
            if (!menu.getItems().isEmpty() && !part.equals(action.menu() + action.part())) {
                menu.getItems().add(new SeparatorMenuItem());
            }
            part = action.menu() + action.part();
            menu.getItems().add(item(action));
        }
        menu("Notebook").getItems().add(3, recent);
    }

    /** An action as an item of a menu. */
    static MenuItem item(Action action) {
        MenuItem item = new MenuItem(action.name());
        action.keys().ifPresent(item::setAccelerator);
        item.setOnAction(e -> action.deed().run());
        return item;
    }

    /** As wide as the name, up to a measure. */
    private void widen() {
        Text probe = new Text(title.getText().isEmpty() ? title.getPromptText() : title.getText());
        probe.setFont(Font.font(title.getFont().getFamily(), Math.max(LETTERS * 0.8, title.getFont().getSize())));
        title.setPrefWidth(Math.min(420, probe.getLayoutBounds().getWidth() + 30));
    }

    private MenuButton menu(String name) {
        return menus.computeIfAbsent(name, n -> {
            MenuButton button = new MenuButton(n);
            button.setAccessibleText(n);
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

    /** What hangs, in a few words. */
    void sentence(String words) {
        sentence.setText(words);
    }

    /** Nothing in the band moves by itself, or it does again. */
    void still(boolean on) {
        needle.still(on);
    }

    void saved(String words) {
        saved.setText(words);
    }

    /** @param count how many passages are still to be drawn */
    void atWork(int count) {
        needle.atWork(count);
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
