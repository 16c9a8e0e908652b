package org.calicograph.seams;

import java.util.ArrayList;
import java.util.List;

/**
 * A unit split into what one foundation each can do: patches sewn on one after another, each by one
 * straight seam along the edge of what is there.
 */
public final class Sections {

    private Sections() { }

    /**
     * Patches in the order of sewing onto one foundation.
     *
     * @param patches numbered from 1 in this order
     */
    public record Section(List<Unit.Single> patches) {
        public Section {
            patches = List.copyOf(patches);
        }
    }

    /**
     * The sections, those that are sewn together first standing first.
     *
     * @throws IllegalArgumentException if a seam is curved, set in or partial: no foundation does that
     */
    public static List<Section> of(Unit unit) {
        for (Unit.Sewn s : unit.steps()) {
            if (s.kind() != SeamKind.STRAIGHT) {
                throw new IllegalArgumentException("a foundation can't hold a " + s.kind()
                        + "; piece this block without one, or redraft it with straight seams from edge to edge");
            }
        }
        List<Section> done = new ArrayList<>();
        done.add(new Section(chain(unit, done)));
        return List.copyOf(done);
    }

    /** The longest run for one foundation; what can't be in it is added to the finished sections. */
    private static List<Unit.Single> chain(Unit unit, List<Section> done) {
        if (unit instanceof Unit.Single single) {
            return List.of(single);
        }
        List<Unit> parts = ((Unit.Sewn) unit).parts();
        int core = 0;
        for (int i = 1; i < parts.size(); i++) {
            core = parts.get(i).singles().size() > parts.get(core).singles().size() ? i : core;
        }
        List<Unit.Single> run = new ArrayList<>(chain(parts.get(core), done));
        // Outwards from the core on either side, as far as the parts are patches.
        int right = core + 1;
        while (right < parts.size() && parts.get(right) instanceof Unit.Single s) {
            run.add(s);
            right++;
        }
        int left = core - 1;
        while (left >= 0 && parts.get(left) instanceof Unit.Single s) {
            run.add(s);
            left--;
        }
        for (int i = 0; i < parts.size(); i++) {
            if (i <= left || i >= right) {
                done.add(new Section(chain(parts.get(i), done)));
            }
        }
        return run;
    }
}
