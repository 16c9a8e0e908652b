package org.calicograph.notebook;

import com.fasterxml.jackson.core.JsonLocation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value being read, with what it is called in messages and where it stands.
 *
 * @param what names the thing, as in {@code the text of cell 3 ('a1')}
 */
record JsonNode(Json json, String what, Map<Json, JsonLocation> places) {

    Flaw flaw(String problem) {
        JsonLocation at = places.get(json);
        return new Flaw(at.getLineNr(), at.getColumnNr(), problem);
    }

    Flaw wrong(String expected) {
        return flaw(what + " is " + shown() + "; make it " + expected);
    }

    private String shown() {
        if (json instanceof Json.Str s) {
            return "the text '" + Excerpt.of(s.text()) + "'";
        }
        return json instanceof Json.Num n ? "the number " + Excerpt.of(n.digits(), 30) : json.kind();
    }

    JsonNode called(String other) {
        return new JsonNode(json, other, places);
    }

    private JsonNode child(Json value, String name) {
        return new JsonNode(value, name, places);
    }

    Json.Obj object() {
        if (json instanceof Json.Obj obj) {
            return obj;
        }
        throw wrong("an object in braces");
    }

    Optional<JsonNode> optional(String name) {
        return object().get(name).map(value -> child(value, "\"" + name + "\" of " + what));
    }

    /** @param example what the field could hold, as JSON */
    JsonNode required(String name, String example) {
        return optional(name).orElseThrow(() -> flaw(what + " has no \"" + name + "\"; add \"" + name + "\": " + example));
    }

    List<JsonNode> items() {
        if (json instanceof Json.Arr arr) {
            List<JsonNode> nodes = new ArrayList<>();
            for (Json item : arr.items()) {
                nodes.add(child(item, "entry " + (nodes.size() + 1) + " of " + what));
            }
            return nodes;
        }
        throw wrong("a list in square brackets");
    }

    Map<String, JsonNode> fields() {
        Map<String, JsonNode> nodes = new LinkedHashMap<>();
        object().fields().forEach((name, value) -> nodes.put(name, child(value, "\"" + Excerpt.of(name) + "\" of " + what)));
        return nodes;
    }

    String text() {
        if (json instanceof Json.Str s) {
            return s.text();
        }
        throw wrong("a text in double quotes");
    }

    double number() {
        if (json instanceof Json.Num n && Double.isFinite(Double.parseDouble(n.digits()))) {
            return Double.parseDouble(n.digits());
        }
        throw wrong("a number such as 12 or 0.75");
    }

    boolean flag() {
        if (json instanceof Json.Bool b) {
            return b.value();
        }
        throw wrong("true or false");
    }

    /** The fields that are not among the known ones. */
    Json.Obj rest(String... known) {
        Map<String, Json> left = new LinkedHashMap<>(object().fields());
        left.keySet().removeAll(List.of(known));
        return new Json.Obj(left);
    }
}
