package org.calicograph.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.session.CellState;
import org.calicograph.session.KernelState;
import org.calicograph.session.Sketch;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.Dial;

/** Brings what the session tells to the panes that show it. */
final class SessionReports implements Worktable.Hearer {

    private final DeskWindow window;
    private final Map<String, String> declared = new HashMap<>();

    SessionReports(DeskWindow window) {
        this.window = window;
    }

    /** Another notebook is laid out. */
    void forget() {
        declared.clear();
    }

    /** The value that a dial has by its declaration, for when every turn of it is undone. */
    Optional<String> declared(String dial) {
        return Optional.ofNullable(declared.get(dial));
    }

    @Override
    public void stands(String cell, CellState state) {
        window.column().code(cell).ifPresent(p -> p.show(state));
        window.lesson().ifPresent(p -> p.stands(cell));
        window.drawing().settling().stands(cell, state);
        window.wall().dials(window.worktable().dials(), window.worktable().needs());
        window.drawing().tell();
    }

    @Override
    public void sketched(String cell, Sketch sketch) {
        window.column().madeCode(cell).ifPresent(p -> p.sketch(sketch));
    }

    @Override
    public void dials(List<Dial> dials) {
        dials.forEach(d -> {
            if (!window.opened().notebook().dials().containsKey(d.name())) {
                declared.put(d.name(), d.text());
            }
        });
        window.wall().dials(dials, window.worktable().needs());
    }

    @Override
    public void kernel(KernelState state) {
        window.status().stands(state);
        if (state instanceof KernelState.Gone gone) {
            window.notices().say("kernel", (gone.asked() ? "Drawing was ended, as it was asked to" : "Drawing has ended by itself (" + gone.why().replace("kernel", "drawing") + ")")
                    + ". Nothing of what you wrote is lost, and what was drawn stays in sight.",
                    Map.of("Start again", () -> window.worktable().restart()));
        } else if (state instanceof KernelState.Ready ready) {
            window.notices().hush("kernel");
            window.crafting().read(ready.broken());
            if (ready.broken().isEmpty()) {
                window.notices().hush("stdlib");
            } else {
                Catalogue.Broken broken = ready.broken().get(0);
                window.notices().say("stdlib", "A routine in " + broken.file() + " can't be used, line " + broken.problem().from().line() + ": "
                        + broken.problem().message());
            }
        }
    }
}
