package org.calicograph.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Failure;

/**
 * Which cell needs which, by the names that they declare, read and write.
 *
 * @param order    every cell behind those that it needs, otherwise in the order of the notebook
 * @param needs    for each cell, those whose names it uses itself
 * @param users    the same the other way about: for each cell, those that use its names themselves
 * @param problems cells that can't be drawn whatever their text does: a name declared before, or a circle
 */
record Dependencies(List<String> order, Map<String, Set<String>> needs, Map<String, Set<String>> users, Map<String, Failure> problems) {

    static final Dependencies NONE = new Dependencies(List.of(), Map.of(), Map.of(), Map.of());

    /** @param scans in the order of the notebook */
    static Dependencies of(List<CellScan> scans) {
        Map<String, Failure> problems = new LinkedHashMap<>();
        Map<String, String> owners = new HashMap<>();
        Map<String, String> keys = new HashMap<>();
        for (CellScan scan : scans) {
            for (CellScan.Declared declared : scan.declares()) {
                String first = keys.putIfAbsent(declared.key(), scan.cell());
                if (first == null) {
                    owners.putIfAbsent(declared.name(), scan.cell());
                } else {
                    problems.putIfAbsent(scan.cell(), new Failure.DeclaredTwice(declared.name(), List.of(first, scan.cell())));
                }
            }
        }
        Map<String, Set<String>> needs = new LinkedHashMap<>();
        for (CellScan scan : scans) {
            Set<String> used = new LinkedHashSet<>();
            for (String name : scan.reads()) {
                use(owners.get(name), scan.cell(), used);
            }
            for (String name : scan.writes()) {
                use(owners.get(name), scan.cell(), used);
            }
            needs.put(scan.cell(), used);
        }
        afterWriters(scans, owners, needs);
        Map<String, Set<String>> users = new HashMap<>();
        needs.forEach((cell, used) -> used.forEach(need -> users.computeIfAbsent(need, n -> new LinkedHashSet<>()).add(cell)));
        circles(scans, owners, needs, caught(needs, users), problems);
        return new Dependencies(ordered(needs), needs, users, problems);
    }

    private static void use(String owner, String by, Set<String> used) {
        if (owner != null && !owner.equals(by)) {
            used.add(owner);
        }
    }

    /** A cell that uses a name which a higher cell assigns to comes behind that cell. */
    private static void afterWriters(List<CellScan> scans, Map<String, String> owners, Map<String, Set<String>> needs) {
        Map<String, List<String>> writers = new HashMap<>();
        for (CellScan scan : scans) {
            Set<String> uses = new TreeSet<>(scan.reads());
            uses.addAll(scan.writes());
            for (String name : uses) {
                if (owners.containsKey(name) && !owners.get(name).equals(scan.cell())) {
                    needs.get(scan.cell()).addAll(writers.getOrDefault(name, List.of()));
                }
            }
            for (String name : scan.writes()) {
                if (owners.containsKey(name) && !owners.get(name).equals(scan.cell())) {
                    writers.computeIfAbsent(name, n -> new ArrayList<>()).add(scan.cell());
                }
            }
        }
    }

    /** @param caught cells that are in a circle or need one that is */
    private static void circles(List<CellScan> scans, Map<String, String> owners, Map<String, Set<String>> needs, Set<String> caught,
                                Map<String, Failure> problems) {
        for (CellScan scan : scans) {
            if (!caught.contains(scan.cell())) {
                continue;
            }
            Set<String> reached = reach(Set.of(scan.cell()), needs);
            if (!reached.contains(scan.cell())) {
                continue;
            }
            List<String> circle = new ArrayList<>();
            for (CellScan other : scans) {
                if (reached.contains(other.cell()) && reach(Set.of(other.cell()), needs).contains(scan.cell())) {
                    circle.add(other.cell());
                }
            }
            Set<String> names = new TreeSet<>();
            for (CellScan other : scans) {
                if (circle.contains(other.cell())) {
                    for (String name : other.reads()) {
                        String owner = owners.get(name);
                        if (owner != null && !owner.equals(other.cell()) && circle.contains(owner)) {
                            names.add(name);
                        }
                    }
                }
            }
            problems.putIfAbsent(scan.cell(), new Failure.InCircle(circle, List.copyOf(names)));
        }
    }

    /** Cells that are in a circle or need one that is: what is left when cells are taken away that need none of the others. */
    private static Set<String> caught(Map<String, Set<String>> needs, Map<String, Set<String>> users) {
        Map<String, Integer> open = new LinkedHashMap<>();
        needs.forEach((cell, used) -> open.put(cell, used.size()));
        List<String> free = new ArrayList<>(open.keySet().stream().filter(cell -> open.get(cell) == 0).toList());
        while (!free.isEmpty()) {
            String cell = free.remove(free.size() - 1);
            open.remove(cell);
            users.getOrDefault(cell, Set.of()).forEach(user -> {
                if (open.merge(user, -1, Integer::sum) == 0) {
                    free.add(user);
                }
            });
        }
        return open.keySet();
    }

    /** The cells reached from any of these by one step or more. */
    private static Set<String> reach(Collection<String> from, Map<String, Set<String>> steps) {
        Set<String> reached = new LinkedHashSet<>();
        List<String> open = new ArrayList<>();
        from.forEach(cell -> open.addAll(steps.getOrDefault(cell, Set.of())));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (reached.add(next)) {
                open.addAll(steps.getOrDefault(next, Set.of()));
            }
        }
        return reached;
    }

    private static List<String> ordered(Map<String, Set<String>> needs) {
        Set<String> done = new LinkedHashSet<>();
        for (String cell : needs.keySet()) {
            place(cell, needs, done, new LinkedHashSet<>());
        }
        return List.copyOf(done);
    }

    private static void place(String cell, Map<String, Set<String>> needs, Set<String> done, Set<String> above) {
        if (done.contains(cell) || !above.add(cell)) {
            return;
        }
        for (String need : needs.get(cell)) {
            place(need, needs, done, above);
        }
        done.add(cell);
    }

    /** The cells that these need, directly or through others; these themselves only where they need one another. */
    Set<String> needed(Collection<String> cells) {
        return reach(cells, needs);
    }

    /** The cells that need this one, directly or through others, in order. */
    Set<String> dependents(String cell) {
        Set<String> reached = reach(Set.of(cell), users);
        Set<String> all = new LinkedHashSet<>();
        for (String other : reached.isEmpty() ? List.<String>of() : order) {
            if (!other.equals(cell) && reached.contains(other)) {
                all.add(other);
            }
        }
        return all;
    }
}
