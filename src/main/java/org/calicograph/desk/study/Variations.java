package org.calicograph.desk.study;

import java.util.ArrayList;
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

    /** What differs between two sets of dial values, a line for each dial: {@code points: 12, then 16}. */
    public static List<String> differences(Map<String, String> first, Map<String, String> second) {
        TreeSet<String> names = new TreeSet<>(first.keySet());
        names.addAll(second.keySet());
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            String a = first.getOrDefault(name, "as declared");
            String b = second.getOrDefault(name, "as declared");
            if (!a.equals(b)) {
                lines.add(name + ": " + a + ", then " + b);
            }
        }
        return lines;
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
