package org.calicograph.desk.cells;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import org.calicograph.wire.Problem;

/** Asks, after each pause in the writing of a cell, what the compiler will object to. */
final class Checking {

    private static final Duration PAUSE = Duration.millis(400);

    private final String cell;
    private final Advice advice;
    private final Supplier<String> text;
    private final Consumer<List<Problem>> found;
    private final PauseTransition pause = new PauseTransition(PAUSE);
    private long asked;

    /** @param found told the problems of the text as it stands; none once it is mended */
    Checking(String cell, Advice advice, Supplier<String> text, Consumer<List<Problem>> found) {
        this.cell = cell;
        this.advice = advice;
        this.text = text;
        this.found = found;
        pause.setOnFinished(e -> ask());
    }

    /** The text is another now. */
    void written() {
        asked++;
        pause.playFromStart();
    }

    /** What the cell came to says it better. */
    void stop() {
        asked++;
        pause.stop();
    }

    private void ask() {
        long number = ++asked;
        advice.check(cell, text.get()).thenAccept(problems -> Platform.runLater(() -> {
            if (number == asked) {
                found.accept(problems);
            }
        }));
    }
}
