package org.calicograph.desk.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.calicograph.colour.Colour;
import org.calicograph.desk.results.Carried;
import org.calicograph.drawing.Picture;

/** The bolts at the wall's edge: a swatch for each cloth of what hangs, its name, its share and its patches. */
final class Bolts extends ScrollPane {

    private static final PseudoClass RINGED = PseudoClass.getPseudoClass("ringed");
    private static final double SIDE = 26;

    private final VBox list = new VBox(6);

    private final BiConsumer<String, String> dye;
    private final Consumer<String> cut;
    private ContextMenu menu = new ContextMenu();
    private double area;

    /**
     * @param dye told of a cloth of what hangs, and of the one that is to take its place
     * @param cut told of a cloth of which one wants to see what is cut
     */
    Bolts(BiConsumer<String, String> dye, Consumer<String> cut) {
        this.dye = dye;
        this.cut = cut;
        getStyleClass().add("bolts");
        list.getStyleClass().add("bolts-list");
        setId("bolts");
        setContent(list);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText("The cloths of what hangs on the wall");
        show(List.of(), Map.of());
    }

    /** @param named the cloths that the book names: those that don't hang stand behind the others */
    void show(List<Picture> pictures, Map<String, Colour> named) {
        List<ClothShare> cloths = pictures.isEmpty() ? List.of() : ClothShare.in(Picture.group(pictures));
        area = cloths.stream().mapToDouble(ClothShare::area).sum();
        List<HBox> bolts = new ArrayList<>(cloths.stream().map(c -> bolt(c.cloth(), c.colour(), share(c), ", " + share(c) + " of what hangs, finished size, seams not counted")).toList());
        if (!cloths.isEmpty()) {
            named.forEach((name, colour) -> {
                if (cloths.stream().noneMatch(c -> c.cloth().equals(name))) {
                    bolts.add(bolt(name, colour, "not hung", ", in the book, but not in what hangs"));
                }
            });
        }
        cloths.forEach(c -> bolts.stream().filter(b -> c.cloth().equals(b.getUserData())).forEach(b -> changes(b, c.cloth())));
        list.getChildren().setAll(bolts);
        setVisible(!cloths.isEmpty());
        setManaged(!cloths.isEmpty());
    }

    /** All cloth of what hangs, finished, in square inches. */
    double area() {
        return area;
    }

    private static HBox bolt(String cloth, Colour colour, String about, String spoken) {
        Rectangle swatch = new Rectangle(SIDE, SIDE, Color.web(colour.hex()));
        swatch.getStyleClass().add("swatch");
        Label name = new Label(cloth);
        name.setWrapText(true);
        name.getStyleClass().add("bolt-name");
        Label share = new Label(about);
        share.setWrapText(true);
        share.getStyleClass().add("bolt-share");
        VBox words = new VBox(name, share);
        words.setMinWidth(0);
        HBox bolt = new HBox(8, swatch, words);
        bolt.setAlignment(Pos.CENTER_LEFT);
        bolt.getStyleClass().add("bolt");
        bolt.setUserData(cloth);
        bolt.setFocusTraversable(true);
        bolt.setAccessibleRole(AccessibleRole.LIST_ITEM);
        bolt.setAccessibleText(cloth + spoken);
        Tooltip.install(bolt, new Tooltip(cloth + spoken + (about.startsWith("not") ? "" : ". Press it to see what is cut of it") + ". Drag it onto a patch"));
        Carried.CLOTH.from(bolt, () -> Optional.of(cloth));
        return bolt;
    }

    /** By keys or a right click: another cloth in this one's place. */
    private void changes(HBox bolt, String cloth) {
        bolt.setAccessibleHelp("Enter lists the cloths that can take its place, and what is cut of it");
        bolt.setOnMouseClicked(e -> {
            if (e.getButton() == MouseButton.PRIMARY && e.isStillSincePress()) {
                cut.accept(cloth);
                e.consume();
            }
        });
        bolt.setOnContextMenuRequested(e -> {
            offer(bolt, cloth);
            e.consume();
        });
        bolt.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                offer(bolt, cloth);
                e.consume();
            }
        });
    }

    private void offer(HBox bolt, String cloth) {
        menu.hide();
        menu = new ContextMenu();
        MenuItem list = new MenuItem("What is cut of " + cloth);
        list.setMnemonicParsing(false);
        list.setOnAction(e -> cut.accept(cloth));
        menu.getItems().add(list);
        for (Node other : this.list.getChildren()) {
            if (other.getUserData() instanceof String name && !name.equals(cloth)) {
                MenuItem item = new MenuItem(name + " in place of " + cloth);
                item.setMnemonicParsing(false);
                item.setOnAction(e -> dye.accept(cloth, name));
                menu.getItems().add(item);
            }
        }
        menu.show(bolt, Side.LEFT, 0, 0);
    }

    private static String share(ClothShare cloth) {
        long percent = Math.round(cloth.share() * 100);
        return (percent == 0 ? "under 1" : Long.toString(percent)) + " %, " + cloth.patches() + (cloth.patches() == 1 ? " patch" : " patches");
    }

    /** Rings the bolt of this cloth; none for no name. */
    void ring(Optional<String> cloth) {
        list.getChildren().forEach(n -> n.pseudoClassStateChanged(RINGED, cloth.isPresent() && cloth.get().equals(n.getUserData())));
    }
}
