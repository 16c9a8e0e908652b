package org.calicograph.kernel;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;
import org.calicograph.kernel.numbers.WholeDivision;
import org.calicograph.wire.VisiblePackages;

/**
 * The imports that every cell has: the house's packages that a quilter uses, the words for lengths,
 * angles and dials, the stdlib, and the usual parts of Java.
 *
 * <p>JShell keeps the whole text of an import snippet at the head of every class that it compiles, so
 * all of them are one snippet: evaluating one takes a fraction of the time of evaluating twenty. Rooms are imported
 * whole: naming the 185 types one by one made every line of a cell half again as slow to draw (measured 12 to 19 ms).
 */
final class Imports {

    /** Packages whose types can be named in a cell as they are. */
    static final List<String> PACKAGES = packages();
    private static final List<String> LENGTHS = List.of("inches", "mm", "cm", "yards");
    private static final List<String> ANGLES = List.of("degrees", "radians");
    private static final Set<String> TYPES = new TreeSet<>();

    private Imports() { }

    private static List<String> packages() {
        List<String> all = new ArrayList<>();
        VisiblePackages.HOUSE.forEach(each -> all.add("org.calicograph." + each));
        all.addAll(List.of("java.util", "java.util.function", "java.util.stream", "java.lang"));
        return List.copyOf(all);
    }

    /** Methods that can be called as they are. */
    static List<String> words() {
        List<String> all = new ArrayList<>(LENGTHS);
        all.addAll(ANGLES);
        all.add("dial");
        return all;
    }

    /** The names of the house's types and the stdlib's. */
    static synchronized Set<String> types(Stdlib stdlib) {
        if (TYPES.isEmpty()) {
            try (StandardJavaFileManager files = ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, null, null)) {
                for (String each : VisiblePackages.HOUSE) {
                    for (JavaFileObject file : files.list(StandardLocation.CLASS_PATH, "org.calicograph." + each, Set.of(JavaFileObject.Kind.CLASS), false)) {
                        String name = file.getName().replaceFirst(".*[/\\(]", "").replaceFirst("\\.class\\)?$", "");
                        if (!name.contains("$") && !name.contains("-") && !VisiblePackages.MACHINERY.contains(name)) {
                            TYPES.add(name);
                        }
                    }
                }
            } catch (IOException e) {
                TYPES.add("List"); // Near names of types are not told then.
            }
            TYPES.addAll(List.of("List", "Map", "Set", "Optional", "String", "Math"));
            stdlib.files().forEach(file -> TYPES.add(file.getFileName().toString().replace(".java", "")));
        }
        return TYPES;
    }

    /** How cells are compiled. */
    static String[] options(Stdlib stdlib) {
        String classPath = System.getProperty("java.class.path") + stdlib.classes().map(p -> File.pathSeparator + p).orElse("");
        return new String[] {"-classpath", classPath, "-parameters", "-Xlint:none", "-proc:none"};
    }

    /** Finds divisions of whole numbers in cells. */
    static WholeDivision division(Stdlib stdlib) {
        return new WholeDivision(List.of(options(stdlib)), text(!stdlib.isEmpty()));
    }

    static String text(boolean stdlib) {
        List<String> lines = new ArrayList<>();
        for (String each : VisiblePackages.HOUSE) {
            if (Imports.class.getClassLoader().getResource("org/calicograph/" + each.replace('.', '/') + "/") != null) {
                lines.add("import org.calicograph." + each + ".*;");
            }
        }
        if (stdlib) {
            lines.add("import " + Stdlib.PACKAGE + ".*;");
        }
        for (String word : LENGTHS) {
            lines.add("import static org.calicograph.measure.Length." + word + ";");
        }
        for (String word : ANGLES) {
            lines.add("import static org.calicograph.measure.Angle." + word + ";");
        }
        lines.add("import static org.calicograph.kernel.Dials.dial;");
        lines.add("import static java.lang.Math.*;");
        for (String each : List.of("java.util", "java.util.function", "java.util.stream")) {
            lines.add("import " + each + ".*;");
        }
        // A single name wins over two packages that both have it.
        for (String each : List.of("java.util.List", "java.util.Map", "java.util.Set", "java.util.Optional")) {
            lines.add("import " + each + ";");
        }
        return String.join(" ", lines);
    }
}
