package org.calicograph.desk.results;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;

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

    private static final double WIDEST = 280;
    private static final ImageView SEEN = new ImageView();
    private static Optional<Hand> hand = Optional.empty();

    /** From now on this can be dragged away from the node. Those it is dragged over are told by the toolkit's mouse-drag events. */
    public void from(Node node, Supplier<Optional<String>> what) {
        node.addEventHandler(MouseEvent.DRAG_DETECTED, e -> what.get().ifPresent(text -> {
            hand = Optional.of(new Hand(this, text));
            node.startFullDrag();
            node.getScene().setCursor(Cursor.CLOSED_HAND);
            lift(node);
            follow(e);
            e.consume();
        }));
        node.addEventHandler(MouseEvent.MOUSE_DRAGGED, Carried::follow);
        // Whoever it was set down on has been told, or will be before anything else happens.
        node.addEventHandler(MouseEvent.MOUSE_RELEASED, e -> hand.ifPresent(h -> {
            Scene scene = node.getScene();
            Platform.runLater(() -> {
                hand = Optional.empty();
                SEEN.setImage(null);
                if (SEEN.getParent() instanceof Pane pane) {
                    pane.getChildren().remove(SEEN);
                }
                if (scene != null) {
                    scene.setCursor(null);
                }
            });
        }));
    }

    /** What is carried is seen as it looked where it was taken up. */
    private static void lift(Node node) {
        if (node.getScene().getRoot() instanceof Pane desk) {
            SnapshotParameters how = new SnapshotParameters();
            how.setFill(Color.TRANSPARENT);
            Bounds all = node.getBoundsInParent();
            how.setViewport(new Rectangle2D(all.getMinX(), all.getMinY(), Math.min(WIDEST, all.getWidth()), Math.max(1, all.getHeight())));
            SEEN.setImage(node.snapshot(how, null));
            SEEN.setId("carried");
            SEEN.setManaged(false);
            SEEN.setMouseTransparent(true);
            SEEN.setOpacity(0.85);
            desk.getChildren().remove(SEEN);
            desk.getChildren().add(SEEN);
        }
    }

    /** Below the pointer and to its right, so that what lies under the pointer stays in sight. */
    private static void follow(MouseEvent e) {
        if (SEEN.getParent() != null) {
            SEEN.relocate(e.getSceneX() + 14, e.getSceneY() + 12);
        }
    }

    /** What of this kind is in the hand. */
    public Optional<String> inHand() {
        return hand.filter(h -> h.kind == this).map(Hand::text);
    }
}
