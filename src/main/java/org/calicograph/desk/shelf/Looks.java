package org.calicograph.desk.shelf;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.image.Image;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.Thumbnail;
import org.calicograph.drawing.Picture;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Catalogue;

/**
 * What the routines of the library look like, each drawn when it is first asked for, by a kernel of its own,
 * and kept while the window is open. To be used on JavaFX's thread.
 */
public final class Looks {

    /** How large the small pictures are, in pixels. */
    public static final int SIDE = 96;

    /** A routine's picture, and the same small. */
    public record Look(Picture picture, Image small) { }

    private final Supplier<SessionOptions> options;
    private final Map<String, Optional<Look>> known = new HashMap<>();
    private final Map<String, List<Consumer<Optional<Look>>>> waiting = new HashMap<>();
    private Optional<Session> session = Optional.empty();
    private final Map<String, Trial> trials = new HashMap<>();
    private final List<CellSource> asked = new ArrayList<>();

    public Looks(Supplier<SessionOptions> options) {
        this.options = options;
    }

    /** Tells at once if the look is known, otherwise when it has been drawn; nothing for what gives no picture. */
    void of(Catalogue.Entry entry, Consumer<Optional<Look>> told) {
        String key = key(entry);
        if (known.containsKey(key)) {
            told.accept(known.get(key));
            return;
        }
        List<Consumer<Optional<Look>>> others = waiting.computeIfAbsent(key, k -> new ArrayList<>());
        others.add(told);
        if (others.size() == 1) {
            draw(new Trial(key, entry, 0));
        }
    }

    /** A source that was changed is another routine. */
    private static String key(Catalogue.Entry entry) {
        try {
            return entry.file() + " " + Files.getLastModifiedTime(Path.of(entry.file()));
        } catch (java.io.IOException e) {
            return entry.file();
        }
    }

    /** One call after another is tried until one gives a picture. */
    private record Trial(String key, Catalogue.Entry entry, int number) { }

    private void draw(Trial trial) {
        List<String> calls = Routines.looks(trial.entry());
        if (trial.number() >= calls.size()) {
            tell(trial.key(), Optional.empty());
            return;
        }
        String cell = trial.entry().name() + "-" + trial.number();
        trials.put(cell, trial);
        asked.add(new CellSource(cell, calls.get(trial.number())));
        if (session.isEmpty()) {
            session = Optional.of(Session.open(List.copyOf(asked), Map.of(), options.get(), new SessionListener() {
                @Override
                public void stands(String drawn, CellState state) {
                    if (state instanceof CellState.Done || state instanceof CellState.Failed) {
                        Platform.runLater(() -> drawn(drawn, state));
                    }
                }
            }));
        } else {
            session.get().arrange(List.copyOf(asked));
        }
        session.get().drawStale();
    }

    private void drawn(String cell, CellState state) {
        Trial trial = trials.remove(cell);
        if (trial != null) {
            Optional<Picture> picture = state instanceof CellState.Done d ? ExhibitPane.picture(d.exhibit()) : Optional.empty();
            picture.ifPresentOrElse(p -> Thumbnail.paint(p, SIDE, small -> tell(trial.key(), Optional.of(new Look(p, small)))),
                    () -> draw(new Trial(trial.key(), trial.entry(), trial.number() + 1)));
        }
    }

    private void tell(String key, Optional<Look> look) {
        known.put(key, look);
        Optional.ofNullable(waiting.remove(key)).ifPresent(all -> all.forEach(c -> c.accept(look)));
    }

    /** Ends the kernel; looks that are known stay. */
    public void close() {
        session.ifPresent(Session::close);
        session = Optional.empty();
        asked.clear();
        trials.clear();
        waiting.clear();
    }
}
