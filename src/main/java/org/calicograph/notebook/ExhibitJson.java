package org.calicograph.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;

/** An exhibit as it is saved: {@code {"picture": …}}, {@code {"table": …}}, {@code {"words": …}} or {@code {"several": …}}. */
final class ExhibitJson {

    private ExhibitJson() { }

    static Json write(Exhibit exhibit) {
        Map<String, Json> fields = new LinkedHashMap<>();
        if (exhibit instanceof Exhibit.Drawn drawn) {
            fields.put("picture", PictureJson.write(drawn.picture()));
            if (!drawn.caption().isEmpty()) {
                fields.put("caption", Json.of(drawn.caption()));
            }
        } else if (exhibit instanceof Exhibit.Tabled tabled) {
            fields.put("table", table(tabled.table()));
        } else if (exhibit instanceof Exhibit.Words words) {
            fields.put("words", Json.of(words.text()));
        } else if (exhibit instanceof Exhibit.Several several) {
            fields.put("several", new Json.Arr(several.parts().stream().map(ExhibitJson::write).toList()));
        }
        return new Json.Obj(fields);
    }

    static Exhibit read(JsonNode node) {
        var picture = node.optional("picture");
        if (picture.isPresent()) {
            return Exhibit.of(PictureJson.read(picture.get()), node.optional("caption").map(JsonNode::text).orElse(""));
        }
        var table = node.optional("table");
        if (table.isPresent()) {
            return Exhibit.of(table(table.get()));
        }
        var words = node.optional("words");
        if (words.isPresent()) {
            return Exhibit.words(words.get().text());
        }
        var several = node.optional("several");
        if (several.isPresent()) {
            return new Exhibit.Several(several.get().items().stream().map(ExhibitJson::read).toList());
        }
        return Exhibit.NOTHING;
    }

    private static Json table(Table table) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("title", Json.of(table.title()));
        fields.put("columns", texts(table.columns()));
        List<Json> rows = new ArrayList<>();
        for (List<Table.Entry> row : table.rows()) {
            rows.add(new Json.Arr(row.stream().map(ExhibitJson::entry).toList()));
        }
        fields.put("rows", new Json.Arr(rows));
        return new Json.Obj(fields);
    }

    private static Json texts(List<String> texts) {
        return new Json.Arr(texts.stream().map(Json::of).toList());
    }

    /** A text alone, or with the number that it stands for. */
    private static Json entry(Table.Entry entry) {
        if (!Double.isFinite(entry.value())) {
            return Json.of(entry.text());
        }
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("text", Json.of(entry.text()));
        fields.put("value", new Json.Num(Double.toString(entry.value())));
        return new Json.Obj(fields);
    }

    private static Table table(JsonNode node) {
        String title = node.optional("title").map(JsonNode::text).orElse("");
        List<String> columns = node.required("columns", "[\"…\"]").items().stream().map(JsonNode::text).toList();
        List<List<Table.Entry>> rows = new ArrayList<>();
        for (JsonNode row : node.required("rows", "[]").items()) {
            List<Table.Entry> entries = row.items().stream().map(ExhibitJson::entry).toList();
            if (entries.size() != columns.size()) {
                throw row.flaw(row.what() + " has " + entries.size() + " entries under " + columns.size() + " columns; give it one for each");
            }
            rows.add(entries);
        }
        return new Table(title, columns, rows);
    }

    private static Table.Entry entry(JsonNode node) {
        if (node.json() instanceof Json.Str s) {
            return new Table.Entry(s.text(), Double.NaN);
        }
        return new Table.Entry(node.required("text", "\"…\"").text(), node.optional("value").map(JsonNode::number).orElse(Double.NaN));
    }
}
