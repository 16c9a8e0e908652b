package org.calicograph.desk.results;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.MouseEvent;

/**
 * What a hand may carry across the desk to the wall. It is carried within the window alone: other programs are offered nothing,
 * and nothing of theirs is taken.
 */
public enum Carried {

    /** A call of a routine, from the shelf. */
    CALL,

    /** A dial's name, from the tray. */
    DIAL,

    /** A cloth's name, from the bolts. */
    CLOTH;

    /** What is in the hand. There is one pointer, and only JavaFX's thread touches this. */
    private record Hand(Carried kind, String text) { }

    private static Optional<Hand> hand = Optional.empty();

    /** From now on this can be dragged away from the node. Those it is dragged over are told by the toolkit's mouse-drag events. */
    public void from(Node node, Supplier<Optional<String>> what) {
        node.addEventHandler(MouseEvent.DRAG_DETECTED, e -> what.get().ifPresent(text -> {
            hand = Optional.of(new Hand(this, text));
            node.startFullDrag();
            node.getScene().setCursor(Cursor.CLOSED_HAND);
            e.consume();
        }));
        // Whoever it was set down on has been told, or will be before anything else happens.
        node.addEventHandler(MouseEvent.MOUSE_RELEASED, e -> hand.ifPresent(h -> {
            Scene scene = node.getScene();
            Platform.runLater(() -> {
                hand = Optional.empty();
                if (scene != null) {
                    scene.setCursor(null);
                }
            });
        }));
    }

    /** What of this kind is in the hand. */
    public Optional<String> inHand() {
        return hand.filter(h -> h.kind == this).map(Hand::text);
    }
}
