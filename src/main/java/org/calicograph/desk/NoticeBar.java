package org.calicograph.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.calicograph.desk.spoken.Name;

/** What the desk has to say, above the cells, each with what can be done about it. Nothing here blocks the work. */
final class NoticeBar extends VBox {

    private final Map<String, Node> notices = new LinkedHashMap<>();

    NoticeBar() {
        getStyleClass().add("notices");
    }

    /**
     * Says something; a notice of the same subject makes room for it.
     *
     * @param deeds what can be done, by the words on the button, in order; each also takes the notice away
     */
    void say(String subject, String words, Map<String, Runnable> deeds) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add("notice-words");
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, label);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("notice");
        row.setId("notice-" + subject);
        deeds.forEach((name, deed) -> {
            Button button = new Button(name);
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(e -> {
                hush(subject);
                deed.run();
            });
            row.getChildren().add(button);
        });
        hush(subject);
        notices.put(subject, row);
        getChildren().add(row);
    }

    /** Asks for a word: it is given with the button or with Enter; Escape takes the question away. */
    void ask(String subject, String words, String suggested, String deed, Consumer<String> answer) {
        TextField field = new TextField(suggested);
        field.setId("answer-" + subject);
        Name.of(field, words);
        Map<String, Runnable> deeds = new LinkedHashMap<>();
        deeds.put(deed, () -> answer.accept(field.getText()));
        deeds.put("Leave it", () -> { });
        say(subject, words, deeds);
        ((HBox) notices.get(subject)).getChildren().add(1, field);
        field.setOnAction(e -> {
            hush(subject);
            answer.accept(field.getText());
        });
        field.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                hush(subject);
                e.consume();
            }
        });
        field.requestFocus();
        field.selectAll();
    }

    /** Says something that can only be taken note of. */
    void say(String subject, String words) {
        say(subject, words, Map.of("Good", () -> { }));
    }

    void hush(String subject) {
        Node gone = notices.remove(subject);
        getChildren().remove(gone);
    }

    void hushAll() {
        notices.clear();
        getChildren().clear();
    }

    boolean says(String subject) {
        return notices.containsKey(subject);
    }
}
