package org.calicograph.command.output;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Json;
import org.calicograph.session.CellState;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;

/** What a run of {@code draw} came to, as JSON: the cells in their order, then the dials. */
public final class Report {

    private Report() { }

    public static String of(String title, Map<String, CellState> states, Map<String, List<String>> files, List<Dial> dials) {
        List<Json> cells = new ArrayList<>();
        states.forEach((id, state) -> cells.add(cell(id, state, files.getOrDefault(id, List.of()))));
        Map<String, Json> turned = new LinkedHashMap<>();
        dials.forEach(d -> turned.put(d.name(), Json.of(d.text())));
        Map<String, Json> all = new LinkedHashMap<>();
        all.put("title", Json.of(title));
        all.put("cells", new Json.Arr(cells));
        all.put("dials", new Json.Obj(turned));
        return new Json.Obj(all).printed();
    }

    private static Json cell(String id, CellState state, List<String> files) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("id", Json.of(id));
        if (state instanceof CellState.Done done) {
            fields.put("state", Json.of("drawn"));
            fields.put("result", Json.of(kind(done.exhibit())));
            fields.put("value", Json.of(done.kind()));
            fields.put("files", new Json.Arr(files.stream().map(Json::of).toList()));
            time(fields, done.time());
            output(fields, done.output());
        } else if (state instanceof CellState.Failed failed) {
            fields.put("state", Json.of("failed"));
            time(fields, failed.time());
            output(fields, failed.output());
            fields.put("error", error(failed.failure()));
        } else {
            fields.put("state", Json.of("not drawn"));
        }
        return new Json.Obj(fields);
    }

    private static void time(Map<String, Json> fields, Duration time) {
        fields.put("milliseconds", Json.of(time.toMillis()));
    }

    private static void output(Map<String, Json> fields, String output) {
        if (!output.isEmpty()) {
            fields.put("output", Json.of(output));
        }
    }

    private static Json error(Failure failure) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("kind", Json.of(failure.getClass().getSimpleName()));
        fields.put("message", Json.of(failure.message()));
        failure.at().ifPresent(at -> place(fields, at));
        if (failure instanceof Failure.DoesNotCompile broken && broken.problems().size() > 1) {
            List<Json> problems = new ArrayList<>();
            broken.problems().forEach(p -> {
                Map<String, Json> one = new LinkedHashMap<>();
                one.put("message", Json.of(p.message()));
                place(one, p.from());
                problems.add(new Json.Obj(one));
            });
            fields.put("problems", new Json.Arr(problems));
        }
        return new Json.Obj(fields);
    }

    private static void place(Map<String, Json> fields, Place at) {
        fields.put("line", Json.of(at.line()));
        fields.put("column", Json.of(at.column()));
    }

    static String kind(Exhibit exhibit) {
        if (exhibit instanceof Exhibit.Drawn) {
            return "picture";
        }
        if (exhibit instanceof Exhibit.Tabled) {
            return "table";
        }
        if (exhibit instanceof Exhibit.Words) {
            return "words";
        }
        return exhibit instanceof Exhibit.Several ? "several" : "nothing";
    }
}
