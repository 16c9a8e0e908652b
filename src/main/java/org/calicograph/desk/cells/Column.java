package org.calicograph.desk.cells;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.calicograph.desk.code.CodeSlot;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** The book: all passages, one beneath another, and a line at the foot to write on. Those first seen are laid out at once, the others when nothing else is to be done. Editors are made for those near what is seen, when nothing else is to be done. */
public final class Column extends ScrollPane {

    private static final double WIDEST = 860;
    private static final int FIRST = 8;
    private static final int BATCH = 3;

    private final CellRequests wishes;
    private final Consumer<CellPane> made;
    private Notebook order = Notebook.titled("");
    private List<String> ids = List.of();
    private Optional<String> chosen = Optional.empty();
    private String sought = "";
    private final VBox cells = new VBox(2);
    private final Map<String, CellPane> panes = new LinkedHashMap<>();
    private final PauseTransition idle = new PauseTransition(Duration.millis(40));

    /** @param made told of each pane as it is made, to fill it with what is known of its cell */
    public Column(CellRequests wishes, Consumer<CellPane> made) {
        this.wishes = wishes;
        this.made = made;
        getStyleClass().add("column");
        cells.getStyleClass().add("cells");
        cells.setMaxWidth(WIDEST);
        Label on = new Label("Write on here");
        on.getStyleClass().add("write-on");
        on.setId("write-on");
        on.setMaxWidth(Double.MAX_VALUE);
        on.setAccessibleRole(javafx.scene.AccessibleRole.BUTTON);
        on.setAccessibleText("Write on: a new passage at the end of the book");
        on.setOnMouseClicked(e -> wishes.addBehind(ids.isEmpty() ? "" : ids.get(ids.size() - 1), true));
        VBox centre = new VBox(cells, on);
        centre.setAlignment(Pos.TOP_LEFT);
        centre.getStyleClass().add("column-ground");
        setContent(centre);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText("The book");
        setId("book");
        idle.setOnFinished(e -> wakeNearby());
        vvalueProperty().addListener((all, before, now) -> idle.playFromStart());
        viewportBoundsProperty().addListener((all, before, now) -> idle.playFromStart());
        cells.heightProperty().addListener((all, before, now) -> idle.playFromStart());
    }

    /** Shows the cells of a notebook; panes of cells that stay are kept. */
    public void show(Notebook notebook) {
        if (onlyTexts(notebook)) {
            return;
        }
        order = notebook;
        ids = notebook.ids();
        panes.entrySet().removeIf(e -> notebook.cell(e.getKey()).map(c -> c instanceof Cell.Code != e.getValue() instanceof CodePane).orElse(true));
        for (Cell cell : notebook.cells()) {
            CellPane pane = panes.get(cell.id());
            if (pane != null) {
                pane.showText(cell.text());
            }
        }
        List<String> there = cells.getChildren().stream().map(n -> ((CellPane) n).cellId()).toList();
        boolean same = there.size() <= ids.size() && there.equals(ids.subList(0, there.size()))
                && cells.getChildren().stream().allMatch(panes::containsValue);
        if (!same) {
            cells.getChildren().setAll(ids.stream().map(id -> pane(id).orElseThrow()).toList());
        } else {
            attach(Math.max(there.size(), FIRST));
        }
        idle.playFromStart();
    }

    /** Where cells and their order stay, as when a letter is typed, only what has another text is touched. */
    private boolean onlyTexts(Notebook notebook) {
        List<Cell> before = order.cells();
        List<Cell> after = notebook.cells();
        boolean alike = before.size() == after.size();
        for (int i = 0; alike && i < after.size(); i++) {
            alike = before.get(i).id().equals(after.get(i).id()) && before.get(i).getClass() == after.get(i).getClass();
        }
        for (int i = 0; alike && i < after.size(); i++) {
            CellPane pane = panes.get(after.get(i).id());
            if (before.get(i) != after.get(i) && pane != null) {
                pane.showText(after.get(i).text());
            }
        }
        if (alike) {
            order = notebook;
        }
        return alike && !panes.isEmpty();
    }

    private CellPane make(Cell cell) {
        CellPane pane = cell instanceof Cell.Code ? new CodePane(cell.id(), cell.text(), wishes) : new ProsePane(cell.id(), cell.text(), wishes);
        made.accept(pane);
        pane.seek(sought);
        return pane;
    }

    /** Puts panes into the window until there are so many. Those far down come in small batches, so that a long notebook opens as quickly as a short one. */
    private void attach(int count) {
        int there = cells.getChildren().size();
        int to = Math.min(count, ids.size());
        if (to > there) {
            cells.getChildren().addAll(ids.subList(there, to).stream().map(id -> pane(id).orElseThrow()).toList());
        }
    }

    /** True if every cell is in the window, and can be scrolled to. */
    public boolean isWhole() {
        return cells.getChildren().size() == ids.size();
    }

    /** Letters have another size from now on, in panes that are made anew. */
    public static void lettersChange() {
        CodeSlot.lettersChange();
    }

    /** Forgets all panes, for another notebook. */
    public void clear() {
        order = Notebook.titled("");
        ids = List.of();
        panes.clear();
        cells.getChildren().clear();
        setVvalue(0);
    }

    /** The pane of a cell, made now if there was none. */
    public Optional<CellPane> pane(String id) {
        CellPane there = panes.get(id);
        if (there == null && ids.contains(id)) {
            there = make(order.cell(id).orElseThrow());
            panes.put(id, there);
        }
        return Optional.ofNullable(there);
    }

    /** Makes the panes of these passages now, so that what they came to can hang. */
    public void makeAll(java.util.Collection<String> wanted) {
        wanted.forEach(this::pane);
    }

    /** The pane of a code cell, if it has been made. */
    public Optional<CodePane> madeCode(String id) {
        return panes.get(id) instanceof CodePane pane ? Optional.of(pane) : Optional.empty();
    }

    public Optional<CodePane> code(String id) {
        return pane(id).filter(p -> p instanceof CodePane).map(p -> (CodePane) p);
    }

    /** Panes of code cells as far as they have been made. */
    public List<CodePane> codes() {
        return panes.values().stream().filter(p -> p instanceof CodePane).map(p -> (CodePane) p).toList();
    }

    public void showChosen(Optional<String> id) {
        if (!id.equals(chosen)) {
            chosen.map(panes::get).ifPresent(pane -> pane.showChosen(false));
            chosen = id;
        }
        id.map(panes::get).ifPresent(pane -> pane.showChosen(true));
    }

    /** Marks where these words stand in every cell; none for no words. */
    public void seek(String words) {
        sought = words;
        panes.values().forEach(p -> p.seek(words));
    }

    /** Brings a passage into sight, and in a tall one the line that the caret is on. */
    public void reveal(String id) {
        attach(ids.indexOf(id) + 1);
        pane(id).ifPresent(pane -> Platform.runLater(() -> {
            cells.applyCss();
            layout();
            double view = getViewportBounds().getHeight();
            double room = getContent().getLayoutBounds().getHeight() - view;
            double inset = cells.getLayoutY();
            double top = inset + pane.getBoundsInParent().getMinY();
            double bottom = inset + pane.getBoundsInParent().getMaxY();
            if (bottom - top > view - 60) {
                top = top + pane.caretTop();
                bottom = top + 40;
            }
            double seen = getVvalue() * Math.max(0, room);
            if (room <= 0 || top >= seen && bottom <= seen + view) {
                return;
            }
            double to = top < seen ? top - 24 : bottom - view + 40;
            setVvalue(Math.max(0, Math.min(1, to / room)));
        }));
    }

    /** One editor at a time, so that scrolling never waits. */
    private void wakeNearby() {
        double height = getViewportBounds().getHeight();
        double from = getVvalue() * Math.max(0, cells.getHeight() - height);
        List<CellPane> near = new ArrayList<>();
        for (CellPane pane : List.copyOf(panes.values())) {
            Bounds bounds = pane.getBoundsInParent();
            if (pane.getParent() != null && !pane.isAwake() && bounds.getMaxY() > from - height / 2 && bounds.getMinY() < from + height * 1.5) {
                near.add(pane);
            }
        }
        if (!near.isEmpty()) {
            near.get(0).wake();
            idle.playFromStart();
        } else if (!isWhole()) {
            attach(cells.getChildren().size() + BATCH);
            idle.playFromStart();
        }
    }
}
