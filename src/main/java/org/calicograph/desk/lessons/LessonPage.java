package org.calicograph.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.calicograph.desk.dials.DialControl;
import org.calicograph.desk.dials.Writing;
import org.calicograph.desk.prose.Prose;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.Hanging;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Dial;

/** A lesson, one thing after another: its words, steps and questions in the book's place, and the figure, as large as the wall, in the wall's. */
public final class LessonPage extends BorderPane {

    /** What the page needs of the open notebook. */
    public interface Opened {

        Notebook notebook();

        List<CellSource> sources();

        Map<String, CellState> states();

        List<Dial> dials();

        SessionOptions options();

        /** Turns a dial of the notebook; what depends on it is drawn again. */
        void turn(String dial, String value);

        void back();
    }

    private static final double WIDEST = 860;

    private final Opened opened;
    private final Session drawing;
    private final Label where = new Label();
    private final StackPane middle = new StackPane();
    private final Button first = button("First", "The first (Home)", this::goFirst);
    private final Button before = button("Before", "The one before (left arrow)", () -> go(-1));
    private final Button next = button("On", "The next (right arrow)", () -> go(1));
    private final Button last = button("Last", "The last (End)", this::goLast);
    private final List<DialControl> controls = new ArrayList<>();
    private final Label verdict = new Label();
    private final ExhibitPane exhibit = new ExhibitPane(words -> { });
    private final Hanging figure = new Hanging(words -> { }, org.calicograph.drawing.Picture.Label::title, part -> { });
    private List<Lesson.Stage> stages = List.of();
    private int at;

    public LessonPage(Opened opened) {
        this.opened = opened;
        getStyleClass().add("lesson-page");
        setFocusTraversable(true);
        where.setId("lesson-where");
        verdict.setId("lesson-verdict");
        verdict.setWrapText(true);
        verdict.getStyleClass().add("lesson-verdict");
        where.getStyleClass().add("lesson-title");
        where.setMaxWidth(Double.MAX_VALUE);
        where.setWrapText(true);
        VBox head = new VBox(8, where, new FlowPane(8, 8, first, before, next, last, button("Back to the book", "Back to the book (Escape)", opened::back)));
        head.getStyleClass().add("sheet-head");
        middle.setAlignment(Pos.TOP_CENTER);
        middle.getStyleClass().add("sheet");
        ScrollPane scroll = new ScrollPane(middle);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("column");
        setTop(head);
        setCenter(scroll);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        figure.setAccessibleText("The figure of the lesson");
        middle.getChildren().setAll(Prose.words("Getting the steps ready\u2026", "caption"));
        List<CellSource> steps = Lesson.stepCells(opened.notebook(), opened.states());
        drawing = Session.open(Lesson.all(opened.sources(), steps), opened.notebook().dialTexts(), opened.options(), SessionListener.NONE);
        drawing.draw(steps.stream().map(CellSource::id).toList()).whenComplete((done, trouble) -> {
            Map<String, CellState> drawn = drawing.states();
            Platform.runLater(() -> {
                drawing.close();
                stages = Lesson.stages(opened.notebook(), opened.states(), drawn);
                show();
            });
        });
        tell();
    }

    private static Button button(String name, String spoken, Runnable deed) {
        Button button = new Button(name);
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(spoken);
        button.setTooltip(new Tooltip(spoken));
        button.setOnAction(e -> deed.run());
        return button;
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case RIGHT, PAGE_DOWN, SPACE -> go(1);
            case LEFT, PAGE_UP -> go(-1);
            case HOME -> goFirst();
            case END -> goLast();
            case ESCAPE -> opened.back();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void goFirst() {
        go(-at);
    }

    private void goLast() {
        go(stages.size() - 1 - at);
    }

    private void go(int steps) {
        int to = Math.max(0, Math.min(stages.size() - 1, at + steps));
        if (to != at && !stages.isEmpty()) {
            at = to;
            show();
        }
    }

    private void tell() {
        where.setText(stages.isEmpty() ? "" : (at + 1) + " of " + stages.size()
                + (stages.get(at) instanceof Lesson.Stage.Step step ? ", step " + step.number() + " of " + step.of() + " of its draft" : ""));
        first.setDisable(at == 0);
        before.setDisable(at == 0);
        next.setDisable(at >= stages.size() - 1);
        last.setDisable(at >= stages.size() - 1);
    }

    private void show() {
        tell();
        controls.clear();
        if (stages.isEmpty()) {
            middle.getChildren().setAll(Prose.words("There is nothing to see in this notebook yet. Go back and draw it.", "caption"));
            return;
        }
        Lesson.Stage stage = stages.get(at);
        List<Node> parts = new ArrayList<>();
        if (stage instanceof Lesson.Stage.Prose prose) {
            parts.add(Prose.of(prose.markdown()));
        } else if (stage instanceof Lesson.Stage.Step step) {
            parts.add(Prose.words(step.drawn().caption(), "lesson-words"));
            figure.show(new Exhibit.Drawn(step.drawn().picture(), ""));
        } else if (stage instanceof Lesson.Stage.Asked asked) {
            parts.addAll(question(asked.cell()));
        } else {
            show(shown(stage.cell()));
            parts.add(exhibit);
        }
        VBox column = new VBox(14);
        column.getChildren().setAll(parts);
        column.setMaxWidth(WIDEST);
        middle.getChildren().setAll(column);
        setAccessibleText("Lesson, " + where.getText());
        if (controls.isEmpty()) {
            requestFocus();
        } else {
            controls.get(0).lookup(".text-field").requestFocus();
        }
    }

    /** Pictures go to the wall, in the place of those before; the rest stands in the book. */
    private void show(Exhibit shown) {
        if (ExhibitPane.hasPicture(shown)) {
            figure.show(shown);
        }
        exhibit.show(ExhibitPane.hasPicture(shown) ? Exhibit.NOTHING : shown);
    }

    /** What hangs on the wall meanwhile. */
    public Hanging figure() {
        return figure;
    }

    private Exhibit shown(String cell) {
        return opened.states().get(cell) instanceof CellState.Done done ? done.exhibit() : Exhibit.NOTHING;
    }

    // --- Questions ---

    private List<Node> question(String cell) {
        List<Node> parts = new ArrayList<>();
        if (shown(cell) instanceof Exhibit.Words text) {
            parts.add(Prose.words(Lesson.question(text.text()).getKey(), "lesson-words"));
        }
        parts.add(Prose.words("Type your answer and press Enter.", "caption"));
        for (Dial dial : answers(cell)) {
            DialControl control = new DialControl(dial, writing(), opened::turn);
            control.setMaxWidth(260);
            if (!opened.notebook().dials().containsKey(dial.name())) {
                control.blank();
            }
            controls.add(control);
            parts.add(control);
        }
        parts.add(verdict);
        judge(cell);
        return parts;
    }

    private List<Dial> answers(String cell) {
        return opened.dials().stream().filter(d -> d.cell().equals(cell)).toList();
    }

    private Writing writing() {
        return new Writing(opened.options().lengths());
    }

    /** Says what is to be said of an answer; nothing while there is none. */
    private void judge(String cell) {
        boolean answered = answers(cell).stream().anyMatch(d -> opened.notebook().dials().containsKey(d.name()));
        Optional<String> said = shown(cell) instanceof Exhibit.Words text && answered ? Optional.of(Lesson.question(text.text()).getValue()) : Optional.empty();
        verdict.setText(said.map(s -> (s.endsWith(" is right.") ? "\u2714  " : "\u2026  ") + s).orElse(""));
    }

    /** A cell of the notebook stands otherwise now. */
    public void stands(String cell) {
        if (!stages.isEmpty() && stages.get(at).cell().equals(cell) && opened.states().get(cell) instanceof CellState.Done) {
            if (stages.get(at) instanceof Lesson.Stage.Asked) {
                judge(cell);
            } else if (stages.get(at) instanceof Lesson.Stage.Shown) {
                show(shown(cell));
            }
        }
    }

    public void close() {
        drawing.close();
    }
}
