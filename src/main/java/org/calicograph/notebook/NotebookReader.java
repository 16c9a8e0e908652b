package org.calicograph.notebook;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;

/** Reads a notebook from the bytes of its file. */
public final class NotebookReader {

    /** 64 MiB: a notebook with saved pictures of a hundred thousand patches fits well. */
    public static final long MOST_BYTES = 64L << 20;
    /** How deep values may lie within one another. */
    public static final int DEEPEST = 200;

    private NotebookReader() { }

    /**
     * @param file the name of the file in messages
     * @throws NotebookException if the bytes are not a notebook
     */
    public static Notebook read(byte[] bytes, String file) throws NotebookException {
        try {
            if (bytes.length > MOST_BYTES) {
                throw new NotebookException(file, tooBig(bytes.length));
            }
            return notebook(JsonReader.read(text(bytes, file)));
        } catch (Flaw flaw) {
            throw new NotebookException(file, flaw.line, flaw.column, flaw.getMessage());
        }
    }

    static String tooBig(long size) {
        return "the file has " + size + " bytes, and a notebook can have " + MOST_BYTES
                + " at most; take saved results out of it, or check that it is a notebook";
    }

    private static String text(byte[] bytes, String file) throws NotebookException {
        if (bytes.length >= 2 && ((bytes[0] & 255) == 0xFE && (bytes[1] & 255) == 0xFF || (bytes[0] & 255) == 0xFF && (bytes[1] & 255) == 0xFE)) {
            throw new NotebookException(file, 1, 1, "the file is in UTF-16; save it as UTF-8");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int at = in.position();
            throw placed(text, text.length(), "byte " + at + " of the file (hexadecimal " + String.format("%02x", bytes[at])
                    + ") is not UTF-8; save the file as UTF-8");
        }
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            throw placed(text, nul, "there is a NUL character here; the file is damaged or no notebook, so take a whole copy");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static Flaw placed(String text, int offset, String problem) {
        int start = text.lastIndexOf('\n', offset - 1) + 1;
        int line = 1 + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
        return new Flaw(line, offset - start + 1, problem);
    }

    private static Notebook notebook(JsonNode root) {
        format(root.required("calicograph", Notebook.FORMAT + " as the format of the file"));
        String title = root.required("title", "\"…\"").called("the title").text();
        List<Cell> cells = cells(root.required("cells", "[…]").called("\"cells\""));
        Map<String, DialValue> dials = new LinkedHashMap<>();
        root.optional("dials").ifPresent(node -> node.called("\"dials\"").fields().forEach(
                (name, value) -> dials.put(name, dial(value.called("the dial \"" + Excerpt.of(name) + "\"")))));
        Map<String, Saved> results = new LinkedHashMap<>();
        List<String> ids = cells.stream().map(Cell::id).toList();
        root.optional("results").ifPresent(node -> node.called("\"results\"").fields().forEach((id, value) -> {
            Saved saved = saved(value.called("the result of cell '" + Excerpt.of(id) + "'"));
            if (ids.contains(id)) {
                results.put(id, saved);
            }
        }));
        return new Notebook(title, cells, dials, results, root.rest("calicograph", "title", "cells", "dials", "results"));
    }

    private static void format(JsonNode node) {
        String digits = node.json() instanceof Json.Num n ? n.digits() : "";
        if (!digits.matches("[1-9][0-9]*")) {
            throw node.called("the format \"calicograph\"").wrong(Notebook.FORMAT + "");
        }
        if (!digits.equals(Integer.toString(Notebook.FORMAT))) {
            throw node.flaw("the notebook is in format " + Excerpt.of(digits, 30) + ", which is newer than this Calicograph; it reads format "
                    + Notebook.FORMAT + ", so use a newer Calicograph");
        }
    }

    private static List<Cell> cells(JsonNode list) {
        List<Cell> cells = new ArrayList<>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (JsonNode node : list.items()) {
            int number = cells.size() + 1;
            JsonNode cell = node.called("cell " + number);
            JsonNode idNode = cell.required("id", "\"a" + number + "\"").called("the id of cell " + number);
            String id = idNode.text();
            if (!CellId.isValid(id)) {
                throw idNode.wrong("1 to 64 letters, digits, hyphens and underscores, a letter or digit first");
            }
            Integer earlier = seen.put(id, number);
            if (earlier != null) {
                throw idNode.flaw("cell " + number + " has the id '" + id + "', which cell " + earlier + " has already; give it another");
            }
            cells.add(cell(cell.called("cell " + number + " ('" + id + "')"), id));
        }
        return cells;
    }

    private static Cell cell(JsonNode node, String id) {
        JsonNode kind = node.required("kind", "\"code\" or \"prose\"");
        if (!(kind.json() instanceof Json.Str word && (word.text().equals("code") || word.text().equals("prose")))) {
            throw kind.wrong("\"code\" or \"prose\"");
        }
        List<String> lines = node.required("text", "[\"…\"]").items().stream().map(JsonNode::text).toList();
        String text = String.join("\n", lines);
        Json.Obj unknown = node.rest("id", "kind", "text");
        return ((Json.Str) kind.json()).text().equals("code") ? new Cell.Code(id, text, unknown) : new Cell.Prose(id, text, unknown);
    }

    private static DialValue dial(JsonNode node) {
        if (node.json() instanceof Json.Num n) {
            return new DialValue.Quantity(n.digits());
        } else if (node.json() instanceof Json.Bool b) {
            return new DialValue.OnOff(b.value());
        } else if (node.json() instanceof Json.Str s) {
            return new DialValue.Words(s.text());
        }
        throw node.wrong("a number, true, false, or a text such as \"7 3/8 in\"");
    }

    private static Saved saved(JsonNode node) {
        String key = node.optional("key").map(JsonNode::text).orElse("");
        Exhibit exhibit = node.optional("exhibit").map(ExhibitJson::read).orElse(Exhibit.NOTHING);
        String output = node.optional("output").map(JsonNode::text).orElse("");
        Optional<String> failure = node.optional("failure").map(JsonNode::text);
        return new Saved(key, exhibit, output, failure, node.rest("key", "exhibit", "output", "failure"));
    }
}
