package org.calicograph.desk.results;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.calicograph.drawing.Exhibit;

/** What a cell's value looks like. A picture that takes another's place keeps its frame, its zoom and the keyboard. */
public final class ExhibitPane extends VBox {

    private static final int MOST_LETTERS = 20_000;

    private final Consumer<String> onPoint;
    private Exhibit exhibit = Exhibit.NOTHING;

    /** @param onPoint told what is under the pointer */
    public ExhibitPane(Consumer<String> onPoint) {
        super(12);
        this.onPoint = onPoint;
        getStyleClass().add("exhibit");
    }

    public Exhibit exhibit() {
        return exhibit;
    }

    public void show(Exhibit next) {
        if (next.equals(exhibit)) {
            return;
        }
        List<Exhibit> parts = flat(next);
        List<Exhibit> before = flat(exhibit);
        boolean alike = parts.size() == before.size() && !parts.isEmpty();
        for (int i = 0; alike && i < parts.size(); i++) {
            alike = parts.get(i).getClass() == before.get(i).getClass();
        }
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

    private static List<Exhibit> flat(Exhibit exhibit) {
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

    private Node node(Exhibit part) {
        if (part instanceof Exhibit.Drawn drawn) {
            return new Framed(drawn, onPoint);
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

    /** A picture with its caption. */
    private static final class Framed extends VBox {
        private final PictureView view;
        private final Label caption = new Label();

        Framed(Exhibit.Drawn drawn, Consumer<String> onPoint) {
            super(4);
            view = new PictureView(drawn.picture(), drawn.caption());
            view.onPoint(onPoint);
            caption.getStyleClass().add("caption");
            caption.setWrapText(true);
            caption.setMinHeight(USE_PREF_SIZE);
            getChildren().add(view);
            caption(drawn.caption());
        }

        void show(Exhibit.Drawn drawn) {
            view.show(drawn.picture(), drawn.caption());
            caption(drawn.caption());
        }

        private void caption(String text) {
            caption.setText(text);
            getChildren().remove(caption);
            if (!text.isBlank()) {
                getChildren().add(caption);
            }
        }
    }
}
