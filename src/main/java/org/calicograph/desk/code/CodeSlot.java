package org.calicograph.desk.code;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.fxmisc.richtext.model.StyleSpan;

/**
 * The place of a cell's code: light words that look like an editor, and the editor itself once it is
 * near enough to be used. Both have the same height, so that nothing jumps.
 */
public final class CodeSlot extends StackPane {

    private static final double PAD = 9;
    /** What an editor's lines need beyond their own height, so that the last isn't cut. */
    private static final double SLACK = 2;

    private String text;
    private final String name;
    private List<Marks.Mark> marks = List.of();
    private String sought = "";
    private Optional<CodeEditor> editor = Optional.empty();
    private Consumer<String> onEdit = t -> { };
    private Consumer<CodeEditor> onWake = e -> { };
    /** The height of an editor's line, learnt from the first one. Only JavaFX's thread touches it. */
    private static double editorLine;
    private double lineHeight;

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
        light();
        size();
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

    /** The editor, made now if there was none. */
    public CodeEditor wake() {
        if (editor.isEmpty()) {
            CodeEditor made = new CodeEditor(text);
            made.setAccessibleText("Code of cell " + name);
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
            getChildren().setAll(made);
            onWake.accept(made);
        }
        return editor.get();
    }

    private void learn(CodeEditor from, Double height) {
        if (height != null && height > 0 && Math.abs(height / from.getParagraphs().size() - editorLine) > 0.05) {
            editorLine = height / from.getParagraphs().size();
            requestLayout();
        }
    }

    private void light() {
        TextFlow flow = new TextFlow();
        // An editor doesn't wrap either.
        flow.setMinWidth(USE_PREF_SIZE);
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
        getChildren().setAll(flow);
    }

    /** Long lines are cut at the edge, and seen by moving the caret; they never widen the page. */
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

    private void size() {
        if (lineHeight == 0 && getScene() != null) {
            Text probe = new Text("Ag");
            StackPane holder = new StackPane(probe);
            holder.getStyleClass().add("code");
            probe.getStyleClass().add("code-word");
            getChildren().add(holder);
            holder.applyCss();
            lineHeight = probe.getLayoutBounds().getHeight();
            getChildren().remove(holder);
        }
        long lines = 1 + text.chars().filter(c -> c == '\n').count();
        double line = editorLine > 0 ? editorLine : lineHeight > 0 ? Math.ceil(lineHeight) + 1 : 18;
        double height = Math.ceil(lines * line) + 2 * PAD + SLACK;
        if (!getChildren().isEmpty() && getChildren().get(0) instanceof TextFlow flow && lineHeight > 0) {
            flow.setLineSpacing(Math.max(0, line - lineHeight));
        }
        if (getPrefHeight() != height) {
            setMinHeight(height);
            setPrefHeight(height);
            setMaxHeight(height);
        }
    }
}
