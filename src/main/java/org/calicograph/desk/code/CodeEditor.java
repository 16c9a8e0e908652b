package org.calicograph.desk.code;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.event.Event;
import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import org.calicograph.desk.spoken.Name;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.TwoDimensional;
import org.fxmisc.richtext.util.UndoUtils;

/** The editor of working lines. Long lines are wrapped. Enter on two empty lines at the end leaves it for a new passage. It has no undo of its own, since undo goes across the whole notebook. */
public final class CodeEditor extends CodeArea {

    private Consumer<String> onEdit = text -> { };
    private List<Marks.Mark> marks = List.of();
    private String sought = "";
    private boolean quiet;
    private Consumer<KeyEvent> firstKeys = event -> { };
    private final Label name = Name.apart("Working lines");
    private Runnable onLeave = () -> { };

    public CodeEditor(String text) {
        getStyleClass().addAll("code", "code-editor");
        setUndoManager(UndoUtils.noOpUndoManager());
        setWrapText(true);
        setLine(text);
        textProperty().addListener((all, before, now) -> edited(before, now));
        caretPositionProperty().addListener((all, before, now) -> colour());
        focusedProperty().addListener((all, before, now) -> colour());
        addEventFilter(ScrollEvent.SCROLL, this::passOn);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        colour();
        setAccessibleRole(AccessibleRole.TEXT_AREA);
        name.setLabelFor(this);
        selectionProperty().addListener((all, before, now) -> {
            notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTION_START);
            notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTION_END);
        });
    }

    /** What listeners are told: the lines as any area of text tells them, with their name apart. */
    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        switch (attribute) {
            case TEXT:
                return getText();
            case EDITABLE:
                return isEditable();
            case LABELED_BY:
                return name;
            case SELECTION_START:
                return getSelection().getStart();
            case SELECTION_END:
                return getSelection().getEnd();
            case CARET_OFFSET:
                return getCaretPosition();
            case LINE_FOR_OFFSET:
                return offsetToPosition((Integer) parameters[0], TwoDimensional.Bias.Forward).getMajor();
            case LINE_START:
                return getAbsolutePosition((Integer) parameters[0], 0);
            case LINE_END:
                return getAbsolutePosition((Integer) parameters[0], getParagraphLength((Integer) parameters[0]));
            case CHILDREN:
                return FXCollections.observableArrayList();
            default:
                return super.queryAccessibleAttribute(attribute, parameters);
        }
    }

    /** What a listener can do without keys: put the caret or a selection somewhere. */
    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.SET_TEXT_SELECTION && parameters.length == 2) {
            selectRange((Integer) parameters[0], (Integer) parameters[1]);
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }

    /** Lets somebody else see every key before the editor does; a key that it consumes is done with. */
    public void keysFirst(Consumer<KeyEvent> taker) {
        firstKeys = taker;
    }

    /** Told when two empty lines at the end ask for a new passage; they are taken away first. */
    public void onLeave(Runnable listener) {
        onLeave = listener;
    }

    public void onEdit(Consumer<String> listener) {
        onEdit = listener;
    }

    /** Shows another text without telling; the caret stays as near as it can. */
    public void show(String text) {
        if (!text.equals(getText())) {
            int caret = getCaretPosition();
            quiet = true;
            setLine(text);
            quiet = false;
            moveTo(Math.min(caret, text.length()));
            colour();
        }
    }

    public void mark(List<Marks.Mark> wrong) {
        marks = wrong;
        colour();
    }

    /** Marks where these words stand. */
    void seek(String words) {
        sought = words;
        colour();
    }

    List<Marks.Mark> marks() {
        return marks;
    }

    /** The line that the caret is on, from 1. */
    public int caretLine() {
        return getCurrentParagraph() + 1;
    }

    /** Where the caret is on the screen: from the left, its foot and its head; the editor's corner if it is out of sight. */
    public double[] caretOnScreen() {
        int caret = getCaretPosition();
        Optional<Bounds> letter = getCaretBounds();
        if (letter.isEmpty() && caret > 0) {
            letter = getCharacterBoundsOnScreen(caret - 1, caret).map(b -> new BoundingBox(b.getMaxX(), b.getMinY(), 0, b.getHeight()));
        }
        return letter.map(b -> new double[] {b.getMinX(), b.getMaxY(), b.getMinY()}).orElseGet(() -> {
            Bounds own = localToScreen(getBoundsInLocal());
            return new double[] {own.getMinX() + 20, own.getMinY() + 24, own.getMinY()};
        });
    }

    private void setLine(String text) {
        replaceText(0, getLength(), text);
    }

    private void edited(String before, String text) {
        if (!quiet) {
            marks = Marks.moved(marks, before, text);
            colour();
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
            onEdit.accept(text);
        }
    }

    private void colour() {
        String text = getText();
        StyleSpans<Collection<String>> spans = Colouring.of(text, marks, isFocused() ? getCaretPosition() : -1, sought);
        if (!text.isEmpty() && !getStyleSpans(0, text.length()).equals(spans)) {
            setStyleSpans(0, spans);
        }
    }

    /** The page scrolls, not the cell: its height is that of its text. */
    private void passOn(ScrollEvent event) {
        if (getParent() != null && Math.abs(event.getDeltaY()) >= Math.abs(event.getDeltaX())) {
            event.consume();
            Event.fireEvent(getParent(), event.copyFor(getParent(), getParent()));
        }
    }

    private void pressed(KeyEvent event) {
        firstKeys.accept(event);
        if (event.isConsumed() || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        if (event.getCode() == KeyCode.TAB && !event.isShiftDown() && !getText().isBlank()) {
            replaceSelection(Indent.STEP);
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && !event.isShiftDown() && getCaretPosition() == getLength() && getText().matches("(?s).*\\S.*\\n[ \\t]*\\n[ \\t]*")) {
            int end = getText().stripTrailing().length();
            replaceText(end, getLength(), "");
            event.consume();
            onLeave.run();
        } else if (event.getCode() == KeyCode.ENTER && !event.isShiftDown()) {
            replaceSelection(Indent.breakAt(getText(), getSelection().getStart()));
            requestFollowCaret();
            event.consume();
        }
    }
}
