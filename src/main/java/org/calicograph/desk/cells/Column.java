package org.calicograph.desk.cells;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** All cells, one beneath another. Those first seen are laid out at once, the others when nothing else is to be done. Editors are made for those near what is seen, when nothing else is to be done. */
public final class Column extends ScrollPane {

    private static final double WIDEST = 1180;
    private static final int FIRST = 8;
    private static final int BATCH = 3;

    private final Wishes wishes;
    private final VBox cells = new VBox(2);
    private final Map<String, CellPane> panes = new LinkedHashMap<>();
    private final PauseTransition idle = new PauseTransition(Duration.millis(40));

    public Column(Wishes wishes) {
        this.wishes = wishes;
        getStyleClass().add("column");
        cells.getStyleClass().add("cells");
        cells.setMaxWidth(WIDEST);
        StackPane centre = new StackPane(cells);
        centre.setAlignment(Pos.TOP_CENTER);
        centre.getStyleClass().add("column-ground");
        setContent(centre);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText("The cells of the study");
        idle.setOnFinished(e -> wakeNearby());
        vvalueProperty().addListener((all, before, now) -> idle.playFromStart());
        viewportBoundsProperty().addListener((all, before, now) -> idle.playFromStart());
        cells.heightProperty().addListener((all, before, now) -> idle.playFromStart());
    }

    /** Shows the cells of a notebook; panes of cells that stay are kept. */
    public void show(Notebook notebook) {
        Map<String, CellPane> kept = new LinkedHashMap<>();
        for (Cell cell : notebook.cells()) {
            CellPane pane = panes.get(cell.id());
            boolean code = cell instanceof Cell.Code;
            if (pane == null || pane instanceof CodePane != code) {
                pane = code ? new CodePane(cell.id(), cell.text(), wishes) : new ProsePane(cell.id(), cell.text(), wishes);
            } else {
                pane.showText(cell.text());
            }
            kept.put(cell.id(), pane);
        }
        panes.clear();
        panes.putAll(kept);
        List<CellPane> wanted = List.copyOf(kept.values());
        int there = cells.getChildren().size();
        if (there > wanted.size() || !cells.getChildren().equals(wanted.subList(0, there))) {
            cells.getChildren().setAll(wanted);
        } else {
            attach(Math.max(there, FIRST));
        }
        idle.playFromStart();
    }

    /** Puts panes into the window until there are so many. Those far down come in small batches, so that a long study opens as quickly as a short one. */
    private void attach(int count) {
        int there = cells.getChildren().size();
        int to = Math.min(count, panes.size());
        if (to > there) {
            cells.getChildren().addAll(List.copyOf(panes.values()).subList(there, to));
        }
    }

    /** True if every cell is in the window, and can be scrolled to. */
    public boolean isWhole() {
        return cells.getChildren().size() == panes.size();
    }

    /** Forgets all panes, for another study. */
    public void clear() {
        panes.clear();
        cells.getChildren().clear();
        setVvalue(0);
    }

    public Optional<CellPane> pane(String id) {
        return Optional.ofNullable(panes.get(id));
    }

    public Optional<CodePane> code(String id) {
        return pane(id).filter(p -> p instanceof CodePane).map(p -> (CodePane) p);
    }

    public List<CodePane> codes() {
        return panes.values().stream().filter(p -> p instanceof CodePane).map(p -> (CodePane) p).toList();
    }

    public void showChosen(Optional<String> id) {
        panes.forEach((name, pane) -> pane.showChosen(id.equals(Optional.of(name))));
    }

    /** Brings a cell into sight. */
    public void reveal(String id) {
        attach(List.copyOf(panes.keySet()).indexOf(id) + 1);
        pane(id).ifPresent(pane -> Platform.runLater(() -> {
            cells.applyCss();
            layout();
            double room = cells.getHeight() - getViewportBounds().getHeight();
            double top = pane.getBoundsInParent().getMinY();
            double bottom = Math.min(pane.getBoundsInParent().getMaxY(), top + getViewportBounds().getHeight());
            double seen = getVvalue() * Math.max(0, room);
            if (room <= 0 || top >= seen && bottom <= seen + getViewportBounds().getHeight()) {
                return;
            }
            setVvalue(Math.max(0, Math.min(1, (top - 24) / room)));
        }));
    }

    /** One editor at a time, so that scrolling never waits. */
    private void wakeNearby() {
        double height = getViewportBounds().getHeight();
        double from = getVvalue() * Math.max(0, cells.getHeight() - height);
        List<CellPane> near = new ArrayList<>();
        for (CellPane pane : panes.values()) {
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
