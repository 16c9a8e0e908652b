package org.calicograph.colouring.wish;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.calicograph.colouring.Neighbours;
import org.calicograph.colouring.Seam;
import org.calicograph.colouring.TopPicture;
import org.calicograph.covering.DesignException;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * The wish that no two alike touch, or that like colours lie as far apart as can be: which fabric each free patch gets.
 * Touching means sharing a seam; patches that meet in a point don't touch.
 *
 * @param work     the top as it is; patches that are not free keep their fabric, and those beside them heed it
 * @param fabrics  what the free patches may get
 * @param roles    whose patches are free; all where empty
 * @param most     how many patches a fabric is enough for, by its name; as many as wanted where nothing is said
 * @param farthest true if the weakest seam is to be as strong as can be, and not just any two unlike
 */
public record Apart(Patchwork work, List<Fabric> fabrics, Set<Role> roles, Map<String, Integer> most, boolean farthest) implements Drawable {

    /** Not more fabrics than this can be told apart at once. */
    private static final int FABRICS = 60;

    /**
     * What was found.
     *
     * @param top    the top in its fabrics
     * @param weakest the least difference (CIEDE2000) across a seam that a free patch has; infinite if there is none
     * @param proved true if no other choice has a stronger weakest seam, or if none was asked for
     * @param used   how many patches have each fabric
     */
    public record Found(Patchwork top, double weakest, boolean proved, Map<Fabric, Integer> used) implements Drawable {

        public Found {
            used = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(used));
        }

        /** One sentence. */
        public String words() {
            String each = used.entrySet().stream().map(e -> e.getValue() + " " + e.getKey().name()).collect(Collectors.joining(", "));
            return (Double.isInfinite(weakest) ? "No free patch shares a seam" : String.format(Locale.ROOT, "No two alike touch; the weakest seam differs by %.1f (CIEDE2000)", weakest)
                    + (proved ? "" : ", which is not proved to be the best")) + ": " + each + ".";
        }

        @Override
        public Exhibit show() {
            return Exhibit.of(TopPicture.of(top, 6), words());
        }

        @Override
        public String toString() {
            return words();
        }
    }

    /** @throws DesignException if no patch is free, two fabrics have one name, or there are more than 60 */
    public Apart {
        fabrics = List.copyOf(fabrics);
        roles = Set.copyOf(roles);
        most = Map.copyOf(most);
        Set<String> names = new HashSet<>();
        for (Fabric f : fabrics) {
            if (!names.add(f.name())) {
                throw new DesignException("two fabrics are called '" + f.name() + "'; name them apart");
            }
        }
        if (fabrics.isEmpty() || fabrics.size() > FABRICS) {
            throw new DesignException(fabrics.size() + " fabrics can't be told apart; give 1 to " + FABRICS);
        }
        for (Map.Entry<String, Integer> e : most.entrySet()) {
            if (!names.contains(e.getKey()) || e.getValue() < 0) {
                throw new DesignException("'" + e.getKey() + "', at most " + e.getValue() + ", is none of the fabrics " + names + " or less than 0; name one of them");
            }
        }
    }

    /** Any two that touch are unlike. */
    public static Apart noTwoAlike(Patchwork work, List<Fabric> fabrics) {
        return new Apart(work, fabrics, Set.of(), Map.of(), false);
    }

    /** Like colours lie apart: the weakest seam is as strong as can be. */
    public static Apart likesApart(Patchwork work, List<Fabric> fabrics) {
        return new Apart(work, fabrics, Set.of(), Map.of(), true);
    }

    /** Only patches of these roles get another fabric. */
    public Apart only(Role... free) {
        return new Apart(work, fabrics, Set.of(free), most, farthest);
    }

    /** A fabric is enough for so many patches. */
    public Apart atMost(String fabric, int patches) {
        Map<String, Integer> all = new LinkedHashMap<>(most);
        all.put(fabric, patches);
        return new Apart(work, fabrics, roles, all, farthest);
    }

    /**
     * The choice.
     *
     * @throws DesignException if no two alike can't be had: that it is proved, or that it was not found
     */
    public Found solve() {
        Predicate<Patch> free = p -> roles.isEmpty() || roles.contains(p.role());
        List<Patch> patches = work.patches();
        Map<String, Integer> index = new LinkedHashMap<>();
        for (Patch p : patches) {
            if (free.test(p)) {
                index.put(p.id(), index.size());
            }
        }
        if (index.isEmpty()) {
            throw new DesignException("no patch of '" + work.name() + "' has a role of " + roles + "; name one of " + work.roles());
        }
        List<List<Integer>> beside = new ArrayList<>();
        List<List<Fabric>> fixed = new ArrayList<>();
        index.forEach((id, i) -> {
            beside.add(new ArrayList<>());
            fixed.add(new ArrayList<>());
        });
        for (Seam seam : Neighbours.of(patches)) {
            Integer a = index.get(seam.one().id());
            Integer b = index.get(seam.other().id());
            if (a != null && b != null) {
                beside.get(a).add(b);
                beside.get(b).add(a);
            } else if (a != null) {
                fixed.get(a).add(seam.other().fabric());
            } else if (b != null) {
                fixed.get(b).add(seam.one().fabric());
            }
        }
        ApartSearch search = new ApartSearch(fabrics, beside, fixed, fabrics.stream().map(f -> most.getOrDefault(f.name(), Integer.MAX_VALUE)).toList());
        ApartSearch.Answer answer = search.best(farthest);
        if (answer.choice().isEmpty()) {
            throw new DesignException(fabrics.size() + " fabrics " + (answer.proved() ? "can't be laid so that no two alike touch: every way was tried"
                    : "were not laid so that no two alike touch; it may be possible") + "; give another fabric, or more of one");
        }
        List<Integer> choice = answer.choice().get();
        Map<Fabric, Integer> used = new LinkedHashMap<>();
        fabrics.forEach(f -> used.put(f, 0));
        choice.forEach(c -> used.merge(fabrics.get(c), 1, Integer::sum));
        Patchwork top = work.recoloured(p -> index.containsKey(p.id()) ? fabrics.get(choice.get(index.get(p.id()))) : p.fabric());
        return new Found(top, answer.weakest(), answer.proved() || !farthest, used);
    }

    @Override
    public Exhibit show() {
        return solve().show();
    }
}
