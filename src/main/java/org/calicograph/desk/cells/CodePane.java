package org.calicograph.desk.cells;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.calicograph.desk.code.CodeEditor;
import org.calicograph.desk.code.CodeSlot;
import org.calicograph.desk.code.Marks;
import org.calicograph.desk.dials.DialControl;
import org.calicograph.desk.dials.Writing;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.FailureNote;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.session.Sketch;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** A code cell: its text, how it stands, and what it came to; its dials beside it. */
public final class CodePane extends CellPane {

    private final CodeSlot slot;
    private final Label standing = new Label();
    private final VBox trouble = new VBox();
    private final Checking checking;
    /** What is said to be the trouble, if it is said of a text that was drawn or checked here. */
    private Optional<Failure> told = Optional.empty();
    private final Label output = ExhibitPane.words("");
    private final ExhibitPane exhibit;
    private final Label folded = new Label();
    private final Timeline clock = new Timeline(new KeyFrame(Duration.millis(100), e -> tell()));
    /** A cell that is drawn again at once, as when a dial turns, doesn't flicker through its states. */
    private final PauseTransition patience = new PauseTransition(Duration.millis(250));
    private CellState state = new CellState.Undrawn();
    private boolean saved;

    public CodePane(String id, String text, CellRequests wishes) {
        super(id, wishes);
        getStyleClass().add("code-cell");
        exhibit = new ExhibitPane(wishes::pointedAt);
        slot = new CodeSlot(id, text);
        checking = new Checking(id, wishes.advice(), slot::text, this::checked);
        slot.onEdit(now -> {
            written();
            wishes.edited(id, now);
        });
        slot.onWake(this::awake);
        standing.setId("standing-" + id);
        standing.getStyleClass().add("standing");
        output.getStyleClass().add("output");
        output.setId("output-" + id);
        trouble.setId("trouble-" + id);
        folded.getStyleClass().add("folded");
        Button draw = new Button("Draw");
        draw.setId("draw-" + id);
        draw.getStyleClass().add("quiet-button");
        draw.setAccessibleText("Draw cell " + id);
        draw.setTooltip(new Tooltip("Draw this cell and what it needs (Ctrl+Enter)"));
        draw.setOnAction(e -> wishes.draw(id));
        HBox line = new HBox(10, draw, standing);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("standing-line");
        body.getChildren().addAll(slot, line);
        clock.setCycleCount(Animation.INDEFINITE);
        patience.setOnFinished(e -> tellState());
        show(state);
    }

    private void awake(CodeEditor editor) {
        editor.focusedProperty().addListener((all, before, now) -> {
            if (now) {
                wishes.chosen(id);
            }
        });
        new Suggesting(id, editor, wishes.advice());
    }

    /** How the cell stands now. What was drawn stays in sight until there is something newer. */
    public void show(CellState next) {
        boolean shown = state instanceof CellState.Done || patience.getStatus() == Animation.Status.RUNNING;
        state = next;
        if (next.pending() && shown) {
            patience.playFromStart();
            return;
        }
        tellState();
        if (next instanceof CellState.Done done) {
            saved = false;
            checking.stop();
            noTrouble();
            result(done.exhibit(), done.output());
        } else if (next instanceof CellState.Failed failed) {
            saved = false;
            checking.stop();
            trouble(failed.failure());
            result(Exhibit.NOTHING, failed.output());
        }
    }

    /** What is being drawn because of a dial, as it looks by now. */
    public void sketch(Sketch sketch) {
        patience.playFromStart();
        exhibit.sketch(sketch);
    }

    /** The frames of its pictures, for a kernel to paint for. */
    public List<PixelFrame> easels() {
        return exhibit.easels(id);
    }

    private void tellState() {
        patience.stop();
        if (state instanceof CellState.Drawing) {
            clock.playFromStart();
        } else {
            clock.stop();
        }
        tell();
        String style = CellMark.style(state);
        if (!getStyleClass().contains(style)) {
            getStyleClass().removeIf(s -> s.startsWith("standing-"));
            getStyleClass().add(style);
        }
    }

    private void tell() {
        standing.setText(saved && state instanceof CellState.Undrawn ? "\u25a1  as saved in the file; not drawn here yet"
                : CellMark.words(state, Instant.now()));
    }

    /** A result from the file, of a cell that is not drawn here. */
    public void show(Saved result) {
        saved = true;
        noTrouble();
        result.failure().ifPresent(why -> {
            Label label = new Label("\u2716  It failed when it was saved: " + why);
            label.setWrapText(true);
            label.getStyleClass().add("failure-message");
            VBox note = new VBox(label);
            note.getStyleClass().add("failure");
            trouble.getChildren().setAll(note);
        });
        result(result.exhibit(), result.output());
        tell();
    }

    /** What went wrong with another text is not said of this one; what the compiler said stays until it has looked again. */
    private void written() {
        if (!trouble.getChildren().isEmpty() && !(told.orElse(null) instanceof Failure.DoesNotCompile)) {
            noTrouble();
        }
        checking.written();
    }

    private void checked(List<Problem> problems) {
        if (problems.isEmpty()) {
            noTrouble();
        } else {
            trouble(new Failure.DoesNotCompile(problems));
            arrange();
        }
    }

    private void noTrouble() {
        told = Optional.empty();
        slot.mark(List.of());
        if (!trouble.getChildren().isEmpty()) {
            trouble.getChildren().clear();
            arrange();
        }
    }

    private void trouble(Failure failure) {
        if (!told.equals(Optional.of(failure))) {
            told = Optional.of(failure);
            trouble.getChildren().setAll(new FailureNote(failure, this::go));
        }
        slot.mark(Marks.of(slot.text(), failure));
    }

    private void result(Exhibit shown, String printed) {
        exhibit.show(shown);
        output.setText(printed.stripTrailing());
        arrange();
    }

    private void arrange() {
        List<javafx.scene.Node> wanted = new ArrayList<>(body.getChildren().subList(0, 2));
        if (!trouble.getChildren().isEmpty()) {
            wanted.add(trouble);
        }
        if (!output.getText().isEmpty()) {
            wanted.add(output);
        }
        if (!exhibit.getChildren().isEmpty()) {
            wanted.add(exhibit);
        }
        if (!wanted.equals(body.getChildren())) {
            body.getChildren().setAll(wanted);
        }
    }

    public CellState state() {
        return state;
    }

    public Exhibit exhibit() {
        return exhibit.exhibit();
    }

    /** The dials that this cell declares, as they now are. */
    public void show(List<Dial> dials) {
        Writing writing = new Writing(wishes.lengths());
        List<DialControl> controls = new ArrayList<>();
        for (Dial dial : dials) {
            Optional<DialControl> there = margin.getChildren().stream().map(n -> (DialControl) n).filter(c -> c.suits(dial)).findFirst();
            there.ifPresent(c -> c.show(dial, writing));
            controls.add(there.orElseGet(() -> new DialControl(dial, writing, wishes::turn)));
        }
        if (!controls.equals(margin.getChildren())) {
            margin.getChildren().setAll(controls);
        }
    }

    @Override
    public void showText(String text) {
        boolean other = !text.equals(slot.text());
        slot.show(text);
        if (other) {
            written();
        }
    }

    @Override
    public void write() {
        if (!folded.getText().isEmpty()) {
            fold();
        }
        slot.wake().requestFocus();
    }

    @Override
    public void focus() {
        slot.wake().requestFocus();
    }

    private void go(Place place) {
        write();
        CodeEditor editor = slot.wake();
        editor.moveTo(Marks.offset(slot.text(), place));
        editor.requestFollowCaret();
    }

    @Override
    public void wake() {
        slot.wake();
    }

    @Override
    public boolean isAwake() {
        return slot.isAwake();
    }

    @Override
    public String selected() {
        return slot.editor().map(CodeEditor::getSelectedText).orElse("");
    }

    @Override
    public void select(int start, int end) {
        if (!folded.getText().isEmpty()) {
            fold();
        }
        CodeEditor editor = slot.wake();
        editor.selectRange(start, end);
        editor.requestFollowCaret();
    }

    @Override
    public void seek(String words) {
        slot.seek(words);
    }

    @Override
    public void fold() {
        boolean fold = folded.getText().isEmpty();
        int lines = slot.text().split("\n", -1).length;
        folded.setText(fold ? slot.text().split("\n", 2)[0] + "   \u2026 " + lines + (lines == 1 ? " line" : " lines") + " folded away" : "");
        body.getChildren().set(0, fold ? folded : slot);
    }

    @Override
    public int caretLine() {
        return slot.editor().map(CodeEditor::caretLine).orElse(1);
    }
}
