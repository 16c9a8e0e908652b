package org.calicograph.desk.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseDragEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.calicograph.desk.dials.Writing;
import org.calicograph.desk.prose.Prose;
import org.calicograph.desk.results.Carried;
import org.calicograph.desk.opened.Variations;
import org.calicograph.desk.spoken.Name;
import org.calicograph.geometry.Box;
import org.calicograph.wire.Dial;

/** Variations in the wall's place: pictures side by side over one or two dials, and the variations kept under names. */
public final class SheetPage extends BorderPane {

    private static final double GAP = 10;
    private static final double LARGEST = 460;
    private static final String NOW = "as it is now";
    private static final String NONE = "one dial only";

    private final SheetRequests hand;
    private final ComboBox<String> cell = new ComboBox<>();
    private final ComboBox<String> across = new ComboBox<>();
    private final ComboBox<String> down = new ComboBox<>();
    private final Spinner<Integer> columns = new Spinner<>(2, 12, 5);
    private final Spinner<Integer> rows = new Spinner<>(2, 12, 3);
    private final TextField name = new TextField();
    private final FlowPane kept = new FlowPane(8, 8);
    private final VBox pairs = new VBox();
    private final VBox sheet = new VBox(14);
    private Optional<SheetDrawing> drawing = Optional.empty();
    private List<Tile> shown = List.of();
    private int wide = 1;
    /** The dial that was pulled first; empty for none. */
    private String pulled = "";

    public SheetPage(SheetRequests hand) {
        this.hand = hand;
        getStyleClass().add("sheet-page");
        cell.getItems().setAll(hand.cellsWithPictures());
        cell.setConverter(new StringConverter<>() {
            @Override
            public String toString(String id) {
                return id == null ? "" : hand.pictureName(id);
            }

            @Override
            public String fromString(String name) {
                return name;
            }
        });
        List<String> dials = hand.dials().stream().map(Dial::name).toList();
        across.getItems().setAll(dials);
        down.getItems().add(NONE);
        down.getItems().addAll(dials);
        cell.getSelectionModel().selectFirst();
        across.getSelectionModel().selectFirst();
        down.getSelectionModel().selectFirst();
        rows.disableProperty().bind(down.valueProperty().isEqualTo(NONE));
        describe();
        Button draw = new Button("Draw the sheet");
        draw.setId("draw-sheet");
        draw.getStyleClass().add("chief");
        draw.setOnAction(e -> draw());
        Button back = new Button("Back to the wall");
        back.setId("back");
        back.setOnAction(e -> leave());
        FlowPane asked = new FlowPane(8, 8, new Label("Picture"), cell, new Label("over"), across, columns, new Label("and"), down, rows, draw, back);
        asked.setAlignment(Pos.CENTER_LEFT);
        Button keep = new Button("Keep");
        keep.setId("keep");
        keep.setOnAction(e -> keep());
        name.setOnAction(e -> keep());
        FlowPane keeping = new FlowPane(8, 8, new Label("The dials as they are now, under the name"), name, keep);
        keeping.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(10, asked, keeping, kept, pairs);
        head.getStyleClass().add("sheet-head");
        ScrollPane scroll = new ScrollPane(sheet);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("board");
        sheet.getStyleClass().add("spread");
        scroll.viewportBoundsProperty().addListener((all, before, now) -> fit());
        setTop(head);
        setCenter(scroll);
        scroll.addEventFilter(MouseDragEvent.MOUSE_DRAG_RELEASED, e -> Carried.DIAL.inHand().ifPresent(this::pull));
        if (!dials.isEmpty()) {
            FlowPane tray = handles(dials);
            tray.getStyleClass().add("tray");
            setBottom(tray);
        }
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                leave();
                e.consume();
            }
        });
        sheet.getChildren().setAll(words(dials.isEmpty()
                ? "The book has no dials yet. Declare one in a working line, such as int points = dial(\"points\", 5, 16, 8);"
                : cell.getItems().isEmpty() ? "Nothing hangs on the wall yet. Draw something first."
                : "Choose a dial, and how many values of it to see. All pictures are to one scale. Pressing one takes its values into the book."));
        draw.setDisable(dials.isEmpty() || cell.getItems().isEmpty());
        showKept();
    }

    /** The dials as they stand beneath the wall: each can be pulled up, by hand or by a key. */
    private FlowPane handles(List<String> dials) {
        FlowPane row = new FlowPane(8, 6, new Label("Pull up:"));
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("tray-dials");
        for (String dial : dials) {
            Button handle = new Button(dial);
            handle.setId("pull-" + dial);
            handle.getStyleClass().add("handle");
            handle.setAccessibleText("Lay the pictures over " + dial);
            handle.setOnAction(e -> pull(dial));
            Carried.DIAL.from(handle, () -> Optional.of(dial));
            row.getChildren().add(handle);
        }
        return row;
    }

    /** A dial pulled onto the wall lays five pictures across; a second lays them down, and a third takes its place. */
    public void pull(String dial) {
        boolean second = !pulled.isEmpty() && !pulled.equals(dial);
        if (second) {
            down.setValue(dial);
        } else {
            pulled = dial;
            across.setValue(dial);
            down.setValue(NONE);
            columns.getValueFactory().setValue(5);
        }
        draw();
    }

    private void describe() {
        cell.setId("sheet-cell");
        Name.of(cell, "Picture that is varied");
        across.setId("sheet-across");
        Name.of(across, "Dial that changes from left to right");
        down.setId("sheet-down");
        Name.of(down, "Dial that changes from top to bottom");
        Name.of(columns, "Values of the first dial");
        Name.of(rows, "Values of the second dial");
        columns.setPrefWidth(76);
        rows.setPrefWidth(76);
        name.setId("variation-name");
        name.setPromptText("calm, or bold");
        Name.of(name, "Name to keep the dials under");
    }

    private static Label words(String text) {
        return Prose.words(text, "caption");
    }

    /** Ends what is being drawn and goes back. */
    private void leave() {
        close();
        hand.back();
    }

    public void close() {
        drawing.ifPresent(SheetDrawing::close);
        drawing = Optional.empty();
    }

    private Optional<Dial> dial(ComboBox<String> box) {
        return hand.dials().stream().filter(d -> d.name().equals(box.getValue())).findFirst();
    }

    private void draw() {
        if (dial(across).isEmpty()) {
            return;
        }
        List<String> first = Spread.over(dial(across).get(), columns.getValue());
        Optional<Dial> second = dial(down).filter(d -> !d.name().equals(across.getValue()));
        List<String> others = second.map(d -> Spread.over(d, rows.getValue())).orElse(List.of(""));
        int inRow = second.isPresent() ? first.size() : Math.min(5, first.size());
        List<Map<String, String>> variations = new ArrayList<>();
        for (String other : others) {
            for (String value : first) {
                Map<String, String> dials = new LinkedHashMap<>();
                dials.put(across.getValue(), value);
                second.ifPresent(d -> dials.put(d.name(), other));
                variations.add(dials);
            }
        }
        GridPane grid = new GridPane();
        grid.setHgap(GAP);
        grid.setVgap(GAP);
        List<Tile> tiles = new ArrayList<>();
        for (int i = 0; i < variations.size(); i++) {
            Map<String, String> dials = variations.get(i);
            Tile tile = new Tile(writing().words(dials, hand.dials()), () -> take(dials), this::scale);
            tiles.add(tile);
            grid.add(tile, i % inRow, i / inRow);
        }
        start(tiles, variations, List.of(grid), inRow);
    }

    /** So large that a row of pictures fills the wall. */
    private void fit() {
        double room = getWidth() - 56;
        double side = Math.max(70, Math.min(LARGEST, (room - GAP * (wide - 1)) / wide - Tile.AROUND));
        shown.forEach(tile -> tile.side(side));
    }

    /** All pictures to one scale, that of the largest: a larger quilt looks larger. */
    private void scale() {
        List<Box> sizes = shown.stream().flatMap(t -> t.size().stream()).toList();
        double width = sizes.stream().mapToDouble(Box::width).max().orElse(0);
        double height = sizes.stream().mapToDouble(Box::height).max().orElse(0);
        shown.forEach(t -> t.toScaleOf(width, height));
    }

    private void start(List<Tile> tiles, List<Map<String, String>> variations, List<Node> page, int inRow) {
        close();
        shown = tiles;
        wide = inRow;
        fit();
        sheet.getChildren().setAll(page);
        SheetDrawing begun = new SheetDrawing(hand.sources(), hand.needs(), hand.notebook().dialTexts(), cell.getValue(), variations, hand.options(),
                (number, state) -> Platform.runLater(() -> tiles.get(number).show(state)));
        drawing = Optional.of(begun);
        begun.begin().whenComplete((done, trouble) -> Platform.runLater(begun::close));
    }

    private void take(Map<String, String> dials) {
        close();
        hand.take(dials);
    }

    // --- Kept under names ---

    private Map<String, String> present() {
        Map<String, String> values = new LinkedHashMap<>();
        hand.dials().forEach(d -> values.put(d.name(), d.text()));
        return values;
    }

    private void keep() {
        if (!name.getText().isBlank()) {
            hand.change(Variations.keep(hand.notebook(), name.getText().strip(), present()));
            name.clear();
            showKept();
        }
    }

    private void showKept() {
        kept.getChildren().clear();
        Variations.of(hand.notebook()).forEach((called, dials) -> {
            Button take = new Button(called);
            take.setAccessibleText("Take the variation " + called + ": " + writing().words(dials, hand.dials()));
            take.setOnAction(e -> take(dials));
            Button forget = quiet("forget", "Forget the variation " + called);
            forget.setOnAction(e -> {
                hand.change(Variations.forget(hand.notebook(), called));
                showKept();
            });
            FlowPane one = new FlowPane(2, 2, take, forget);
            one.setAlignment(Pos.CENTER_LEFT);
            one.setPrefWrapLength(180);
            kept.getChildren().add(one);
        });
        pairs.getChildren().setAll(kept.getChildren().isEmpty() ? List.of() : List.of(comparing()));
    }

    private static Button quiet(String words, String spoken) {
        Button button = new Button(words);
        button.getStyleClass().add("quiet-button");
        button.setAccessibleText(spoken);
        return button;
    }

    // --- Side by side ---

    private Map<String, Map<String, String>> comparable() {
        Map<String, Map<String, String>> all = new LinkedHashMap<>();
        all.put(NOW, present());
        all.putAll(Variations.of(hand.notebook()));
        return all;
    }

    /** Two boxes to choose from, and a button. */
    private FlowPane comparing() {
        List<String> names = List.copyOf(comparable().keySet());
        ComboBox<String> left = new ComboBox<>();
        ComboBox<String> right = new ComboBox<>();
        left.getItems().setAll(names);
        right.getItems().setAll(names);
        left.setId("compare-left");
        Name.of(left, "Variation on the left");
        right.setId("compare-right");
        Name.of(right, "Variation on the right");
        left.getSelectionModel().select(Math.max(0, names.size() - 2));
        right.getSelectionModel().selectLast();
        Button compare = new Button("Show side by side");
        compare.setId("compare");
        compare.setDisable(cell.getItems().isEmpty());
        compare.setOnAction(e -> compare(left.getValue(), right.getValue()));
        FlowPane row = new FlowPane(8, 8, new Label("Compare"), left, new Label("with"), right, compare);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void compare(String one, String other) {
        Map<String, String> first = comparable().get(one);
        Map<String, String> second = comparable().get(other);
        Tile left = new Tile(one, () -> take(first), this::scale);
        Tile right = new Tile(other, () -> take(second), this::scale);
        GridPane pair = new GridPane();
        pair.setHgap(16);
        pair.add(left, 0, 0);
        pair.add(right, 1, 0);
        List<Variations.Difference> differences = Variations.differences(first, second);
        start(List.of(left, right), List.of(first, second), List.of(
                differences.isEmpty() ? words("They have the same dials.") : listed(one, other, differences), pair), 2);
    }

    /** The dials that differ, a row for each. */
    private GridPane listed(String one, String other, List<Variations.Difference> differences) {
        GridPane grid = new GridPane();
        grid.setId("differences");
        grid.setHgap(24);
        grid.setVgap(4);
        grid.addRow(0, words("What differs"), words(one), words(other));
        for (Variations.Difference d : differences) {
            grid.addRow(grid.getRowCount(), new Label(d.dial()), new Label(writing().word(d.dial(), d.first(), hand.dials())),
                    new Label(writing().word(d.dial(), d.second(), hand.dials())));
        }
        return grid;
    }

    private Writing writing() {
        return new Writing(hand.options().lengths());
    }
}
