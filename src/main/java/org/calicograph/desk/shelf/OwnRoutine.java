package org.calicograph.desk.shelf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.VisiblePackages;

/**
 * A method or a type of a cell that is to become a routine of one's own, in a file of its own.
 *
 * @param name   of the method or type
 * @param method true for a method, which goes into a class with another name; a type keeps its own
 * @param text   as it stands in the cell
 * @param uses   names that it uses and doesn't declare
 */
public record OwnRoutine(String name, boolean method, String text, List<String> uses) {

    private static final Pattern HEAD = Pattern.compile(
            "^((?:\\s*/\\*[\\s\\S]*?\\*/|\\s*//[^\\n]*\\n|\\s*@\\w+(?:\\([^)]*\\))?)*\\s*)((?:(?:public|protected|private|static|final)\\s+)*)");
    private static final List<String> LENGTHS = List.of("inches", "mm", "cm", "yards");
    private static final List<String> ANGLES = List.of("degrees", "radians");
    private static final List<String> JAVA = List.of("java.util", "java.util.function", "java.util.stream");

    public OwnRoutine {
        uses = List.copyOf(uses);
    }

    /**
     * @param text     what is selected
     * @param scan     what that says about names
     * @param declared names that cells declare, and the cell of each
     * @throws IllegalArgumentException if it can't become a routine, with what to do about it
     */
    public static OwnRoutine of(String text, CellScan scan, Map<String, String> declared) {
        if (scan.declares().size() != 1) {
            throw new IllegalArgumentException("Select one whole method or class, from its first word to its last brace; what is selected declares "
                    + (scan.declares().isEmpty() ? "nothing." : "several things: " + scan.declares().stream().map(CellScan.Declared::name).collect(Collectors.joining(", ")) + "."));
        }
        CellScan.Declared only = scan.declares().get(0);
        boolean type = Pattern.compile("\\b(?:class|record|enum|interface)\\s+" + Pattern.quote(only.name()) + "\\b").matcher(text).find();
        if (!type && !only.key().contains("(")) {
            throw new IllegalArgumentException("'" + only.name() + "' is a value, not a method or class; write a method that gives it, and select that.");
        }
        Set<String> uses = new LinkedHashSet<>(scan.reads());
        uses.addAll(scan.writes());
        uses.remove(only.name());
        if (uses.contains("dial")) {
            throw new IllegalArgumentException("'" + only.name() + "' declares a dial, which belongs to the book; declare the dial there and pass its value as a parameter.");
        }
        List<String> foreign = uses.stream().filter(declared::containsKey).map(n -> "'" + n + "' of passage " + declared.get(n)).toList();
        if (!foreign.isEmpty()) {
            throw new IllegalArgumentException("'" + only.name() + "' uses " + String.join(", ", foreign) + ", which a routine can't see; pass "
                    + (foreign.size() == 1 ? "it as a parameter" : "them as parameters") + ", then make it a routine.");
        }
        return new OwnRoutine(only.name(), !type, text.strip(), List.copyOf(uses));
    }

    /** A name for its class: its own with a capital. */
    public String suggested() {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    /** @throws IllegalArgumentException if a class can't have this name */
    public static void requireName(String wanted) {
        if (!wanted.matches("[A-Z]\\w*")) {
            throw new IllegalArgumentException("'" + wanted + "' is not a name for a class; begin with a capital and use letters and digits alone.");
        }
        if (found(wanted).isPresent() || there("java.lang", wanted)) {
            throw new IllegalArgumentException("There is a '" + wanted + "' already; choose another name.");
        }
    }

    /** The file's text. */
    public String source(String className) {
        StringBuilder out = new StringBuilder("package org.calicograph.stdlib;\n\n");
        imports().forEach(line -> out.append(line).append('\n'));
        out.append(imports().isEmpty() ? "" : "\n");
        Matcher head = HEAD.matcher(text);
        String before = head.lookingAt() ? head.group(1) : "";
        String rest = text.substring(head.lookingAt() ? head.end() : 0);
        if (!method) {
            return out.append(before).append("public ").append(rest).append('\n').toString();
        }
        return out.append("/** A routine made in a notebook. */\npublic final class ").append(className).append(" {\n\n    private ").append(className)
                .append("() { }\n\n").append((before + "public static " + rest).indent(4)).append("}\n").toString();
    }

    private Set<String> imports() {
        Set<String> types = new TreeSet<>();
        Set<String> words = new TreeSet<>();
        for (String use : uses) {
            found(use).ifPresent(p -> types.add("import " + p + "." + use + ";"));
            if (LENGTHS.contains(use)) {
                words.add("import static org.calicograph.measure.Length." + use + ";");
            } else if (ANGLES.contains(use)) {
                words.add("import static org.calicograph.measure.Angle." + use + ";");
            } else if (Arrays.stream(Math.class.getMethods()).anyMatch(m -> m.getName().equals(use)) || use.equals("PI") || use.equals("E")) {
                words.add("import static java.lang.Math." + use + ";");
            }
        }
        Set<String> all = new LinkedHashSet<>(words);
        all.addAll(types);
        return all;
    }

    /** The package that a cell finds a type of this name in. */
    private static java.util.Optional<String> found(String type) {
        List<String> packages = new ArrayList<>();
        // These four win over types of the house with the same name; see the imports of cells.
        if (List.of("List", "Map", "Set", "Optional").contains(type)) {
            packages.add("java.util");
        }
        VisiblePackages.HOUSE.forEach(p -> packages.add("org.calicograph." + p));
        packages.addAll(JAVA);
        return packages.stream().filter(p -> there(p, type)).findFirst();
    }

    private static boolean there(String home, String type) {
        try {
            return java.lang.reflect.Modifier.isPublic(Class.forName(home + "." + type, false, OwnRoutine.class.getClassLoader()).getModifiers());
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }
}
