package org.calicograph.session;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Painted;
import org.calicograph.wire.SharedPixels;

/** The easels of the dial that is being turned, the slate they stand on, and the cells of which only a sketch is known. All but fetching on the conductor's thread. */
final class Sketches {

    /** How long a dial rests before exhibits are asked for. */
    static final Duration REST = Duration.ofMillis(120);

    private List<PixelFrame> easels = List.of();
    private volatile Optional<SharedPixels> slate = Optional.empty();
    private final Set<String> owed = new LinkedHashSet<>();
    private long moved;

    /** A dial has been turned. */
    void moved(List<PixelFrame> now) {
        easels = now;
        moved = System.nanoTime();
    }

    /** A turn has ended, and left these cells sketched. */
    void turned(List<String> cells) {
        owed.addAll(cells);
        moved = System.nanoTime();
    }

    /** The easels for the next turn; none where no slate can be had. */
    List<PixelFrame> easels() {
        if (!easels.isEmpty() && (slate.isEmpty() || !slate.get().holds(easels))) {
            try {
                slate = Optional.of(SharedPixels.with(easels));
            } catch (IOException e) {
                easels = List.of(); // The pictures come as values then, a little later.
            }
        }
        return easels;
    }

    String slate() {
        return slate.map(s -> s.path().toString()).orElse("");
    }

    /** Fetches what has been painted; on the kernel's thread, so before the kernel can be asked to paint again. */
    Optional<Sketch> fetch(FromKernel.Sketched said) {
        Optional<SharedPixels> from = slate;
        List<Sketch.Painting> pictures = new ArrayList<>();
        for (Painted painted : said.pictures()) {
            if (from.isEmpty() || !from.get().holds(painted)) {
                return Optional.empty();
            }
            pictures.add(new Sketch.Painting(painted.part(), painted.width(), painted.height(), from.get().read(painted), painted.bounds()));
        }
        return Optional.of(new Sketch(said.rest(), pictures, List.of(said.began(), said.ran(), said.drawn(), System.nanoTime())));
    }

    Set<String> owed() {
        return owed;
    }

    /** True if exhibits are owed and the dial has rested long enough. */
    boolean areDue() {
        return !owed.isEmpty() && System.nanoTime() - moved >= REST.toNanos();
    }

    /** The kernel is gone, and what it had opened with it. */
    void lost() {
        slate = Optional.empty();
        owed.clear();
    }
}
