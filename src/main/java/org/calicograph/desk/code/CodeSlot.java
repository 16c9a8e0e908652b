package org.calicograph.desk.code;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.Pos;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.fxmisc.richtext.model.StyleSpan;

/**
 * The place of working lines: light words that look like an editor, and the editor itself once it is near enough
 * to be used. Both have the same height, so that nothing jumps. A line that is too long turns over to the next, with
 * a mark where it goes on.
 */
public final class CodeSlot extends StackPane {

    private static final double PAD = 7;
    private static final double SIDE = 14;
    /** What an editor's lines need beyond their own height, so that the last isn't cut. */
    private static final double SLACK = 2;
    /** What an editor leaves between the rows of one line. */
    private static final double BETWEEN = 1;

    private String text;
    private final String name;
    private List<Marks.Mark> marks = List.of();
    private String sought = "";
    private String help = "";
    private Optional<CodeEditor> editor = Optional.empty();
    private Consumer<String> onEdit = t -> { };
    private Consumer<CodeEditor> onWake = e -> { };
    /** The height of an editor's line, learnt from the first one. Only JavaFX's thread touches it. */
    private static double editorLine;
    /** Tells every slot that the line's height is another. */
    private static final ReadOnlyDoubleWrapper LEARNT = new ReadOnlyDoubleWrapper();
    private final ChangeListener<Number> relearn = (all, before, now) -> Platform.runLater(() -> {
        size();
        requestLayout();
    });
    private final Pane turns = new Pane();
    private double lineHeight;
    private double letter;
    private Font face = Font.getDefault();
    private int[] rows = {1};
    /** What lines that turn over need beyond the height of their rows. */
    private double leading;

    public CodeSlot(String name, String text) {
        this.name = name;
        this.text = text;
        getStyleClass().add("code-slot");
        setOnMousePressed(e -> {
            wake().requestFocus();
            e.consume();
        });
        Rectangle sight = new Rectangle();
        sight.widthProperty().bind(widthProperty());
        sight.heightProperty().bind(heightProperty());
        setClip(sight);
        turns.setManaged(false);
        turns.setMouseTransparent(true);
        LEARNT.addListener(new WeakChangeListener<>(relearn));
        light();
        size();
    }

    /** Letters have another size from now on; slots that are made anew learn it. */
    public static void lettersChange() {
        editorLine = 0;
        LEARNT.set(0);
    }

    public void onEdit(Consumer<String> listener) {
        onEdit = listener;
    }

    /** Told of the editor once, when it is made. */
    public void onWake(Consumer<CodeEditor> listener) {
        onWake = listener;
    }

    public boolean isAwake() {
        return editor.isPresent();
    }

    public Optional<CodeEditor> editor() {
        return editor;
    }

    public String text() {
        return text;
    }

    public void show(String other) {
        if (!other.equals(text)) {
            text = other;
            marks = List.of();
            editor.ifPresentOrElse(e -> {
                e.mark(List.of());
                e.show(other);
            }, this::light);
            size();
        }
    }

    public void mark(List<Marks.Mark> wrong) {
        marks = wrong;
        editor.ifPresentOrElse(e -> e.mark(wrong), this::light);
    }

    /** Marks where these words stand; none for no words. */
    public void seek(String words) {
        if (!words.equals(sought)) {
            sought = words;
            editor.ifPresentOrElse(e -> e.seek(words), this::light);
        }
    }

    /** Tells whoever listens how the lines stand. */
    public void help(String words) {
        help = words;
        editor.ifPresent(e -> e.setAccessibleHelp(words));
    }

    /** The editor, made now if there was none. */
    public CodeEditor wake() {
        if (editor.isEmpty()) {
            CodeEditor made = new CodeEditor(text);
            made.setAccessibleHelp(help);
            made.setId("code-" + name);
            made.mark(marks);
            made.seek(sought);
            made.onEdit(now -> {
                text = now;
                marks = made.marks();
                size();
                onEdit.accept(now);
            });
            made.moveTo(0);
            // Its size follows from the number of lines alone: a letter never lays the page out anew.
            made.setManaged(false);
            made.totalHeightEstimateProperty().addListener((all, before, now) -> learn(made, now));
            editor = Optional.of(made);
            getChildren().setAll(made, turns);
            onWake.accept(made);
        }
        return editor.get();
    }

    private void learn(CodeEditor from, Double height) {
        long count = 0;
        for (int each : rows) {
            count += each;
        }
        if (height != null && height > 0 && count > 0 && count == rows.length && Math.abs(height / count - editorLine) > 0.05) {
            editorLine = height / count;
            LEARNT.set(editorLine);
        }
    }

    private void light() {
        TextFlow flow = new TextFlow();
        setAlignment(Pos.TOP_LEFT);
        flow.setLineSpacing(Math.max(0, editorLine - lineHeight));
        flow.getStyleClass().addAll("code", "code-light");
        int at = 0;
        for (StyleSpan<Collection<String>> span : Colouring.of(text, marks, -1, sought)) {
            Text part = new Text(text.substring(at, at + span.getLength()));
            part.getStyleClass().add("code-word");
            part.getStyleClass().addAll(span.getStyle());
            flow.getChildren().add(part);
            at += span.getLength();
        }
        getChildren().setAll(flow, turns);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 80;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 400;
    }

    @Override
    protected void layoutChildren() {
        size();
        super.layoutChildren();
        editor.ifPresent(e -> e.resizeRelocate(snappedLeftInset(), snappedTopInset(),
                getWidth() - snappedLeftInset() - snappedRightInset(), getHeight() - snappedTopInset() - snappedBottomInset()));
    }

    private double line() {
        return editorLine > 0 ? editorLine : lineHeight > 0 ? Math.ceil(lineHeight) + 1 : 18;
    }

    /** How far below the top a line of the text begins, in pixels; lines count from 1. */
    public double lineTop(int number) {
        int above = 0;
        for (int i = 0; i < Math.min(number - 1, rows.length); i++) {
            above += rows[i];
        }
        return PAD + above * line();
    }

    /** What is free to the right of the last line, in pixels. */
    public double roomBesideLastLine() {
        String last = text.substring(text.lastIndexOf('\n') + 1);
        return rows[rows.length - 1] > 1 ? 0 : getWidth() - 2 * SIDE - last.length() * letter;
    }

    private void size() {
        if (lineHeight == 0 && getScene() != null) {
            Text probe = new Text("Ag");
            StackPane holder = new StackPane(probe);
            holder.getStyleClass().add("code");
            probe.getStyleClass().add("code-word");
            getChildren().add(holder);
            holder.applyCss();
            lineHeight = probe.getLayoutBounds().getHeight();
            face = probe.getFont();
            probe.setText("mmmmmmmmmm");
            letter = probe.getLayoutBounds().getWidth() / 10;
            getChildren().remove(holder);
        }
        rows = rows();
        double line = line();
        int count = 0;
        for (int each : rows) {
            count += each;
        }
        double height = Math.ceil(count * line + leading) + 2 * PAD + SLACK;
        if (!getChildren().isEmpty() && getChildren().get(0) instanceof TextFlow flow && lineHeight > 0) {
            flow.setLineSpacing(Math.max(0, line - lineHeight));
        }
        markTurns();
        if (getPrefHeight() != height) {
            setMinHeight(height);
            setPrefHeight(height);
            setMaxHeight(height);
        }
    }

    /** How many rows each line of the text takes at the present width; only long ones are measured. */
    private int[] rows() {
        String[] lines = text.split("\n", -1);
        int[] each = new int[lines.length];
        double room = getWidth() - 2 * SIDE;
        Arrays.fill(each, 1);
        leading = 0;
        for (int i = 0; i < lines.length && letter > 0 && room > 40; i++) {
            if (lines[i].length() * letter > room - 1) {
                // In the same pieces as it is shown in: a line may turn over between them where it would not within one.
                TextFlow probe = new TextFlow();
                probe.setLineSpacing(BETWEEN);
                int at = 0;
                for (StyleSpan<Collection<String>> span : Colouring.of(lines[i], List.of(), -1, "")) {
                    Text part = new Text(lines[i].substring(at, at + span.getLength()));
                    part.setFont(face);
                    probe.getChildren().add(part);
                    at += span.getLength();
                }
                each[i] = Math.max(1, (int) Math.round(probe.prefHeight(room) / (lineHeight + BETWEEN)));
                leading += (each[i] - 1) * BETWEEN;
            }
        }
        return each;
    }

    /** A mark in the edge before each row that goes on with the line above it. */
    private void markTurns() {
        turns.getChildren().clear();
        int row = 0;
        for (int each : rows) {
            for (int k = 1; k < each; k++) {
                Text mark = new Text("\u21b3");
                mark.getStyleClass().add("turn-mark");
                mark.setX(2);
                mark.setY(PAD + (row + k) * line() + line() * 0.75);
                turns.getChildren().add(mark);
            }
            row += each;
        }
    }
}
