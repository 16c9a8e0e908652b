package org.calicograph.desk.shelf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.calicograph.desk.code.CodeSlot;
import org.calicograph.desk.prose.Prose;
import org.calicograph.desk.results.Carried;
import org.calicograph.desk.results.PictureView;
import org.calicograph.desk.spoken.Name;
import org.calicograph.notebook.WholeFile;
import org.calicograph.wire.Catalogue;

/** The shelf, over the book and never over the wall: a list to search, and beneath it the chosen routine with its calls and source. */
public final class ShelfPage extends BorderPane {

    /** What the page may do to the notebook. */
    public interface Opened {

        /** A new code cell with this text, and back to the notebook. */
        void put(String code);

        /** Where one's own routines for this notebook are kept; empty if the notebook has no file yet. */
        Optional<Path> ownFolder();

        /** The library has changed: the kernel is to read it again. */
        void reload();

        void back();

        /** What routines look like. */
        Looks looks();
    }

    private static final double LARGE = 240;

    private final Opened opened;
    private final Catalogue catalogue;
    private final ListView<Catalogue.Entry> list = new ListView<>();
    private final TextField search = new TextField();
    private final VBox shown = new VBox(10);

    public ShelfPage(Catalogue catalogue, Opened opened) {
        this.catalogue = catalogue;
        this.opened = opened;
        getStyleClass().add("shelf-page");
        search.setId("shelf-search");
        search.setPromptText("Search: star, border, curve");
        Name.of(search, "Search the shelf");
        HBox.setHgrow(search, Priority.ALWAYS);
        Button back = new Button("Back to the book");
        back.setOnAction(e -> opened.back());
        HBox head = new HBox(10, search, back);
        head.getStyleClass().add("sheet-head");
        list.setId("shelf-list");
        list.setCellFactory(l -> new Row());
        list.setAccessibleText("What is on the shelf");
        list.getSelectionModel().selectedItemProperty().addListener((all, before, now) -> {
            if (now != null) {
                show(now);
            }
        });
        search.setOnAction(e -> list.requestFocus());
        search.textProperty().addListener((all, before, now) -> find(now));
        shown.getStyleClass().add("shelf-entry");
        ScrollPane scroll = new ScrollPane(shown);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("column");
        SplitPane parts = new SplitPane(list, scroll);
        parts.setOrientation(Orientation.VERTICAL);
        parts.setDividerPositions(0.46);
        setTop(head);
        setCenter(parts);
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                opened.back();
                e.consume();
            }
        });
        find("");
    }

    /** The keyboard goes to the search. */
    @Override
    public void requestFocus() {
        search.requestFocus();
    }

    private void find(String words) {
        List<Catalogue.Entry> found = Routines.found(catalogue, words);
        list.getItems().setAll(found);
        if (found.isEmpty()) {
            shown.getChildren().setAll(Prose.words(catalogue.entries().isEmpty() ? "The shelf can be read in a moment. Go back, and come again."
                    : "Nothing of that name. Try a shorter word.", "caption"));
        } else {
            list.getSelectionModel().selectFirst();
        }
    }

    private void show(Catalogue.Entry entry) {
        StackPane frame = new StackPane();
        shown.getChildren().setAll(Prose.words(entry.name(), "shelf-name"), Prose.words(entry.about(), "words"), frame);
        frame.setAlignment(Pos.TOP_LEFT);
        frame.getChildren().setAll(Prose.words("Its picture is being drawn\u2026", "caption"));
        opened.looks().of(entry, look -> look.ifPresentOrElse(l -> {
            PictureView view = new PictureView(l.picture(), entry.name());
            view.setMaxWidth(LARGE);
            view.setPrefWidth(LARGE);
            view.setPrefHeight(LARGE);
            frame.getChildren().setAll(view);
        }, () -> frame.getChildren().clear()));
        FlowPane calls = new FlowPane(8, 8);
        for (String call : Routines.calls(entry)) {
            Button put = new Button(call);
            put.getStyleClass().add("quiet-button");
            put.setAccessibleText("Put " + call + " into the book");
            put.setOnAction(e -> opened.put(call));
            Carried.CALL.from(put, () -> Optional.of(call));
            calls.getChildren().add(put);
        }
        if (!calls.getChildren().isEmpty()) {
            shown.getChildren().addAll(Prose.words("Put into the book:", "caption"), calls);
        }
        for (Catalogue.Routine routine : entry.methods()) {
            Label declaration = Prose.words(routine.declaration(), "shelf-routine");
            declaration.getStyleClass().add("code");
            shown.getChildren().add(declaration);
            if (!routine.about().isBlank()) {
                shown.getChildren().add(Prose.words(routine.about(), "caption"));
            }
        }
        source(entry);
    }

    private void source(Catalogue.Entry entry) {
        try {
            Path file = Path.of(entry.file());
            CodeSlot slot = new CodeSlot(entry.name(), Files.readString(file).stripTrailing());
            Button own = new Button("Keep as my own and use it");
            Label told = Prose.words("", "caption");
            own.setDisable(opened.ownFolder().isEmpty());
            own.setOnAction(e -> keep(file.getFileName(), slot.text(), told::setText));
            shown.getChildren().addAll(Prose.words("Source. What you change here is kept beside the notebook, and takes the place of the shelf's own"
                    + (opened.ownFolder().isEmpty() ? "; save the notebook first." : "."), "caption"), slot, own, told);
        } catch (IOException e) {
            shown.getChildren().add(Prose.words("Its source " + entry.file() + " can't be read.", "caption"));
        }
    }

    private void keep(Path name, String text, Consumer<String> tell) {
        Path folder = opened.ownFolder().orElseThrow();
        try {
            Files.createDirectories(folder);
            WholeFile.write(folder.resolve(name), (text + "\n").getBytes(StandardCharsets.UTF_8));
            opened.reload();
            tell.accept("Kept in " + folder.resolve(name) + ". It is used from now on.");
        } catch (IOException e) {
            tell.accept("It can't be written to " + folder.resolve(name) + ": " + e.getMessage());
        }
    }

    /** A class, the first words about it, and what it looks like. */
    private final class Row extends ListCell<Catalogue.Entry> {
        private final ImageView small = new ImageView();
        private final Label name = new Label();
        private final Label about = new Label();
        private final HBox row;

        Row() {
            small.setFitWidth(Looks.SIDE / 2.0);
            small.setFitHeight(Looks.SIDE / 2.0);
            name.getStyleClass().add("shelf-row-name");
            about.getStyleClass().add("caption");
            VBox words = new VBox(1, name, about);
            words.setAlignment(Pos.CENTER_LEFT);
            words.setMinWidth(0);
            StackPane frame = new StackPane(small);
            frame.getStyleClass().add("shelf-look");
            frame.setMinSize(Looks.SIDE / 2.0, Looks.SIDE / 2.0);
            row = new HBox(10, frame, words);
            row.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
            Carried.CALL.from(this, () -> Optional.ofNullable(getItem()).flatMap(e -> Routines.calls(e).stream().findFirst()));
        }

        @Override
        protected void updateItem(Catalogue.Entry item, boolean empty) {
            boolean another = item != getItem();
            super.updateItem(item, empty);
            if (empty || item == null) {
                setGraphic(null);
                return;
            }
            setGraphic(row);
            if (another) {
                name.setText(item.name());
                about.setText(item.about());
                setAccessibleText(item.name() + ". " + item.about());
                small.setImage(null);
                opened.looks().of(item, look -> {
                    if (getItem() == item) {
                        small.setImage(look.map(Looks.Look::small).orElse(null));
                    }
                });
            }
        }
    }
}
