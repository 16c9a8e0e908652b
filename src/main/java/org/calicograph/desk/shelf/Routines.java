package org.calicograph.desk.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.wire.Catalogue;

/** Searching the catalogue, and calls that try a routine out. */
final class Routines {

    private static final Pattern STATIC = Pattern.compile("^static (?:<[^>]*> )?[\\w.<>\\[\\], ?]+? (\\w+)\\(([^)]*)\\)");

    private static final Pattern BLOCK = Pattern.compile("^Block (\\w+)\\(Length \\w+\\)$");

    private Routines() { }

    /** Entries in which every word of the search occurs, in a name or in what is said about it. */
    static List<Catalogue.Entry> found(Catalogue catalogue, String search) {
        String[] words = search.toLowerCase(Locale.ROOT).strip().split("\\s+");
        return catalogue.entries().stream().filter(entry -> {
            StringBuilder all = new StringBuilder(entry.name() + " " + entry.about());
            entry.methods().forEach(m -> all.append(' ').append(m.declaration()).append(' ').append(m.about()));
            String text = all.toString().toLowerCase(Locale.ROOT);
            for (String word : words) {
                if (!text.contains(word)) {
                    return false;
                }
            }
            return true;
        }).toList();
    }

    /** A call with plain values for what it takes, such as {@code NinePatch.block(inches(8))}; nothing for a class without a static method. */
    static List<String> calls(Catalogue.Entry entry) {
        List<String> calls = new ArrayList<>();
        for (Catalogue.Routine routine : entry.methods()) {
            Matcher m = STATIC.matcher(routine.declaration());
            if (m.find()) {
                List<String> values = new ArrayList<>();
                for (String parameter : m.group(2).isBlank() ? new String[0] : m.group(2).split(",")) {
                    values.add(value(parameter.strip().replaceFirst("^final ", "")));
                }
                calls.add(entry.name() + "." + m.group(1) + "(" + String.join(", ", values) + ")");
            }
        }
        return calls;
    }

    /** Texts to be tried in turn for a picture of the class: its calls, what those give, and a border around a square. */
    static List<String> looks(Catalogue.Entry entry) {
        List<String> texts = new ArrayList<>(calls(entry));
        for (String call : calls(entry)) {
            for (Catalogue.Routine routine : entry.methods()) {
                Matcher m = BLOCK.matcher(routine.declaration());
                if (m.find()) {
                    texts.add(call + "." + m.group(1) + "(inches(8))");
                }
            }
            texts.add("Medallion.around(EconomyPatch.block(inches(32))).with(" + call + ")");
        }
        return texts;
    }

    private static String value(String parameter) {
        String type = parameter.replaceFirst("\\s+\\w+$", "");
        return switch (type) {
            case "Length" -> "inches(8)";
            case "int", "long" -> parameter.endsWith(" points") ? "8" : "4";
            case "double" -> "0.5";
            case "boolean" -> "true";
            case "String" -> "\"name\"";
            case "Angle" -> "Angle.degrees(45)";
            default -> "/* " + parameter + " */";
        };
    }
}
