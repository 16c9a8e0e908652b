package org.calicograph.desk.cuts;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.CutList;

/**
 * The cutting lists of what hangs. Each is asked for once, of the process that drew it, and holds as long as the same hangs. Used on the
 * window's thread alone.
 */
public final class CutLists {

    private record Asked(Exhibit of, CompletableFuture<CutList> list) { }

    private final Function<String, CompletableFuture<CutList>> ask;
    private final Executor window;
    private final Map<String, Asked> asked = new HashMap<>();

    /**
     * @param ask    for the list of a passage, of whoever drew it
     * @param window the window's thread
     */
    public CutLists(Function<String, CompletableFuture<CutList>> ask, Executor window) {
        this.ask = ask;
        this.window = window;
    }

    /** The list of a passage, if it is here and this is still what the passage came to. */
    public Optional<CutList> of(String cell, Exhibit now) {
        return Optional.ofNullable(asked.get(cell)).filter(a -> a.of == now && a.list.isDone()).map(a -> a.list.join()).filter(list -> list.why().isEmpty());
    }

    /** Tells the list of what a passage came to: at once if it is here, else when it has been reckoned. */
    public void of(String cell, Exhibit now, Consumer<CutList> then) {
        Optional<CutList> here = of(cell, now);
        if (here.isPresent()) {
            then.accept(here.get());
            return;
        }
        Asked one = asked.compute(cell, (c, before) -> before != null && before.of == now ? before
                : new Asked(now, ask.apply(c).exceptionally(trouble -> CutList.none("There is no cutting list: " + trouble.getMessage()))));
        one.list.thenAcceptAsync(found -> {
            // Where there was none, it is asked for anew.
            if (!found.why().isEmpty()) {
                asked.remove(cell, one);
            }
            then.accept(found);
        }, window);
    }
}
