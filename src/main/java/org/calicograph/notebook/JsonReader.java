package org.calicograph.notebook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON and remembers where every value stood. */
final class JsonReader {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(NotebookReader.DEEPEST + 1)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private final IdentityHashMap<Json, JsonLocation> places = new IdentityHashMap<>();
    private final JsonParser parser;

    private JsonReader(JsonParser parser) {
        this.parser = parser;
    }

    /** @throws Flaw if the text is no JSON, or more than one value */
    static JsonNode read(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonReader reader = new JsonReader(parser);
            try {
                if (parser.nextToken() == null) {
                    throw new Flaw(1, 1, "the file is empty; a notebook begins with {\"calicograph\": " + Notebook.FORMAT + ", …}");
                }
                Json root = reader.value(1);
                if (parser.nextToken() != null) {
                    throw reader.flaw(parser.currentTokenLocation(), "more follows after the end of the notebook; take it out");
                }
                return new JsonNode(root, "the notebook", reader.places);
            } catch (JsonParseException e) {
                if (e.getOriginalMessage().startsWith("Unexpected end-of-input")) {
                    throw reader.flaw(parser.currentLocation(), "the file ends " + reader.whereabouts()
                            + "; it was cut short, so take a whole copy or close what is open");
                }
                throw reader.flaw(e.getLocation(), "this is not JSON: " + Excerpt.of(plain(e.getOriginalMessage()), 160)
                        + "; repair it " + reader.whereabouts());
            } catch (JsonProcessingException e) {
                throw reader.flaw(parser.currentLocation(), "this can't be read: " + Excerpt.of(e.getOriginalMessage(), 160));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Flaw flaw(JsonLocation at, String problem) {
        return new Flaw(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()), problem);
    }

    /** The library's words without its notes on where it read from. */
    private static String plain(String message) {
        return message.replaceAll("\\(for (\\w+) starting at \\[Source: [^\\]]*; line: (\\d+), column: (\\d+)\\]\\)",
                "for the bracket opened in line $2, column $3");
    }

    /** The open fields and entries, outermost first. */
    private String whereabouts() {
        List<String> open = new ArrayList<>();
        for (JsonStreamContext c = parser.getParsingContext(); c != null && !c.inRoot(); c = c.getParent()) {
            if (c.inArray()) {
                open.add(0, "entry " + (Math.max(0, c.getCurrentIndex()) + 1));
            } else if (c.hasCurrentName()) {
                open.add(0, "\"" + Excerpt.of(c.getCurrentName(), 30) + "\"");
            }
        }
        List<String> first = open.size() > 5 ? open.subList(0, 5) : open;
        return first.isEmpty() ? "within the outermost braces" : "within " + String.join(", ", first);
    }

    private Json value(int depth) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        if (depth > NotebookReader.DEEPEST) {
            throw flaw(at, "values are nested more than " + NotebookReader.DEEPEST + " deep here; a notebook needs far less, so flatten them");
        }
        Json json = switch (parser.currentToken()) {
            case START_OBJECT -> object(depth);
            case START_ARRAY -> list(depth);
            case VALUE_STRING -> new Json.Str(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(parser.getText());
            case VALUE_TRUE -> new Json.Bool(true);
            case VALUE_FALSE -> new Json.Bool(false);
            default -> new Json.Null();
        };
        places.put(json, at);
        return json;
    }

    private Json object(int depth) throws IOException {
        Map<String, Json> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            JsonLocation at = parser.currentTokenLocation();
            parser.nextToken();
            Json value = value(depth + 1);
            if (fields.put(name, value) != null) {
                throw flaw(at, "the field \"" + Excerpt.of(name) + "\" stands here a second time; keep one of the two");
            }
        }
        return new Json.Obj(fields);
    }

    private Json list(int depth) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(depth + 1));
        }
        return new Json.Arr(items);
    }
}
