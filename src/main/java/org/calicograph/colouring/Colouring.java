package org.calicograph.colouring;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;

/**
 * A rule that gives each patch its fabric; for {@code patchwork.recoloured(...)}.
 *
 * <p>A rule depends on the patch alone, never on the order in which patches are asked for.
 */
@FunctionalInterface
public interface Colouring extends Function<Patch, Fabric> {

    /** Every patch as it is. */
    static Colouring asItIs() {
        return Patch::fabric;
    }

    /** A fabric for each role; patches of other roles stay as they are. */
    static Colouring byRole(Map<Role, Fabric> fabrics) {
        Map<Role, Fabric> kept = Map.copyOf(fabrics);
        return p -> kept.getOrDefault(p.role(), p.fabric());
    }

    /** One of the fabrics for each patch, at random: the seed and the patch's id decide. */
    static Colouring random(long seed, List<Fabric> fabrics) {
        List<Fabric> kept = some("random colouring", fabrics);
        return p -> kept.get((int) (Chance.of(seed, p.id()) * kept.size()));
    }

    /** At random within each role; patches of other roles stay as they are. */
    static Colouring randomByRole(long seed, Map<Role, List<Fabric>> fabrics) {
        fabrics.forEach((role, list) -> some("random colouring of '" + role + "'", list));
        Map<Role, List<Fabric>> kept = Map.copyOf(fabrics);
        return p -> {
            List<Fabric> list = kept.get(p.role());
            return list == null ? p.fabric() : list.get((int) (Chance.of(seed, p.id()) * list.size()));
        };
    }

    /** The fabrics in equal steps along a gradient. */
    static Colouring along(Gradient gradient, List<Fabric> fabrics) {
        return blended(gradient, fabrics, 0, 0);
    }

    /**
     * The fabrics along a gradient, mixed where they meet: the last of one and the first of the next are
     * scattered.
     *
     * @param blend how far the mixing reaches, in steps: 0 for clean borders, 1 for a whole step
     */
    static Colouring blended(Gradient gradient, List<Fabric> fabrics, double blend, long seed) {
        List<Fabric> kept = some("gradient", fabrics);
        if (!(blend >= 0 && blend <= kept.size())) {
            throw new IllegalArgumentException("a gradient of " + kept.size() + " fabrics can't blend over " + blend
                    + " steps; use 0 to " + kept.size());
        }
        return p -> {
            double step = gradient.at(p.shape().bounds().centre()) * kept.size();
            double moved = blend == 0 ? step : step + (Chance.of(seed, p.id()) - 0.5) * blend;
            return kept.get((int) Math.max(0, Math.min(kept.size() - 1, Math.floor(moved))));
        };
    }

    /** One fabric over all patches that lie with their middle in a region, whatever blocks they belong to. */
    static Colouring spread(Fabric fabric, Region over) {
        return p -> over.contains(p.shape().inside()) ? fabric : p.fabric();
    }

    /** One fabric over whole parts of an assembly, named by the beginnings of their ids, as {@code row2/3}. */
    static Colouring spread(Fabric fabric, Set<String> parts) {
        Set<String> kept = Set.copyOf(parts);
        return p -> kept.stream().anyMatch(part -> p.id().equals(part) || p.id().startsWith(part + "/")) ? fabric : p.fabric();
    }

    /** This rule for patches that pass the test; others stay as they are. */
    default Colouring where(Predicate<Patch> test) {
        return p -> test.test(p) ? apply(p) : p.fabric();
    }

    /** This rule for patches of the roles; others stay as they are. */
    default Colouring forRoles(Role... roles) {
        Set<Role> kept = Set.of(roles);
        return where(p -> kept.contains(p.role()));
    }

    /** This rule first, then the next on what it gave. */
    default Colouring then(Colouring next) {
        return p -> next.apply(p.in(apply(p)));
    }

    private static List<Fabric> some(String what, List<Fabric> fabrics) {
        if (fabrics.isEmpty()) {
            throw new IllegalArgumentException("the " + what + " has no fabrics to choose from; give it one or more");
        }
        return List.copyOf(fabrics);
    }
}
