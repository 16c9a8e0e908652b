package org.calicograph.desk.cells;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.calicograph.desk.code.CodeEditor;
import org.calicograph.desk.code.CodeSlot;
import org.calicograph.desk.code.Marks;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.FailureNote;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.session.Sketch;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** Working lines: their text, their pin, and what they came to. Pictures hang on the wall; a short answer stands as a note at the last line, a table as a slip beneath. */
public final class CodePane extends CellPane {

    private static final int SHORT = 28;

    private static final PseudoClass OLDER = PseudoClass.getPseudoClass("older");

    private final CodeSlot slot;
    private final Label note = new Label();
    private final StackPane lines;
    private final VBox trouble = new VBox();
    private final Checking checking;
    /** What is said to be the trouble, if it is said of a text that was drawn or checked here. */
    private Optional<Failure> told = Optional.empty();
    private final Label output = ExhibitPane.words("");
    private final ExhibitPane slips;
    private final Label folded = new Label();
    private final Timeline clock = new Timeline(new KeyFrame(Duration.millis(100), e -> tell()));
    /** A passage that is drawn again at once, as when a dial turns, doesn't flicker through its states. */
    private final PauseTransition patience = new PauseTransition(Duration.millis(250));
    private CellState state = new CellState.Undrawn();
    private Exhibit whole = Exhibit.NOTHING;
    private Optional<Suggesting> suggesting = Optional.empty();
    private Optional<Integer> number = Optional.empty();
    private boolean saved;

    public CodePane(String id, String text, CellRequests wishes) {
        super(id, wishes);
        getStyleClass().add("working");
        slips = new ExhibitPane(wishes::pointedAt, part -> !(part instanceof Exhibit.Drawn));
        slips.getStyleClass().setAll("slips");
        slot = new CodeSlot(id, text);
        checking = new Checking(id, wishes.advice(), slot::text, this::checked);
        slot.onEdit(now -> {
            written();
            wishes.edited(id, now);
        });
        slot.onWake(this::awake);
        note.getStyleClass().add("margin-note");
        note.setId("note-" + id);
        note.setMouseTransparent(true);
        lines = new StackPane(slot);
        lines.setAlignment(Pos.BOTTOM_RIGHT);
        output.getStyleClass().add("printed");
        output.setId("output-" + id);
        trouble.setId("trouble-" + id);
        folded.getStyleClass().add("folded");
        body.getChildren().add(lines);
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
        editor.onLeave(() -> wishes.addBehind(id, true));
        suggesting = Optional.of(new Suggesting(id, editor, wishes.advice()));
    }

    /** How the passage stands now. What was drawn stays in sight until there is something newer, also where the newer failed. */
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
            result(done.exhibit(), done.output(), true);
        } else if (next instanceof CellState.Failed failed) {
            saved = false;
            checking.stop();
            trouble(failed.failure());
            output.setText(failed.output().stripTrailing());
            wishes.current(id, false);
            arrange();
        } else if (next instanceof CellState.Stale) {
            wishes.current(id, false);
        }
    }

    /** What is being drawn because of a dial, as it looks by now. */
    public void sketch(Sketch sketch) {
        patience.playFromStart();
        slips.sketch(sketch);
        wishes.sketched(id, sketch);
    }

    /** The number of its picture on the wall, if it has one. */
    public void number(Optional<Integer> pin) {
        if (!pin.equals(number)) {
            number = pin;
            tell();
        }
    }

    private void tellState() {
        patience.stop();
        if (state instanceof CellState.Drawing) {
            clock.playFromStart();
        } else {
            clock.stop();
        }
        tell();
        slips.pseudoClassStateChanged(OLDER, !(state instanceof CellState.Done));
        note.pseudoClassStateChanged(OLDER, !(state instanceof CellState.Done));
    }

    private void tell() {
        CellMark mark = CellMark.of(state, saved, number, Instant.now());
        mark(mark);
        slot.help((mark.sign().isEmpty() ? "" : "pin " + mark.sign() + ", ") + mark.words() + told.map(f -> ". " + f.message()).orElse(""));
    }

    /** A result from the file, of a cell that is not drawn here. */
    public void show(Saved result) {
        saved = true;
        noTrouble();
        result.failure().ifPresent(why -> {
            Label label = new Label("When this was saved it needed mending: " + why);
            label.setWrapText(true);
            label.getStyleClass().add("failure-message");
            VBox note = new VBox(label);
            note.getStyleClass().add("failure");
            trouble.getChildren().setAll(note);
        });
        result(result.exhibit(), result.output(), false);
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
        } else if (isBusyWriting()) {
            // Faults wait while one chooses how to go on.
            checking.written();
        } else {
            trouble(new Failure.DoesNotCompile(problems));
            arrange();
        }
    }

    private void noTrouble() {
        if (told.isPresent()) {
            told = Optional.empty();
            tell();
        }
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
            tell();
        }
        slot.mark(Marks.of(slot.text(), failure));
    }

    private void result(Exhibit shown, String printed, boolean current) {
        whole = shown;
        boolean brief = shown instanceof Exhibit.Words words && words.text().strip().length() <= SHORT && words.text().strip().indexOf('\n') < 0;
        slips.show(brief ? Exhibit.NOTHING : shown);
        note.setText(brief ? ((Exhibit.Words) shown).text().strip() : "");
        output.setText(printed.stripTrailing());
        wishes.drew(id, shown, current);
        arrange();
    }

    private void arrange() {
        List<Node> wanted = new ArrayList<>(List.of(folded.getText().isEmpty() ? lines : folded));
        if (!trouble.getChildren().isEmpty()) {
            wanted.add(trouble);
        }
        if (!output.getText().isEmpty()) {
            wanted.add(output);
        }
        if (!slips.getChildren().isEmpty()) {
            wanted.add(slips);
        }
        boolean beside = slot.roomBesideLastLine() >= note.getText().length() * 8 + 40;
        if (note.getText().isEmpty()) {
            lines.getChildren().setAll(slot);
        } else if (beside) {
            lines.getChildren().setAll(slot, note);
        } else {
            lines.getChildren().setAll(slot);
            wanted.add(note);
        }
        if (!wanted.equals(body.getChildren())) {
            body.getChildren().setAll(wanted);
        }
    }

    public CellState state() {
        return state;
    }

    public Exhibit exhibit() {
        return whole;
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
        int count = slot.text().split("\n", -1).length;
        folded.setText(fold ? slot.text().split("\n", 2)[0] + "   \u2026 " + count + (count == 1 ? " line" : " lines") + " folded away" : "");
        arrange();
    }

    @Override
    public int caretLine() {
        return slot.editor().map(CodeEditor::caretLine).orElse(1);
    }

    @Override
    public double caretTop() {
        return slot.lineTop(caretLine());
    }

    /** The text as it stands. */
    public String text() {
        return slot.text();
    }

    /** True while ways to go on are offered here, or a fault is not yet looked for. */
    public boolean isBusyWriting() {
        return suggesting.map(Suggesting::isOpen).orElse(false);
    }
}
