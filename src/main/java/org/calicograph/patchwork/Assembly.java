package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;

/** A patchwork put together from other patchwork, each part in its place. */
public final class Assembly implements Patchwork {

    private final String name;
    private final Region outline;
    private final List<Placed> parts;

    private Assembly(String name, Region outline, List<Placed> parts) {
        this.name = name;
        this.outline = outline;
        this.parts = List.copyOf(parts);
    }

    /**
     * @throws DesignException if two parts share an id, or the parts leave a gap in the outline, overlap
     *     or stick out by more than {@link Cover#TOLERANCE}
     */
    public static Assembly of(String name, Region outline, List<Placed> parts) {
        Set<String> ids = new HashSet<>();
        for (Placed part : parts) {
            if (!ids.add(part.id())) {
                throw new DesignException("'" + name + "' has two parts with the id '" + part.id() + "'; name them apart");
            }
        }
        Cover.check("'" + name + "'", outline,
                parts.stream().map(p -> new Cover.Part(p.id() + " ('" + p.work().name() + "')", p.outline())).toList());
        return new Assembly(name, outline, parts).atOrigin();
    }

    static void requireEven(String name, Transform t) {
        if (!t.keepsCircles() || t.determinant() == 0) {
            throw new DesignException("'" + name + "' can't be stretched more one way than the other; scale it evenly");
        }
    }

    private Assembly atOrigin() {
        Box box = outline.bounds();
        return Math.abs(box.left()) < 1e-9 && Math.abs(box.top()) < 1e-9 ? this
                : moved(Transform.move(-box.left(), -box.top()));
    }

    private Assembly moved(Transform t) {
        return new Assembly(name, outline.transformed(t),
                parts.stream().map(p -> p.moved(t)).toList());
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Region outline() {
        return outline;
    }

    /** The parts, each with its place. */
    public List<Placed> parts() {
        return parts;
    }

    @Override
    public List<Patch> patches() {
        List<Patch> all = new ArrayList<>(patchCount());
        collect("", Transform.IDENTITY, all);
        return List.copyOf(all);
    }

    private void collect(String prefix, Transform t, List<Patch> into) {
        for (Placed part : parts) {
            String id = prefix + part.id() + "/";
            Transform place = part.place().then(t);
            if (part.work() instanceof Assembly inner) {
                inner.collect(id, place, into);
            } else {
                for (Patch p : part.work().patches()) {
                    into.add(new Patch(id + p.id(), p.role(), p.fabric(), p.shape().transformed(place)));
                }
            }
        }
    }

    @Override
    public int patchCount() {
        return parts.stream().mapToInt(p -> p.work().patchCount()).sum();
    }

    @Override
    public Assembly transformed(Transform t) {
        requireEven(name, t);
        double factor = t.scale();
        if (Math.abs(factor - 1) < 1e-12) {
            return moved(t).atOrigin();
        }
        // Blocks grow first, each once; the places only move.
        Transform grow = Transform.scale(factor);
        Transform shrink = Transform.scale(1 / factor);
        Map<Patchwork, Patchwork> grown = new IdentityHashMap<>();
        List<Placed> larger = new ArrayList<>();
        for (Placed p : parts) {
            Patchwork work = grown.computeIfAbsent(p.work(), w -> w.transformed(grow));
            larger.add(new Placed(p.id(), work, shrink.then(p.place()).then(t)));
        }
        return new Assembly(name, outline.transformed(t), larger).atOrigin();
    }

    @Override
    public Assembly recoloured(Function<Patch, Fabric> choice) {
        return recoloured("", Transform.IDENTITY, choice);
    }

    private Assembly recoloured(String prefix, Transform t, Function<Patch, Fabric> choice) {
        List<Placed> others = new ArrayList<>();
        for (Placed part : parts) {
            String id = prefix + part.id() + "/";
            Transform place = part.place().then(t);
            Patchwork work = part.work() instanceof Assembly inner ? inner.recoloured(id, place, choice)
                    : part.work().recoloured(p -> choice.apply(p.transformed(place).named(id + p.id())));
            others.add(new Placed(part.id(), work, part.place()));
        }
        return new Assembly(name, outline, others);
    }

    @Override
    public Set<Role> roles() {
        Set<Role> all = new LinkedHashSet<>();
        roles(Collections.newSetFromMap(new IdentityHashMap<>()), all);
        return all;
    }

    private void roles(Set<Patchwork> seen, Set<Role> into) {
        for (Placed part : parts) {
            if (seen.add(part.work())) {
                if (part.work() instanceof Assembly inner) {
                    inner.roles(seen, into);
                } else {
                    into.addAll(part.work().roles());
                }
            }
        }
    }

    @Override
    public Assembly with(Map<Role, Fabric> fabrics) {
        Roles.require(name, roles(), fabrics);
        return with(fabrics, new IdentityHashMap<>());
    }

    private Assembly with(Map<Role, Fabric> fabrics, Map<Patchwork, Patchwork> done) {
        List<Placed> others = new ArrayList<>();
        for (Placed part : parts) {
            Patchwork work = done.get(part.work());
            if (work == null) {
                work = part.work() instanceof Assembly inner ? inner.with(fabrics, done) : part.work().recoloured(p -> fabrics.getOrDefault(p.role(), p.fabric()));
                done.put(part.work(), work);
            }
            others.add(new Placed(part.id(), work, part.place()));
        }
        return new Assembly(name, outline, others);
    }

    @Override
    public Assembly named(String other) {
        return new Assembly(other, outline, parts);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Assembly a && name.equals(a.name) && outline.equals(a.outline) && parts.equals(a.parts);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + parts.size();
    }

    @Override
    public String toString() {
        return name + ", " + width().onRuler() + " x " + height().onRuler() + ", " + patchCount() + " patches";
    }
}
