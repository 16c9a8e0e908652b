package org.calicograph.desk.wall;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.css.PseudoClass;
import org.calicograph.desk.results.Thumbnail;
import org.calicograph.drawing.Picture;

/** Small pictures of everything that can hang on the wall, each with the number of its pin; pressing one hangs it. */
final class Rail extends ScrollPane {

    private static final int SIDE = 46;
    private static final PseudoClass HUNG = PseudoClass.getPseudoClass("hung");
    private static final PseudoClass OLDER = PseudoClass.getPseudoClass("older");

    private final HBox row = new HBox(8);
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Consumer<String> choose;

    Rail(Consumer<String> choose) {
        this.choose = choose;
        getStyleClass().add("rail-of-pictures");
        row.getStyleClass().add("rail-row");
        setContent(row);
        setVbarPolicy(ScrollBarPolicy.NEVER);
        setFitToHeight(true);
        setFocusTraversable(false);
        setMinHeight(SIDE + 24);
        setPrefHeight(SIDE + 24);
        setAccessibleText("What can hang on the wall");
        order(List.of());
    }

    /** These passages have pictures, in this order. */
    void order(List<String> cells) {
        entries.keySet().removeIf(cell -> !cells.contains(cell));
        int pin = 1;
        for (String cell : cells) {
            entries.computeIfAbsent(cell, Entry::new).pin(pin++);
        }
        List<Entry> wanted = cells.stream().map(entries::get).toList();
        if (!wanted.equals(row.getChildren())) {
            row.getChildren().setAll(wanted);
        }
        setVisible(cells.size() > 1);
        setManaged(cells.size() > 1);
    }

    void picture(String cell, Picture picture) {
        Optional.ofNullable(entries.get(cell)).ifPresent(e -> Thumbnail.paint(picture, SIDE * 2, e.small::setImage));
    }

    void current(String cell, boolean current) {
        Optional.ofNullable(entries.get(cell)).ifPresent(e -> e.pseudoClassStateChanged(OLDER, !current));
    }

    void hung(Optional<String> cell) {
        entries.forEach((id, entry) -> {
            boolean hangs = cell.equals(Optional.of(id));
            entry.pseudoClassStateChanged(HUNG, hangs);
            entry.setAccessibleText("Picture " + entry.number.getText() + (hangs ? ", hangs on the wall" : ", hang it on the wall"));
        });
    }

    /** One small picture with its number. */
    private final class Entry extends Button {
        private final ImageView small = new ImageView();
        private final Label number = new Label();

        Entry(String cell) {
            getStyleClass().setAll("rail-picture");
            setId("rail-" + cell);
            small.getStyleClass().add("small-picture");
            small.setFitWidth(SIDE);
            small.setFitHeight(SIDE);
            number.getStyleClass().add("pin-number");
            StackPane together = new StackPane(small, number);
            together.setMinSize(SIDE, SIDE);
            StackPane.setAlignment(number, Pos.TOP_LEFT);
            setGraphic(together);
            setOnAction(e -> choose.accept(cell));
        }

        void pin(int value) {
            number.setText(Integer.toString(value));
        }
    }
}
