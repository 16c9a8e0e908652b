package org.calicograph.desk.cuts;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.calicograph.desk.prose.Prose;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.wire.CutList;

/** The cutting list of what hangs, as a slip in the book's place: what is cut of one cloth, or of all, and what to buy. */
public final class CutListPage extends BorderPane {

    private final Button back = new Button("Back to the book");
    private final FlowPane choice = new FlowPane(6, 6);
    private final VBox slip = new VBox(14);

    /** With a word that the list is being reckoned, until {@link #show}. */
    public CutListPage(Runnable onBack) {
        setId("cut-list");
        getStyleClass().add("cut-list");
        Label title = new Label("What is cut");
        title.getStyleClass().add("lesson-title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        back.setId("cut-list-back");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(e -> onBack.run());
        HBox first = new HBox(10, title, gap, back);
        first.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(10, first, choice);
        head.getStyleClass().add("sheet-head");
        slip.setId("cut-slip");
        slip.getStyleClass().add("sheet");
        slip.getChildren().setAll(Prose.words("The plan is being reckoned\u2026", "caption"));
        ScrollPane scroll = new ScrollPane(slip);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("column");
        setTop(head);
        setCenter(scroll);
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                onBack.run();
                e.consume();
            }
        });
    }

    /** @param cloth the one to begin with; empty, or one that the plan has not, for what to buy */
    public void show(CutList list, Optional<String> cloth) {
        choice.getChildren().clear();
        if (!list.why().isEmpty()) {
            slip.getChildren().setAll(Prose.words(list.why(), "caption"));
            return;
        }
        ToggleGroup one = new ToggleGroup();
        ToggleButton all = button("What to buy", one, () -> show(List.of(new CutList.Cloth("", list.whole()))));
        List<String> names = list.cloths().stream().map(CutList.Cloth::name).distinct().toList();
        Runnable begin = all::fire;
        for (String name : names) {
            ToggleButton button = button(name, one, () -> show(list.cloths().stream().filter(c -> c.name().equals(name)).toList()));
            if (cloth.equals(Optional.of(name))) {
                begin = button::fire;
            }
        }
        begin.run();
    }

    private ToggleButton button(String words, ToggleGroup one, Runnable deed) {
        ToggleButton button = new ToggleButton(words);
        button.setMnemonicParsing(false);
        button.setToggleGroup(one);
        button.setOnAction(e -> {
            button.setSelected(true);
            deed.run();
        });
        choice.getChildren().add(button);
        return button;
    }

    private void show(List<CutList.Cloth> cloths) {
        slip.getChildren().setAll(cloths.stream().map(c -> {
            ExhibitPane pane = new ExhibitPane(words -> { });
            pane.show(c.list());
            return pane;
        }).toList());
    }

    @Override
    public void requestFocus() {
        back.requestFocus();
    }
}
