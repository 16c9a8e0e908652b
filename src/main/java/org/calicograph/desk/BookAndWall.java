package org.calicograph.desk;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.StackPane;

/**
 * The book on the left and the wall on the right, with a seam between them that drags; in a narrow window the wall
 * stands above. A page can take the place of the book, of the wall, or of both for a while; the wall can stand alone.
 */
final class BookAndWall extends StackPane {

    private static final double BOOK = 0.42;
    private static final double ABOVE = 0.55;
    private static final double NARROW = 1000;

    private final SplitPane seam = new SplitPane();
    private final StackPane left = new StackPane();
    private final StackPane right = new StackPane();
    private final Node book;
    private final Node wall;
    private final Consumer<Node> leave;
    private boolean narrow;
    private boolean alone;

    /** @param leave told of each page that is left */
    BookAndWall(Node book, Node wall, Consumer<Node> leave) {
        this.book = book;
        this.wall = wall;
        this.leave = leave;
        getStyleClass().add("book-and-wall");
        left.getChildren().setAll(book);
        right.getChildren().setAll(wall);
        right.getStyleClass().add("wall");
        left.setMinSize(260, 160);
        right.setMinSize(280, 180);
        getChildren().setAll(seam);
        widthProperty().addListener((all, before, now) -> turn(now.doubleValue() > 0 && now.doubleValue() < NARROW));
        arrange();
    }

    private void turn(boolean now) {
        if (now != narrow) {
            narrow = now;
            arrange();
        }
    }

    private void arrange() {
        seam.setOrientation(narrow ? Orientation.VERTICAL : Orientation.HORIZONTAL);
        if (alone) {
            seam.getItems().setAll(right);
        } else if (narrow) {
            seam.getItems().setAll(right, left);
            seam.setDividerPositions(ABOVE);
        } else {
            seam.getItems().setAll(left, right);
            seam.setDividerPositions(BOOK);
        }
    }

    /** The wall alone, for the class to see, or the book beside it again. */
    void turnAlone() {
        alone = !alone;
        arrange();
    }

    boolean isAlone() {
        return alone;
    }

    /** Shows a page in the book's place. */
    void overBook(Supplier<Node> page) {
        clear();
        if (alone) {
            turnAlone();
        }
        show(left, page.get());
    }

    /** Shows a page in the wall's place. */
    void overWall(Supplier<Node> page) {
        clear();
        show(right, page.get());
    }

    /** Shows a page over all, as at the start. */
    void overAll(Supplier<Node> page) {
        clear();
        Node shown = page.get();
        getChildren().setAll(shown);
        shown.requestFocus();
    }

    /** Shows one page in the book's place, and what belongs to it in the wall's. */
    <T extends Node> void overBoth(Supplier<T> page, Function<T, Node> figure) {
        clear();
        if (alone) {
            turnAlone();
        }
        T shown = page.get();
        right.getChildren().setAll(figure.apply(shown));
        show(left, shown);
    }

    private static void show(StackPane place, Node page) {
        place.getChildren().setAll(page);
        page.requestFocus();
    }

    /** Book and wall again. */
    void clear() {
        leave.accept(page());
        getChildren().setAll(seam);
        left.getChildren().setAll(book);
        right.getChildren().setAll(wall);
    }

    /** The page that is in somebody's place, or the book. */
    Node page() {
        if (getChildren().get(0) != seam) {
            return getChildren().get(0);
        }
        Node inBook = left.getChildren().get(0);
        return inBook == book && right.getChildren().get(0) != wall ? right.getChildren().get(0) : inBook;
    }
}
