package org.calicograph.desk.dials;

import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.calicograph.desk.spoken.Name;
import org.calicograph.desk.spoken.StepSlider;
import org.calicograph.wire.Dial;

/**
 * One dial: a name, a value to type and a slider to drag; a box to tick for a switch, a list for a choice.
 * Up and down in the value go a notch on, with Shift ten.
 */
public final class DialControl extends VBox {

    private final BiConsumer<String, String> turn;
    private final Label refusal = new Label();
    private final TextField value = new TextField();
    private final StepSlider slider = new StepSlider();
    private final ComboBox<String> choice = new ComboBox<>();
    private final CheckBox box = new CheckBox();
    private final Label exact = new Label();
    private final Label name = new Label();
    private Dial dial;
    private Writing writing;
    private boolean quiet;
    /** True while the value is to be found by whoever writes it: it is not shown. */
    private boolean blank;

    /** @param turn told the dial's name and the value wanted, as {@link Dial} writes it */
    public DialControl(Dial dial, Writing writing, BiConsumer<String, String> turn) {
        super(2);
        this.dial = dial;
        this.writing = writing;
        this.turn = turn;
        getStyleClass().add("dial");
        refusal.getStyleClass().add("dial-refusal");
        refusal.setWrapText(true);
        refusal.setMinHeight(USE_PREF_SIZE);
        exact.getStyleClass().add("dial-exact");
        build();
        show(dial, writing);
    }

    /** Shows no value until somebody writes one: it is an answer. */
    public void blank() {
        blank = true;
        value.clear();
        slider.setVisible(false);
        slider.setManaged(false);
    }

    /** The dial's name, by which a hand can take it away. */
    public Label handle() {
        return name;
    }

    public Dial dial() {
        return dial;
    }

    /** True if the other dial can be shown here: it has the same name and the same kind of values. */
    public boolean suits(Dial other) {
        return other.name().equals(dial.name()) && other.getClass() == dial.getClass();
    }

    private void build() {
        name.setText(dial.name());
        name.setId("handle-" + dial.name());
        name.getStyleClass().add("dial-name");
        if (dial instanceof Dial.Switch) {
            box.setAccessibleText(dial.name());
            box.setId("dial-" + dial.name());
            box.setText("on");
            box.selectedProperty().addListener((all, before, on) -> want(Boolean.toString(on)));
            getChildren().add(row(name, box));
        } else if (dial instanceof Dial.Choice) {
            Name.by(choice, name);
            choice.setId("dial-" + dial.name());
            choice.setMaxWidth(Double.MAX_VALUE);
            choice.valueProperty().addListener((all, before, now) -> {
                if (now != null) {
                    want(now);
                }
            });
            getChildren().addAll(name, choice);
        } else {
            Name.by(value, name);
            value.setId("dial-" + dial.name());
            value.setPrefColumnCount(7);
            value.setAlignment(Pos.CENTER_RIGHT);
            value.setOnAction(e -> typed());
            value.focusedProperty().addListener((all, before, now) -> {
                if (!now) {
                    typed();
                }
            });
            value.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
            slider.setId("slider-" + dial.name());
            slider.valueProperty().addListener((all, before, now) -> slid(now.doubleValue()));
            getChildren().addAll(row(name, value), slider);
        }
    }

    private static HBox row(Label name, Node control) {
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(8, name, control);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** The dial as it now is; what is being typed or dragged is left alone. */
    public void show(Dial next, Writing written) {
        boolean rewritten = !written.equals(writing);
        dial = next;
        writing = written;
        quiet = true;
        Notches notches = Notches.of(next);
        if (next instanceof Dial.Switch s) {
            box.setSelected(s.on());
        } else if (next instanceof Dial.Choice c) {
            if (!choice.getItems().equals(c.options())) {
                choice.getItems().setAll(c.options());
            }
            choice.setValue(next.text());
        } else {
            slider.setMin(0);
            slider.setMax(notches.last());
            slider.setBlockIncrement(1);
            slider.setMajorTickUnit(Math.max(1, notches.last()));
            if (!slider.isValueChanging() && !slider.isPressed()) {
                slider.setValue(notches.position());
            }
            if (blank && value.getText().isEmpty()) {
                quiet = false;
                return;
            }
            if (!value.isFocused() || refusal.getText().isEmpty() || rewritten) {
                value.setText(writing.value(next));
            }
            value.setAccessibleHelp(writing.range(next));
            slider.setAccessibleText(dial.name() + ", " + writing.value(next));
            slider.setAccessibleHelp(writing.range(next));
            slider.telling(step -> notches.number(step));
            beneath(exact, writing.exact(next), getChildren().indexOf(slider));
        }
        quiet = false;
    }

    private void slid(double position) {
        if (!quiet) {
            want(Notches.of(dial).text((int) Math.rint(position)));
        }
    }

    private void typed() {
        if (blank && value.getText().isBlank()) {
            return;
        }
        if (blank || !value.getText().equals(writing.value(dial))) {
            want(writing.read(dial, value.getText()));
        }
    }

    private void key(KeyEvent event) {
        int steps = event.getCode() == KeyCode.UP ? 1 : event.getCode() == KeyCode.DOWN ? -1 : 0;
        if (steps != 0 && !event.isShortcutDown() && !event.isAltDown()) {
            want(Notches.of(dial).moved(event.isShiftDown() ? 10 * steps : steps));
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && !value.getText().equals(writing.value(dial))) {
            refuse("");
            value.setText(writing.value(dial));
            event.consume();
        }
    }

    /** Asks for a value if the dial can take it, and shows it at once; says why where it can't. */
    private void want(String text) {
        if (quiet) {
            return;
        }
        try {
            Dial turned = writing.turned(dial, text);
            boolean other = blank || !turned.text().equals(dial.text());
            blank = false;
            refuse("");
            show(turned, writing);
            if (other) {
                turn.accept(turned.name(), turned.text());
            }
        } catch (IllegalArgumentException e) {
            refuse(e.getMessage());
        }
    }

    private void refuse(String why) {
        beneath(refusal, why, getChildren().size());
    }

    /** Words that are there only when there is something to say. */
    private void beneath(Label label, String words, int place) {
        label.setText(words);
        if (words.isEmpty()) {
            getChildren().remove(label);
        } else if (!getChildren().contains(label)) {
            getChildren().add(place, label);
        }
    }
}
