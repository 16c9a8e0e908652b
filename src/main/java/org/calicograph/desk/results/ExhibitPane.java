package org.calicograph.desk.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.session.Sketch;
import org.calicograph.wire.PixelFrame;

/** What a cell's value looks like. A picture that takes another's place keeps its frame, its zoom and the keyboard. */
public class ExhibitPane extends VBox {

    private static final int MOST_LETTERS = 20_000;

    private final Consumer<String> onPoint;
    private final Predicate<Exhibit> only;
    private Exhibit exhibit = Exhibit.NOTHING;

    /** @param onPoint told what is under the pointer */
    public ExhibitPane(Consumer<String> onPoint) {
        this(onPoint, part -> true);
    }

    /** @param only which parts of an exhibit are shown here */
    public ExhibitPane(Consumer<String> onPoint, Predicate<Exhibit> only) {
        super(12);
        this.onPoint = onPoint;
        this.only = only;
        getStyleClass().add("exhibit");
    }

    public Exhibit exhibit() {
        return exhibit;
    }

    public void show(Exhibit next) {
        if (next.equals(exhibit)) {
            return;
        }
        List<Exhibit> parts = parts(next);
        List<Exhibit> before = parts(exhibit);
        boolean alike = alike(parts, before);
        exhibit = next;
        if (!alike) {
            getChildren().setAll(parts.stream().map(this::node).toList());
            return;
        }
        for (int i = 0; i < parts.size(); i++) {
            if (!parts.get(i).equals(before.get(i))) {
                if (parts.get(i) instanceof Exhibit.Drawn drawn) {
                    ((Framed) getChildren().get(i)).show(drawn);
                } else {
                    getChildren().set(i, node(parts.get(i)));
                }
            }
        }
    }

    private static boolean alike(List<Exhibit> parts, List<Exhibit> others) {
        boolean alike = parts.size() == others.size() && !parts.isEmpty();
        for (int i = 0; alike && i < parts.size(); i++) {
            alike = parts.get(i).getClass() == others.get(i).getClass();
        }
        return alike;
    }

    /** Shows a sketch of what will follow, unless that has another form than what is shown. */
    public void sketch(Sketch sketch) {
        List<Exhibit> parts = parts(sketch.rest());
        List<Exhibit> before = parts(exhibit);
        if (!alike(parts, before)) {
            return;
        }
        exhibit = sketch.rest();
        int picture = 0;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof Exhibit.Drawn drawn) {
                ((Framed) getChildren().get(i)).sketch(sketch.pictures().get(picture++), drawn.caption());
            } else if (!parts.get(i).equals(before.get(i))) {
                getChildren().set(i, node(parts.get(i)));
            }
        }
    }

    /** The frames of the pictures that are shown, for a kernel to paint for; none unless all have a size. */
    public List<PixelFrame> easels(String cell) {
        List<PixelFrame> easels = new ArrayList<>();
        int pictures = 0;
        for (Node child : getChildren()) {
            if (child instanceof Framed framed) {
                framed.view().easel(cell, pictures++).ifPresent(easels::add);
            }
        }
        return easels.size() == pictures ? easels : List.of();
    }

    private List<Exhibit> parts(Exhibit whole) {
        return flat(whole).stream().filter(only).toList();
    }

    /** The parts of an exhibit, one after another, none of them several. */
    public static List<Exhibit> flat(Exhibit exhibit) {
        if (exhibit instanceof Exhibit.Several several) {
            List<Exhibit> all = new ArrayList<>();
            several.parts().forEach(p -> all.addAll(flat(p)));
            return all;
        }
        return exhibit instanceof Exhibit.Nothing ? List.of() : List.of(exhibit);
    }

    public static boolean hasPicture(Exhibit exhibit) {
        return flat(exhibit).stream().anyMatch(part -> part instanceof Exhibit.Drawn);
    }

    /** The first picture of what there is to see. */
    public static Optional<Picture> picture(Exhibit exhibit) {
        return flat(exhibit).stream().filter(part -> part instanceof Exhibit.Drawn).map(part -> ((Exhibit.Drawn) part).picture()).findFirst();
    }

    /** A picture has got a frame. */
    void made(Framed framed) { }

    private Node node(Exhibit part) {
        if (part instanceof Exhibit.Drawn drawn) {
            Framed framed = new Framed(drawn, onPoint);
            made(framed);
            return framed;
        } else if (part instanceof Exhibit.Tabled tabled) {
            return new TableGrid(tabled.table());
        } else if (part instanceof Exhibit.Words words) {
            return words(words.text());
        }
        return new VBox();
    }

    /** Words as a cell gives or prints them; very long ones are cut, and say so. */
    public static Label words(String text) {
        boolean cut = text.length() > MOST_LETTERS;
        Label label = new Label(cut ? text.substring(0, MOST_LETTERS) + "\n… and " + (text.length() - MOST_LETTERS) + " more characters"
                : text.stripTrailing());
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add("words");
        return label;
    }
}
