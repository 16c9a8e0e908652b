package org.calicograph.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;

/** Writes a notebook as the text of its file. */
public final class NotebookWriter {

    private NotebookWriter() { }

    public static String write(Notebook notebook) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("calicograph", Json.of(Notebook.FORMAT));
        fields.put("title", Json.of(notebook.title()));
        List<Json> cells = new ArrayList<>();
        notebook.cells().forEach(c -> cells.add(cell(c)));
        fields.put("cells", new Json.Arr(cells));
        Map<String, Json> dials = new LinkedHashMap<>();
        notebook.dials().forEach((name, value) -> dials.put(name, dial(value)));
        fields.put("dials", new Json.Obj(dials));
        Map<String, Json> results = new LinkedHashMap<>();
        notebook.results().forEach((id, saved) -> results.put(id, saved(saved)));
        fields.put("results", new Json.Obj(results));
        fields.putAll(notebook.unknown().fields());
        return JsonPrinter.print(new Json.Obj(fields));
    }

    private static Json cell(Cell cell) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("id", Json.of(cell.id()));
        fields.put("kind", Json.of(cell.kind()));
        List<Json> lines = new ArrayList<>();
        cell.lines().forEach(line -> lines.add(Json.of(line)));
        fields.put("text", new Json.Arr(lines));
        fields.putAll(cell.unknown().fields());
        return new Json.Obj(fields);
    }

    private static Json dial(DialValue value) {
        if (value instanceof DialValue.Quantity q) {
            return new Json.Num(q.text());
        }
        return value instanceof DialValue.OnOff o ? new Json.Bool(o.on()) : Json.of(value.text());
    }

    private static Json saved(Saved saved) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("key", Json.of(saved.key()));
        if (!saved.exhibit().equals(Exhibit.NOTHING)) {
            fields.put("exhibit", ExhibitJson.write(saved.exhibit()));
        }
        if (!saved.output().isEmpty()) {
            fields.put("output", Json.of(saved.output()));
        }
        saved.failure().ifPresent(f -> fields.put("failure", Json.of(f)));
        fields.putAll(saved.unknown().fields());
        return new Json.Obj(fields);
    }
}
