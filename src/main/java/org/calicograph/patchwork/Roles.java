package org.calicograph.patchwork;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.NearestNames;
import org.calicograph.fabric.Role;

/** Which roles a patchwork has, and what to say where one is asked for that it doesn't have. */
public final class Roles {

    /** Roles that one map of fabrics for many blocks may name although a block has no patch of them. */
    private static final Set<Role> USUAL = Set.of(Role.BACKGROUND, Role.LIGHT, Role.MEDIUM, Role.DARK, Role.ACCENT);

    private Roles() { }

    /**
     * One map may serve many blocks, so that a usual role may be missing here, but some role of the map has to be here,
     * and one that is not usual.
     *
     * @param what    what they are looked for in, as it is told
     * @param present the roles that it has
     * @throws DesignException naming the role that is not there, and those that are
     */
    public static void require(String what, Set<Role> present, Map<Role, Fabric> fabrics) {
        List<Role> missing = fabrics.keySet().stream().filter(r -> !present.contains(r)).sorted((a, b) -> a.name().compareTo(b.name())).toList();
        List<Role> strange = missing.stream().filter(r -> !USUAL.contains(r)).toList();
        if (!strange.isEmpty()) {
            throw missing(what, present, strange.get(0));
        }
        if (!fabrics.isEmpty() && missing.size() == fabrics.size()) {
            throw missing(what, present, missing.get(0));
        }
    }

    private static DesignException missing(String what, Collection<Role> present, Role role) {
        List<String> names = present.stream().map(Role::name).sorted().toList();
        return new DesignException("'" + what + "' has no patch whose role is '" + role.name() + "'; it has "
                + names.stream().map(n -> "'" + n + "'").collect(Collectors.joining(", ")) + NearestNames.likely(role.name(), names));
    }
}
