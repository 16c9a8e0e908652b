package org.calicograph.desk.opened;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.calicograph.notebook.DialValue;
import org.calicograph.notebook.Json;
import org.calicograph.notebook.Notebook;

/**
 * Dial values kept under names, in the notebook's field {@code variations}:
 * {@code {"calm": {"points": "12"}}}.
 */
public final class Variations {

    private static final String FIELD = "variations";

    private Variations() { }

    /** By name, in the order they were kept; what is not a variation is passed over. */
    public static Map<String, Map<String, String>> of(Notebook notebook) {
        Map<String, Map<String, String>> all = new LinkedHashMap<>();
        if (notebook.unknown().get(FIELD).orElse(Json.Obj.EMPTY) instanceof Json.Obj named) {
            named.fields().forEach((name, each) -> {
                if (each instanceof Json.Obj values) {
                    Map<String, String> dials = new LinkedHashMap<>();
                    values.fields().forEach((dial, value) -> {
                        if (value instanceof Json.Str text) {
                            dials.put(dial, text.text());
                        }
                    });
                    all.put(name, dials);
                }
            });
        }
        return all;
    }

    public static Notebook keep(Notebook notebook, String name, Map<String, String> dials) {
        Map<String, Map<String, String>> all = of(notebook);
        all.put(name, dials);
        return with(notebook, all);
    }

    public static Notebook forget(Notebook notebook, String name) {
        Map<String, Map<String, String>> all = of(notebook);
        all.remove(name);
        return with(notebook, all);
    }

    /** The notebook with its dials at a kept variation. */
    public static Notebook take(Notebook notebook, String name) {
        Notebook turned = notebook;
        for (Map.Entry<String, String> each : of(notebook).getOrDefault(name, Map.of()).entrySet()) {
            turned = turned.withDial(each.getKey(), DialValue.of(each.getValue()));
        }
        return turned;
    }

    /** A dial that two variations have at other values. */
    public record Difference(String dial, String first, String second) { }

    /** What differs between two sets of dial values, by the dials' names. */
    public static List<Difference> differences(Map<String, String> first, Map<String, String> second) {
        TreeSet<String> names = new TreeSet<>(first.keySet());
        names.addAll(second.keySet());
        return names.stream().map(n -> new Difference(n, first.getOrDefault(n, "as declared"), second.getOrDefault(n, "as declared")))
                .filter(d -> !d.first().equals(d.second())).toList();
    }

    private static Notebook with(Notebook notebook, Map<String, Map<String, String>> all) {
        Map<String, Json> fields = new LinkedHashMap<>(notebook.unknown().fields());
        if (all.isEmpty()) {
            fields.remove(FIELD);
        } else {
            Map<String, Json> named = new LinkedHashMap<>();
            all.forEach((name, dials) -> {
                Map<String, Json> values = new LinkedHashMap<>();
                dials.forEach((dial, value) -> values.put(dial, Json.of(value)));
                named.put(name, new Json.Obj(values));
            });
            fields.put(FIELD, new Json.Obj(named));
        }
        return new Notebook(notebook.title(), notebook.cells(), notebook.dials(), notebook.results(), new Json.Obj(fields));
    }
}
