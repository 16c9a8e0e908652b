package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.List;

/**
 * The imports that every cell has: the house's packages that a quilter uses, the words for lengths,
 * angles and dials, the stdlib, and the usual parts of Java.
 *
 * <p>JShell keeps the whole text of an import snippet at the head of every class that it compiles, so
 * all of them are one snippet: evaluating one takes a fraction of the time of evaluating twenty.
 */
final class Imports {

    private static final List<String> HOUSE = List.of("measure", "geometry", "drafting", "fabric", "quilt", "fitting", "workshop", "quilting",
            "turning", "colouring", "drawing", "show", "workshop.pieces", "book");

    private Imports() { }

    static String text(boolean stdlib) {
        List<String> lines = new ArrayList<>();
        for (String each : HOUSE) {
            if (Imports.class.getClassLoader().getResource("org/calicograph/" + each.replace('.', '/') + "/") != null) {
                lines.add("import org.calicograph." + each + ".*;");
            }
        }
        if (stdlib) {
            lines.add("import " + Stdlib.PACKAGE + ".*;");
        }
        for (String word : List.of("inches", "mm", "cm", "yards")) {
            lines.add("import static org.calicograph.measure.Length." + word + ";");
        }
        for (String word : List.of("degrees", "radians")) {
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
