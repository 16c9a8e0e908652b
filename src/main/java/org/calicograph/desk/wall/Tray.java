package org.calicograph.desk.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.Node;
import org.calicograph.desk.dials.DialControl;
import org.calicograph.desk.dials.Writing;
import org.calicograph.desk.results.Carried;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;

/** The tray under the wall: the dials that move what hangs there, and behind them the others of the book. */
final class Tray extends ScrollPane {

    private static final double TALLEST = 156;

    private final Supplier<Length.System> lengths;
    private final BiConsumer<String, String> turn;
    private final FlowPane dials = new FlowPane(10, 8);
    private final Label others = new Label("these move other pictures");
    private List<Dial> all = List.of();
    private Set<String> moving = Set.of();

    /** @param turn told a dial and the value wanted */
    Tray(Supplier<Length.System> lengths, BiConsumer<String, String> turn) {
        this.lengths = lengths;
        this.turn = turn;
        getStyleClass().add("tray");
        dials.getStyleClass().add("tray-dials");
        others.getStyleClass().add("caption");
        setId("tray");
        setContent(dials);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText("Dials");
        dials.widthProperty().addListener((o, before, now) -> fit());
        dials.heightProperty().addListener((o, before, now) -> fit());
        show(List.of(), Set.of());
    }

    /** @param cells the passages whose dials move what hangs */
    void show(List<Dial> now, Set<String> cells) {
        all = now;
        moving = cells;
        arrange();
    }

    private void arrange() {
        Writing writing = new Writing(lengths.get());
        List<Node> wanted = new ArrayList<>();
        all.stream().filter(d -> moving.contains(d.cell())).forEach(d -> wanted.add(control(d, writing)));
        List<Dial> rest = all.stream().filter(d -> !moving.contains(d.cell())).toList();
        if (!rest.isEmpty() && !wanted.isEmpty()) {
            wanted.add(others);
        }
        rest.forEach(d -> wanted.add(control(d, writing)));
        if (!wanted.equals(dials.getChildren())) {
            // A dial that is being dragged would lose the hand if it were taken out and put back.
            if (wanted.size() == dials.getChildren().size() && dials.getChildren().containsAll(wanted)
                    && dials.getChildren().stream().anyMatch(n -> n.isPressed() || n.lookup(".thumb") != null && n.lookup(".thumb").isPressed())) {
                return;
            }
            dials.getChildren().setAll(wanted);
        }
        setVisible(!wanted.isEmpty());
        setManaged(!wanted.isEmpty());
        fit();
    }

    private DialControl control(Dial dial, Writing writing) {
        Optional<DialControl> there = dials.getChildren().stream().filter(n -> n instanceof DialControl c && c.suits(dial)).map(n -> (DialControl) n).findFirst();
        there.ifPresent(c -> c.show(dial, writing));
        return there.orElseGet(() -> {
            DialControl made = new DialControl(dial, writing, turn);
            made.handle().setTooltip(new Tooltip("Drag it onto the wall to lay out what hangs over " + dial.name()));
            Carried.DIAL.from(made.handle(), () -> Optional.of(dial.name()));
            return made;
        });
    }

    /** As high as its dials need, up to two rows; more scroll. */
    private void fit() {
        double height = Math.min(TALLEST, dials.prefHeight(Math.max(240, getWidth() - 16)) + 4);
        if (Math.abs(height - getPrefHeight()) > 0.5) {
            setPrefHeight(height);
            setMinHeight(height);
        }
    }
}
