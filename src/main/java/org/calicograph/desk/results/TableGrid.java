package org.calicograph.desk.results;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.calicograph.drawing.Table;

/** A table that sorts by a click on a column's head, numbers by their size, and copies as tab-separated lines. */
public final class TableGrid extends VBox {

    private static final double ROW = 29;
    private static final double HEAD = 36;
    private static final int MOST_ROWS = 14;
    private static final double LETTERS = 14;
    /** Beside the words of an entry: what the style gives them on both sides, and the line between columns. */
    private static final double PAD = 14;
    /** What the bar of a long table takes. */
    private static final double BAR = 16;
    /** Left and right, and above and below; before the style is there, the table's insets don't tell it. */
    private static final double EDGES = 4;
    private static final double ARROW = 14;
    /** A table that shows all has no bars: once out, each would take the room whose want keeps the other out. */
    private static final PseudoClass ALL_ROWS = PseudoClass.getPseudoClass("all-rows");
    private static final PseudoClass ALL_COLUMNS = PseudoClass.getPseudoClass("all-columns");

    private final TableView<List<Table.Entry>> view = new TableView<>();
    private final Label title = new Label();

    public TableGrid(Table table) {
        super(6);
        getStyleClass().add("table-result");
        title.setText(table.title());
        title.getStyleClass().add("caption");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button copy = new Button("Copy table");
        copy.getStyleClass().add("quiet-button");
        copy.setAccessibleText("Copy the table " + table.title() + " to the clipboard");
        HBox head = new HBox(8, title, gap, copy);
        for (int i = 0; i < table.columns().size(); i++) {
            view.getColumns().add(column(table, i));
        }
        view.setItems(FXCollections.observableArrayList(table.rows()));
        view.setPrefHeight(Math.min(MOST_ROWS, Math.max(1, table.rows().size())) * ROW + HEAD);
        view.setMinHeight(USE_PREF_SIZE);
        view.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        view.widthProperty().addListener((all, before, now) -> arrange(table, now.doubleValue()));
        title.fontProperty().addListener((all, before, now) -> arrange(table, view.getWidth()));
        view.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        view.setPlaceholder(new Label("The table has no rows."));
        view.setAccessibleText("Table " + table.title() + ", " + table.rows().size() + (table.rows().size() == 1 ? " row" : " rows"));
        copy.setOnAction(e -> copy(view.getItems()));
        view.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.isShortcutDown() && e.getCode() == KeyCode.C) {
                copy(view.getSelectionModel().getSelectedItems());
                e.consume();
            }
        });
        getChildren().addAll(head, view);
    }

    /** Gives the columns their widths, and the table the height that its first rows need at these. */
    private void arrange(Table table, double width) {
        if (width < 40 || table.columns().isEmpty()) {
            return;
        }
        // The title has letters of 13 where those of the rows have 14.
        Font font = Font.font(title.getFont().getFamily(), LETTERS * Math.max(0.8, title.getFont().getSize() / 13));
        double[] natural = new double[table.columns().size()];
        double[] least = new double[natural.length];
        for (int i = 0; i < natural.length; i++) {
            double head = extent(table.columns().get(i), font, 0).getWidth();
            least[i] = Math.ceil(head) + PAD;
            // A head has room for the arrow that tells how the table is sorted.
            natural[i] = head + ARROW;
            for (List<Table.Entry> row : table.rows()) {
                natural[i] = Math.max(natural[i], extent(row.get(i).text(), font, 0).getWidth());
            }
            natural[i] = Math.ceil(natural[i]) + PAD;
        }
        double room = width - EDGES - (table.rows().size() > MOST_ROWS ? BAR : 0);
        double[] widths = ColumnWidths.shared(natural, least, room);
        boolean wide = Arrays.stream(least).sum() > room;
        view.pseudoClassStateChanged(ALL_ROWS, table.rows().size() <= MOST_ROWS);
        view.pseudoClassStateChanged(ALL_COLUMNS, !wide);
        double taller = Math.max(0, font.getSize() / LETTERS - 1);
        double height = HEAD * (1 + taller) + EDGES + (wide ? BAR : 0);
        double given = 0;
        for (int i = 0; i < natural.length; i++) {
            // The last has what is left of whole pixels, so that nothing stands empty beside it.
            widths[i] = i < natural.length - 1 ? Math.floor(widths[i]) : Math.max(least[i], Math.floor(room - given));
            given += widths[i];
            view.getColumns().get(i).setPrefWidth(widths[i]);
        }
        for (List<Table.Entry> row : table.rows().subList(0, Math.min(MOST_ROWS, table.rows().size()))) {
            double tallest = ROW * (1 + taller);
            for (int i = 0; i < natural.length; i++) {
                tallest = Math.max(tallest, tall(row.get(i).text(), font, widths[i]));
            }
            height += tallest + 1;
        }
        view.setPrefHeight(Math.max(height, (HEAD + ROW) * (1 + taller)));
        Platform.runLater(view::refresh);
    }

    /** The height of an entry in a column of this width. */
    private static double tall(String text, Font font, double width) {
        return Math.max(ROW, Math.ceil(extent(text, font, Math.max(20, width - PAD)).getHeight()) + ROW - 16);
    }

    private static Bounds extent(String text, Font font, double wrapped) {
        Text probe = new Text(text);
        probe.setFont(font);
        probe.setWrappingWidth(wrapped);
        return probe.getLayoutBounds();
    }

    private static TableColumn<List<Table.Entry>, Table.Entry> column(Table table, int at) {
        boolean numbers = !table.rows().isEmpty() && table.rows().stream().allMatch(r -> r.get(at).isNumber() || r.get(at).text().isBlank());
        TableColumn<List<Table.Entry>, Table.Entry> column = new TableColumn<>(table.columns().get(at));
        column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue().get(at)));
        column.setComparator(order());
        column.setCellFactory(c -> new TableCell<>() {
            @Override
            protected void updateItem(Table.Entry entry, boolean empty) {
                super.updateItem(entry, empty);
                setWrapText(true);
                setText(empty || entry == null ? "" : entry.text());
            }

            /** As tall as its words need at the column's width. */
            @Override
            protected double computePrefHeight(double width) {
                return isEmpty() ? ROW : tall(getText(), getFont(), c.getWidth());
            }
        });
        column.getStyleClass().add(numbers ? "number-column" : "word-column");
        return column;
    }

    /** Numbers by their size and before words, words by the alphabet. */
    static Comparator<Table.Entry> order() {
        return Comparator.<Table.Entry, Boolean>comparing(e -> !e.isNumber())
                .thenComparing(Table.Entry::value)
                .thenComparing(Table.Entry::text, String.CASE_INSENSITIVE_ORDER);
    }

    private void copy(List<List<Table.Entry>> rows) {
        ClipboardContent content = new ClipboardContent();
        content.putString(lines(view.getColumns().stream().map(TableColumn::getText).toList(), rows));
        Clipboard.getSystemClipboard().setContent(content);
    }

    /** A line of column names and one for each row, entries parted by tabs. */
    static String lines(List<String> columns, List<List<Table.Entry>> rows) {
        String head = String.join("\t", columns);
        String body = rows.stream().map(r -> r.stream().map(e -> e.text().replaceAll("[\\t\\n\\r]", " ")).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
        return head + "\n" + body + (rows.isEmpty() ? "" : "\n");
    }
}
