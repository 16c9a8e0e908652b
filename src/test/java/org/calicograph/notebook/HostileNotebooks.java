package org.calicograph.notebook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files that are no good notebooks, by what is wrong with them; each must be refused in one clear line. */
public final class HostileNotebooks {

    private static final String GOOD = NotebookWriter.write(Notebook.titled("Tide Table",
            Cell.prose("a1", "# Tide Table\nStrips from the sail loft."),
            Cell.code("a2", "int strips = dial(\"strips\", 2, 9, 5);"))
            .withDial("strips", DialValue.of("6")).withResult("a2", Saved.shown("00", org.calicograph.drawing.Exhibit.words("5"), "")));

    private HostileNotebooks() { }

    /** More than a hundred, in a fixed order. */
    public static Map<String, byte[]> all() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        cutShort(all);
        wrongTypes(all);
        missing(all);
        notJson(all);
        bytes(all);
        big(all);
        return all;
    }

    private static void cutShort(Map<String, byte[]> all) {
        // The last brace and line feed are the least that can be missing.
        int last = GOOD.length() - 2;
        for (int i = 0; i <= 40; i++) {
            int at = last * i / 40;
            all.put("cut short after " + at + " characters", utf8(GOOD.substring(0, at)));
        }
    }

    private static void wrongTypes(Map<String, byte[]> all) {
        for (String value : List.of("null", "true", "7", "\"words\"", "[]", "[[]]", "{}")) {
            boolean text = value.startsWith("\"");
            boolean list = value.startsWith("[");
            put(all, "the whole file is " + value, value);
            if (!value.equals("7")) {
                put(all, "the format is " + value, GOOD.replace("\"calicograph\": 1", "\"calicograph\": " + value));
            }
            if (!text) {
                put(all, "the title is " + value, GOOD.replace("\"Tide Table\"", value));
                put(all, "an id is " + value, GOOD.replace("\"a1\"", value));
                put(all, "a line of text is " + value, GOOD.replace("\"# Tide Table\"", value));
            }
            put(all, "a kind is " + value, GOOD.replace("\"prose\"", value));
            if (!list) {
                put(all, "the cells are " + value, notebook(value, "{}", "{}"));
                put(all, "a cell's text is " + value, notebook("[{\"id\":\"a1\",\"kind\":\"code\",\"text\":" + value + "}]", "{}", "{}"));
            }
            if (!value.equals("{}")) {
                put(all, "a cell is " + value, notebook("[" + value + "]", "{}", "{}"));
                put(all, "the dials are " + value, notebook("[]", value, "{}"));
                put(all, "the results are " + value, notebook("[]", "{}", value));
                put(all, "a result is " + value, notebook("[]", "{}", "{\"a1\": " + value + "}"));
            }
            if (value.equals("null") || list || value.equals("{}")) {
                put(all, "a dial's value is " + value, notebook("[]", "{\"strips\": " + value + "}", "{}"));
            }
        }
    }

    private static void missing(Map<String, byte[]> all) {
        put(all, "no format", "{\"title\": \"x\", \"cells\": []}");
        put(all, "no title", "{\"calicograph\": 1, \"cells\": []}");
        put(all, "no cells", "{\"calicograph\": 1, \"title\": \"x\"}");
        put(all, "a cell without an id", notebook("[{\"kind\":\"code\",\"text\":[]}]", "{}", "{}"));
        put(all, "a cell without a kind", notebook("[{\"id\":\"a1\",\"text\":[]}]", "{}", "{}"));
        put(all, "a cell without a text", notebook("[{\"id\":\"a1\",\"kind\":\"code\"}]", "{}", "{}"));
        put(all, "two cells with one id", GOOD.replace("\"a2\"", "\"a1\""));
        put(all, "a newer format", GOOD.replace("\"calicograph\": 1", "\"calicograph\": 2"));
        put(all, "a far newer format", GOOD.replace("\"calicograph\": 1", "\"calicograph\": 99999999999999999999"));
        put(all, "format 0", GOOD.replace("\"calicograph\": 1", "\"calicograph\": 0"));
        put(all, "format 1.5", GOOD.replace("\"calicograph\": 1", "\"calicograph\": 1.5"));
        put(all, "a kind in capitals", GOOD.replace("\"prose\"", "\"PROSE\""));
        for (String id : List.of("", " a1", "a/1", "../a1", "a1\\n", "ä1", "-a1", "a".repeat(65), "a1.", "..")) {
            put(all, "the id '" + id + "'", GOOD.replace("\"a1\"", "\"" + id + "\""));
        }
        put(all, "a field twice", "{\"calicograph\": 1, \"title\": \"x\", \"title\": \"y\", \"cells\": []}");
        put(all, "a dial twice", notebook("[]", "{\"strips\": 1, \"strips\": 2}", "{}"));
        String result = "{\"a1\": {\"key\": \"\", \"exhibit\": %s}}";
        for (String exhibit : List.of("[]", "{\"words\": 5}", "{\"table\": {\"columns\": [\"x\"], \"rows\": [[]]}}", "{\"table\": {\"rows\": []}}",
                "{\"several\": {}}", "{\"picture\": {}}", "{\"picture\": {\"parts\": 5}}", "{\"picture\": {\"paths\": []}}",
                "{\"picture\": {\"paths\": [\"L 0 0\"]}}", "{\"picture\": {\"paths\": [\"M 0 0 L 1\"]}}", "{\"picture\": {\"paths\": [\"M 0 0 Z\"]}}",
                "{\"picture\": {\"paths\": [\"M 0 0 L NaN 1\"]}}", "{\"picture\": {\"paths\": [\"M 0 0 A 0 1 1\"]}}",
                "{\"picture\": {\"paths\": [\"M 0 0 L 1 1\"], \"fill\": \"mauve\"}}", "{\"picture\": {\"paths\": [\"M 0 0 L 1 1\"], \"fill\": \"#fff\", \"opacity\": 7}}",
                "{\"picture\": {\"parts\": [], \"role\": \"ghost\"}}", "{\"picture\": {\"parts\": [], \"role\": \"figure\"}}",
                "{\"picture\": {\"parts\": [], \"role\": \"figure\", \"said\": \" \"}}", "{\"picture\": {\"parts\": [], \"role\": \"row\", \"continued\": 1}}",
                "{\"picture\": {\"parts\": [], \"transform\": [1, 0]}}", "{\"picture\": {\"parts\": [], \"transform\": [1, 0, 0, 1, 1e999, 0]}}",
                "{\"picture\": {\"lettering\": \"A\", \"at\": [0, 0], \"size\": -1, \"anchor\": \"start\", \"colour\": \"#000\"}}",
                "{\"picture\": {\"lettering\": \"A\", \"at\": [0, 0], \"size\": 1, \"anchor\": \"left\", \"colour\": \"#000\"}}")) {
            put(all, "the saved exhibit " + exhibit, notebook("[{\"id\":\"a1\",\"kind\":\"code\",\"text\":[]}]", "{}", String.format(result, exhibit)));
        }
    }

    private static void notJson(Map<String, byte[]> all) {
        put(all, "an empty file", "");
        put(all, "spaces alone", "  \n \t\n");
        put(all, "prose", "Dear neighbours, the drafting evening is moved to Thursday.");
        put(all, "a page of HTML", "<!DOCTYPE html><html><body></body></html>");
        put(all, "a comment", "// notebook\n" + GOOD);
        put(all, "single quotes", GOOD.replace('"', '\''));
        put(all, "a comma too many", GOOD.replace("\"results\": {", "\"results\": {,"));
        put(all, "a comma at the end", "{\"calicograph\": 1, \"title\": \"x\", \"cells\": [],}");
        put(all, "a comma too few", GOOD.replace("1,\n", "1\n"));
        put(all, "a bare name", GOOD.replace("\"title\"", "title"));
        put(all, "a number with a leading zero", GOOD.replace("\"calicograph\": 1", "\"calicograph\": 01"));
        put(all, "not a number", notebook("[]", "{\"strips\": NaN}", "{}"));
        put(all, "half a number", notebook("[]", "{\"strips\": 1.}", "{}"));
        put(all, "a line feed within a text", GOOD.replace("Tide Table\"", "Tide\nTable\""));
        put(all, "an unknown escape", GOOD.replace("Tide Table\"", "Tide\\qTable\""));
        put(all, "a broken escape", GOOD.replace("Tide Table\"", "Tide\\u12\""));
        put(all, "a wrong bracket", GOOD.replaceFirst("\\]", "}"));
        put(all, "two notebooks in one file", GOOD + GOOD);
        put(all, "a merge conflict", "<<<<<<< ours\n" + GOOD + "=======\n" + GOOD + ">>>>>>> theirs\n");
    }

    private static void bytes(Map<String, byte[]> all) {
        all.put("latin-1", GOOD.replace("Tide", "T\u00efde").getBytes(StandardCharsets.ISO_8859_1));
        all.put("UTF-16", GOOD.getBytes(StandardCharsets.UTF_16));
        all.put("UTF-16 little-endian without a mark", GOOD.getBytes(StandardCharsets.UTF_16LE));
        all.put("a surrogate encoded in UTF-8", with(GOOD, 0xED, 0xA0, 0x80));
        all.put("an overlong slash", with(GOOD, 0xC0, 0xAF));
        all.put("half a character at the end", concat(utf8(GOOD), new byte[] {(byte) 0xE2, (byte) 0x82}));
        all.put("a NUL in the title", with(GOOD, 0));
        all.put("NULs alone", new byte[4096]);
        all.put("a NUL after the end", concat(utf8(GOOD), new byte[] {0}));
        all.put("the start of a PNG", new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13});
        all.put("a zip", new byte[] {'P', 'K', 3, 4, 20, 0, 8, 8});
    }

    private static void big(Map<String, byte[]> all) {
        put(all, "a hundred thousand brackets", "[".repeat(100_000));
        put(all, "a hundred thousand objects", "{\"a\":".repeat(100_000));
        put(all, "deep within a field that isn't known", "{\"calicograph\": 1, \"title\": \"x\", \"cells\": [], \"more\": "
                + "[".repeat(300) + "]".repeat(300) + "}");
        put(all, "a cell of a megabyte cut short", "{\"calicograph\": 1, \"title\": \"x\", \"cells\": [{\"id\":\"a1\",\"kind\":\"code\",\"text\":[\""
                + "x".repeat(1 << 20));
        put(all, "a cell of a megabyte of the wrong type", notebook("[{\"id\":\"a1\",\"kind\":\"code\",\"text\":\"" + "x".repeat(1 << 20) + "\"}]", "{}", "{}"));
        put(all, "a name of a megabyte twice", notebook("[]", "{\"" + "n".repeat(1 << 20) + "\": 1, \"" + "n".repeat(1 << 20) + "\": 1}", "{}"));
        put(all, "an id of a megabyte", GOOD.replace("\"a1\"", "\"" + "a".repeat(1 << 20) + "\""));
        put(all, "a number of a megabyte for a format", GOOD.replace("\"calicograph\": 1", "\"calicograph\": " + "1".repeat(1 << 20)));
        all.put("a file past the limit", new byte[(int) NotebookReader.MOST_BYTES + 1]);
    }

    private static String notebook(String cells, String dials, String results) {
        return "{\n  \"calicograph\": 1,\n  \"title\": \"x\",\n  \"cells\": " + cells + ",\n  \"dials\": " + dials + ",\n  \"results\": " + results + "\n}\n";
    }

    private static void put(Map<String, byte[]> all, String name, String text) {
        all.put(name, utf8(text));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] with(String text, int... inserted) {
        int at = text.indexOf("Tide");
        byte[] middle = new byte[inserted.length];
        for (int i = 0; i < inserted.length; i++) {
            middle[i] = (byte) inserted[i];
        }
        return concat(concat(utf8(text.substring(0, at)), middle), utf8(text.substring(at)));
    }

    private static byte[] concat(byte[] a, byte[] b) {
        byte[] both = java.util.Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }

    /** The names, for tests that report by name. */
    public static List<String> names() {
        return new ArrayList<>(all().keySet());
    }
}
