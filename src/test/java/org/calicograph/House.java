package org.calicograph;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The two tables of {@code docs/architecture.md}.
 *
 * @param mayUse for each package, in the page's order, the packages that its row names
 * @param onlyIn for each library's package prefix, the places that may use it; none for "nowhere"
 */
record House(Map<String, Set<String>> mayUse, Map<String, List<String>> onlyIn) {

    private static final String ALL_ABOVE = "all above";

    static House readFrom(Path page) throws IOException {
        List<String> lines = Files.readAllLines(page);
        Map<String, Set<String>> mayUse = new LinkedHashMap<>();
        for (List<String> row : tableUnder("| package |", lines)) {
            Set<String> named = named(row.get(2), mayUse.keySet());
            if (mayUse.put(row.get(0), named) != null) {
                throw new IllegalStateException("two rows for the package " + row.get(0));
            }
        }
        Map<String, List<String>> onlyIn = new LinkedHashMap<>();
        for (List<String> row : tableUnder("| library |", lines)) {
            onlyIn.put(row.get(0), row.get(1).equals("nowhere") ? List.of() : List.of(row.get(1).split("\\s+")));
        }
        return new House(mayUse, onlyIn);
    }

    private static Set<String> named(String cell, Set<String> above) {
        return switch (cell) {
            case "nothing" -> Set.of();
            case ALL_ABOVE -> new LinkedHashSet<>(above);
            default -> new LinkedHashSet<>(List.of(cell.split("\\s+")));
        };
    }

    /** The cells of each row below the head that begins so, without head and rule. */
    private static List<List<String>> tableUnder(String head, List<String> lines) {
        List<List<String>> rows = new ArrayList<>();
        boolean inside = false;
        for (String line : lines) {
            if (line.startsWith(head)) {
                inside = true;
            } else if (inside && !line.startsWith("|")) {
                break;
            } else if (inside && !line.startsWith("|--")) {
                String cells = line.strip().replaceAll("^\\||\\|$", "");
                rows.add(List.of(cells.split("\\|")).stream().map(String::strip).toList());
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException("no table with the head " + head);
        }
        return rows;
    }

    Set<String> packages() {
        return mayUse.keySet();
    }

    /** Whether the first may use the second: itself, a package its row names, or one that those may use. */
    boolean allows(String user, String used) {
        return user.equals(used)
                || mayUse.getOrDefault(user, Set.of()).stream().anyMatch(named -> allows(named, used));
    }
}
