package org.calicograph.desk.swatches;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.PartFinder;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;

/** Tries the words of a book until a patch comes out in the cloth whose swatch was dropped on it. */
public final class SwatchTrial {

    /** So many ways are tried, and no more. */
    private static final int MOST = 60;

    /**
     * What came of it.
     *
     * @param texts the passages that become others, by their ids; empty if no way was found
     * @param words for the foot of the desk: what was written, or why nothing was
     */
    public record Outcome(Map<String, String> texts, String words) { }

    private final Session session;
    private final Dropped dropped;
    private final Map<String, String> before = new LinkedHashMap<>();
    private final List<ClothWords.Attempt> attempts;
    /** How many patches of the picture were of the swatch's cloth before. */
    private int had;

    private SwatchTrial(Session session, Dropped dropped, List<CellSource> cells, List<ClothWords.Attempt> attempts) {
        this.session = session;
        this.dropped = dropped;
        this.attempts = attempts;
        cells.forEach(c -> before.put(c.id(), c.text()));
    }

    /**
     * Finds the change; the kernel it is tried in is gone when this is done.
     *
     * @param cells all working lines of the book
     * @param needs for each passage those that it needs itself
     * @param dials the values of the dials
     */
    public static CompletableFuture<Outcome> find(Dropped dropped, List<CellSource> cells, Map<String, List<String>> needs, Map<String, String> dials, SessionOptions options) {
        List<CellSource> near = near(dropped.cell(), cells, needs);
        Optional<String> from = ClothWords.variable(cells, dropped.cloth());
        Optional<String> to = ClothWords.variable(cells, dropped.swatch());
        if (dropped.cloth().equals(dropped.swatch())) {
            return nothing("The patch is of " + dropped.cloth() + " already.");
        }
        if (from.isEmpty() || to.isEmpty()) {
            String cloth = from.isEmpty() ? dropped.cloth() : dropped.swatch();
            return nothing("No working line gives '" + cloth + "' a name, so it can't be written there; add a line such as var "
                    + cloth.toLowerCase(java.util.Locale.ROOT).replaceAll("\\W+", "") + " = Fabric.of(\"" + cloth + "\", \"#888888\"); and use it in the block.");
        }
        List<ClothWords.Attempt> attempts = ClothWords.attempts(near, from.get(), to.get());
        List<CellSource> wanted = new ArrayList<>(near);
        // The cloth that comes in may be declared in a passage that nothing here needed yet.
        cells.stream().filter(c -> !near.contains(c) && ClothWords.variable(List.of(c), dropped.swatch()).isPresent()).forEach(wanted::add);
        Session session = Session.open(inOrder(cells, wanted), dials, options, SessionListener.NONE);
        SwatchTrial trial = new SwatchTrial(session, dropped, wanted, attempts.subList(0, Math.min(MOST, attempts.size())));
        return session.drawAll().thenCompose(done -> {
            trial.had = trial.ofSwatch();
            return trial.next(0);
        }).whenComplete((done, trouble) -> session.close());
    }

    private static CompletableFuture<Outcome> nothing(String why) {
        return CompletableFuture.completedFuture(new Outcome(Map.of(), why));
    }

    /** The passage itself, then those that it needs, then those that these need. */
    private static List<CellSource> near(String cell, List<CellSource> cells, Map<String, List<String>> needs) {
        Set<String> found = new LinkedHashSet<>(List.of(cell));
        List<String> ring = List.of(cell);
        while (!ring.isEmpty()) {
            ring = ring.stream().flatMap(c -> needs.getOrDefault(c, List.of()).stream()).filter(found::add).toList();
        }
        return found.stream().flatMap(id -> cells.stream().filter(c -> c.id().equals(id))).toList();
    }

    private static List<CellSource> inOrder(List<CellSource> all, List<CellSource> wanted) {
        return all.stream().filter(wanted::contains).toList();
    }

    private CompletableFuture<Outcome> next(int number) {
        if (number == attempts.size()) {
            return nothing("No word of the book lays " + dropped.cloth() + " at this patch by itself; write " + dropped.swatch() + " where the block is made.");
        }
        ClothWords.Attempt attempt = attempts.get(number);
        attempt.texts().forEach(session::edit);
        return session.drawStale().thenCompose(done -> {
            if (suits()) {
                int patches = ofSwatch() - had;
                String words = dropped.swatch() + " in place of " + dropped.cloth() + " on " + patches + (patches == 1 ? " patch" : " patches") + (attempt.words() == 1 ? "" : ", written in " + attempt.words() + " places") + "; undo takes it back";
                return CompletableFuture.completedFuture(new Outcome(attempt.texts(), words));
            }
            attempt.texts().keySet().forEach(id -> session.edit(id, before.get(id)));
            return next(number + 1);
        });
    }

    private boolean suits() {
        return hanging().flatMap(p -> PartFinder.titleAt(p, dropped.place())).map(this::isOfSwatch).orElse(false);
    }

    private boolean isOfSwatch(String title) {
        return title.startsWith(dropped.swatch() + ", ");
    }

    private int ofSwatch() {
        return hanging().map(p -> PartFinder.count(p, this::isOfSwatch)).orElse(0);
    }

    /** The picture that the swatch was dropped on, as it is drawn now. */
    private Optional<Picture> hanging() {
        if (!(session.state(dropped.cell()) instanceof CellState.Done done)) {
            return Optional.empty();
        }
        List<Picture> pictures = ExhibitPane.flat(done.exhibit()).stream().filter(e -> e instanceof Exhibit.Drawn).map(e -> ((Exhibit.Drawn) e).picture()).toList();
        return pictures.stream().skip(dropped.picture()).findFirst();
    }
}
