package org.calicograph.desk.wall;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.input.MouseDragEvent;
import javafx.scene.layout.StackPane;
import org.calicograph.desk.results.Carried;
import org.calicograph.desk.results.Hanging;

/** Where on the wall a hand may set down what it carries: a block or a dial anywhere, a swatch on a patch. */
final class Landing {

    private static final PseudoClass ASKED = PseudoClass.getPseudoClass("asked");

    private final StackPane board;
    private final Supplier<Optional<Hanging>> hanging;
    private final WallRequests asks;

    Landing(StackPane board, Supplier<Optional<Hanging>> hanging, WallRequests asks) {
        this.board = board;
        this.hanging = hanging;
        this.asks = asks;
        board.addEventHandler(MouseDragEvent.MOUSE_DRAG_OVER, this::over);
        board.addEventHandler(MouseDragEvent.MOUSE_DRAG_EXITED, e -> left());
        board.addEventHandler(MouseDragEvent.MOUSE_DRAG_RELEASED, this::dropped);
    }

    private Optional<Hanging.Under> under(MouseDragEvent event) {
        return hanging.get().flatMap(h -> h.under(event.getSceneX(), event.getSceneY()));
    }

    private void over(MouseDragEvent event) {
        Optional<String> cloth = Carried.CLOTH.inHand();
        Optional<Hanging.Under> patch = cloth.flatMap(c -> under(event)).filter(u -> ClothShare.named(u.title()).isPresent());
        board.pseudoClassStateChanged(ASKED, patch.isPresent() || Carried.CALL.inHand().isPresent() || Carried.DIAL.inHand().isPresent());
        cloth.ifPresent(c -> asks.pointedAt(patch.map(u -> c + " in place of " + u.title()).orElse("Set " + c + " down on a patch")));
        Carried.CALL.inHand().ifPresent(call -> asks.pointedAt("Hang " + call));
        Carried.DIAL.inHand().ifPresent(dial -> asks.pointedAt("Lay what hangs across the wall over " + dial));
    }

    private void left() {
        board.pseudoClassStateChanged(ASKED, false);
        asks.pointedAt("");
    }

    private void dropped(MouseDragEvent event) {
        left();
        // Once the hand is empty: these may take away what it came from.
        Carried.CALL.inHand().ifPresent(call -> Platform.runLater(() -> asks.put(call)));
        Carried.DIAL.inHand().ifPresent(dial -> Platform.runLater(() -> asks.spread(dial)));
        Carried.CLOTH.inHand().ifPresent(cloth -> under(event).ifPresent(u -> dye(u, cloth)));
    }

    private void dye(Hanging.Under patch, String cloth) {
        ClothShare.named(patch.title()).ifPresent(has -> asks.dye(patch.picture(), patch.place(), has, cloth));
    }

    /** The same by keys: the first patch of a cloth gets another. */
    void dye(String cloth, String other) {
        hanging.get().flatMap(h -> h.first(title -> ClothShare.named(title).equals(Optional.of(cloth)))).ifPresent(u -> dye(u, other));
    }
}
