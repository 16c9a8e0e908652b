package org.calicograph.desk.results;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
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
import org.calicograph.drawing.Table;

/** A table that sorts by a click on a column's head, numbers by their size, and copies as tab-separated lines. */
public final class TableGrid extends VBox {

    private static final double ROW = 29;
    private static final double HEAD = 36;
    private static final int MOST_ROWS = 14;

    private final TableView<List<Table.Entry>> view = new TableView<>();

    public TableGrid(Table table) {
        super(6);
        getStyleClass().add("table-result");
        Label title = new Label(table.title());
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
        view.setFixedCellSize(ROW);
        view.setPrefHeight(Math.min(MOST_ROWS, Math.max(1, table.rows().size())) * ROW + HEAD);
        view.setMinHeight(USE_PREF_SIZE);
        view.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        view.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        view.setPlaceholder(new Label("The table has no rows."));
        view.setAccessibleText("Table " + table.title() + ", " + table.rows().size() + " rows");
        copy.setOnAction(e -> copy(view.getItems()));
        view.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.isShortcutDown() && e.getCode() == KeyCode.C) {
                copy(view.getSelectionModel().getSelectedItems());
                e.consume();
            }
        });
        getChildren().addAll(head, view);
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
                setText(empty || entry == null ? "" : entry.text());
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
