package org.calicograph.notebook;

import java.util.Iterator;
import java.util.Map;

/**
 * Writes JSON with two spaces of indent. Own code rather than the library's, so that numbers stay digit
 * by digit and half a surrogate pair is escaped instead of lost.
 */
final class JsonPrinter {

    private final StringBuilder out = new StringBuilder();

    private JsonPrinter() { }

    static String print(Json json) {
        JsonPrinter printer = new JsonPrinter();
        printer.value(json, 0);
        return printer.out.append('\n').toString();
    }

    private void value(Json json, int depth) {
        if (json instanceof Json.Obj obj) {
            object(obj, depth);
        } else if (json instanceof Json.Arr arr) {
            list(arr, depth);
        } else if (json instanceof Json.Str str) {
            text(str.text());
        } else if (json instanceof Json.Num num) {
            out.append(num.digits());
        } else {
            out.append(json.kind());
        }
    }

    private void object(Json.Obj obj, int depth) {
        if (obj.fields().isEmpty()) {
            out.append("{}");
            return;
        }
        out.append('{');
        Iterator<Map.Entry<String, Json>> entries = obj.fields().entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<String, Json> entry = entries.next();
            line(depth + 1);
            text(entry.getKey());
            out.append(": ");
            value(entry.getValue(), depth + 1);
            out.append(entries.hasNext() ? "," : "");
        }
        line(depth);
        out.append('}');
    }

    private void list(Json.Arr arr, int depth) {
        if (arr.items().isEmpty()) {
            out.append("[]");
            return;
        }
        out.append('[');
        boolean inline = arr.items().stream().allMatch(Json.Num.class::isInstance);
        for (int i = 0; i < arr.items().size(); i++) {
            if (inline) {
                out.append(i == 0 ? "" : " ");
            } else {
                line(depth + 1);
            }
            value(arr.items().get(i), depth + 1);
            out.append(i < arr.items().size() - 1 ? "," : "");
        }
        if (!inline) {
            line(depth);
        }
        out.append(']');
    }

    private void line(int depth) {
        out.append('\n').append("  ".repeat(depth));
    }

    private void text(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < 0x20 || c == 0x7f || c == '\u2028' || c == '\u2029' || isHalf(text, i)) {
                        out.append(String.format("\\u%04x", (int) c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }

    private static boolean isHalf(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
