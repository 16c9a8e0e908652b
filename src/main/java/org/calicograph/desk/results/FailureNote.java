package org.calicograph.desk.results;

import java.util.function.Consumer;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Frame;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** Why a cell has no value: what happened, where, and what to do next. */
public final class FailureNote extends VBox {

    private static final int MOST = 5;

    /** @param go takes the reader to a place in the cell's text */
    public FailureNote(Failure failure, Consumer<Place> go) {
        super(5);
        getStyleClass().add("failure");
        if (failure instanceof Failure.Stopped) {
            // Nothing is wrong with it: somebody held it.
            getStyleClass().setAll("held");
            getChildren().add(line(Repairs.title(failure) + ". " + Repairs.next(failure), "words"));
            setAccessibleText(Repairs.title(failure) + ". " + Repairs.next(failure));
            return;
        }
        if (!(failure instanceof Failure.DoesNotCompile)) {
            getChildren().add(line("\u2716  " + Repairs.title(failure), "failure-title"));
        }
        if (failure instanceof Failure.DoesNotCompile wrong) {
            wrong.problems().stream().limit(MOST).forEach(p -> problem(p, go));
            if (wrong.problems().size() > MOST) {
                getChildren().add(line("and " + (wrong.problems().size() - MOST) + " more", "failure-next"));
            }
        } else {
            getChildren().add(line(failure.message(), "failure-message"));
            failure.at().ifPresent(place -> getChildren().add(link(place, go)));
            if (failure instanceof Failure.Threw threw) {
                threw.frames().stream().filter(f -> !f.inCell()).limit(MOST).forEach(this::frame);
            }
        }
        String next = Repairs.next(failure);
        if (!next.isEmpty()) {
            getChildren().add(line(next, "failure-next"));
        }
        setAccessibleText(Repairs.title(failure) + ". " + failure.message());
    }

    private void problem(Problem problem, Consumer<Place> go) {
        getChildren().addAll(line("\u2716  " + problem.message(), "failure-message"), link(problem.from(), go));
    }

    private void frame(Frame frame) {
        String file = frame.source().replaceFirst(".*[/\\\\]", "");
        getChildren().add(line("in " + file + ", line " + frame.line() + (frame.within().isEmpty() ? "" : ", " + frame.within()), "failure-next"));
    }

    private static Hyperlink link(Place place, Consumer<Place> go) {
        Hyperlink link = new Hyperlink("Go to line " + place.line() + ", column " + place.column());
        link.setOnAction(e -> go.accept(place));
        return link;
    }

    private static Label line(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }
}
