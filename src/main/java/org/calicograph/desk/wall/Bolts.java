package org.calicograph.desk.wall;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Picture;

/** The bolts at the wall's edge: a swatch for each cloth of what hangs, its name, its share and its patches. */
final class Bolts extends ScrollPane {

    private static final PseudoClass RINGED = PseudoClass.getPseudoClass("ringed");
    private static final double SIDE = 26;

    private final VBox list = new VBox(6);

    private double area;

    Bolts() {
        getStyleClass().add("bolts");
        list.getStyleClass().add("bolts-list");
        setId("bolts");
        setContent(list);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleText("The cloths of what hangs on the wall");
        show(List.of());
    }

    void show(List<Picture> pictures) {
        List<ClothShare> cloths = pictures.isEmpty() ? List.of() : ClothShare.in(Picture.group(pictures));
        area = cloths.stream().mapToDouble(ClothShare::area).sum();
        list.getChildren().setAll(cloths.stream().map(Bolts::bolt).toList());
        setVisible(!cloths.isEmpty());
        setManaged(!cloths.isEmpty());
    }

    /** All cloth of what hangs, finished, in square inches. */
    double area() {
        return area;
    }

    private static HBox bolt(ClothShare cloth) {
        Rectangle swatch = new Rectangle(SIDE, SIDE, colour(cloth.colour()));
        swatch.getStyleClass().add("swatch");
        Label name = new Label(cloth.cloth());
        name.getStyleClass().add("bolt-name");
        Label share = new Label(share(cloth));
        share.getStyleClass().add("bolt-share");
        VBox words = new VBox(name, share);
        words.setMinWidth(0);
        HBox bolt = new HBox(8, swatch, words);
        bolt.setAlignment(Pos.CENTER_LEFT);
        bolt.getStyleClass().add("bolt");
        bolt.setUserData(cloth.cloth());
        bolt.setFocusTraversable(true);
        String spoken = cloth.cloth() + ", " + share(cloth) + " of what hangs, finished size, seams not counted";
        bolt.setAccessibleText(spoken);
        Tooltip.install(bolt, new Tooltip(spoken));
        return bolt;
    }

    private static String share(ClothShare cloth) {
        long percent = Math.round(cloth.share() * 100);
        return (percent == 0 ? "under 1" : Long.toString(percent)) + " %, " + cloth.patches() + (cloth.patches() == 1 ? " patch" : " patches");
    }

    private static Color colour(Colour colour) {
        return Color.web(colour.hex());
    }

    /** Rings the bolt of this cloth; none for no name. */
    void ring(Optional<String> cloth) {
        list.getChildren().forEach(n -> n.pseudoClassStateChanged(RINGED, cloth.isPresent() && cloth.get().equals(n.getUserData())));
    }
}
