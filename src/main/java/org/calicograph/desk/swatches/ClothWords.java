package org.calicograph.desk.swatches;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.session.CellSource;

/** The words by which working lines speak of a cloth, and texts in which another word stands instead. */
final class ClothWords {

    /** Words of a kind that compile nothing: remarks, and what stands between quotation marks. */
    private static final Pattern SILENT = Pattern.compile("//[^\n]*|(?s)/\\*.*?\\*/|\"(?:\\\\.|[^\"\\\\\n])*\"");

    /** One way to write the change: the texts that become others, and how many words change. */
    record Attempt(Map<String, String> texts, int words) { }

    private ClothWords() { }

    /** The name that working lines give to a cloth: that of the variable which holds it. */
    static Optional<String> variable(List<CellSource> cells, String cloth) {
        for (String holds : List.of("Fabric\\s*\\.\\s*\\w+\\s*\\(\\s*", "[^;\n]*?")) {
            Pattern declared = Pattern.compile("\\b(?:var|Fabric)\\s+(\\w+)\\s*=\\s*" + holds + "\"" + Pattern.quote(cloth) + "\"", Pattern.CASE_INSENSITIVE);
            for (CellSource cell : cells) {
                Matcher m = declared.matcher(cell.text());
                if (m.find()) {
                    return Optional.of(m.group(1));
                }
            }
        }
        return Optional.empty();
    }

    /** Where a name is used, apart from its declaration, in remarks and in quotations. */
    static List<Integer> uses(String text, String name) {
        StringBuilder loud = new StringBuilder(text);
        Matcher silent = SILENT.matcher(text);
        while (silent.find()) {
            for (int i = silent.start(); i < silent.end(); i++) {
                loud.setCharAt(i, ' ');
            }
        }
        List<Integer> places = new ArrayList<>();
        Matcher m = Pattern.compile("(?<![\\w.])" + Pattern.quote(name) + "\\b(?!\\s*\\()(?!\\s*=[^=])").matcher(loud);
        while (m.find()) {
            places.add(m.start());
        }
        return places;
    }

    /** All ways to write one name for another, those that change the least first, and nearer passages before those further off. */
    static List<Attempt> attempts(List<CellSource> cells, String from, String to) {
        List<Attempt> single = new ArrayList<>();
        List<Attempt> whole = new ArrayList<>();
        Map<String, String> everywhere = new LinkedHashMap<>();
        int all = 0;
        for (CellSource cell : cells) {
            List<Integer> uses = uses(cell.text(), from);
            for (int at : uses) {
                single.add(new Attempt(Map.of(cell.id(), written(cell.text(), List.of(at), from, to)), 1));
            }
            if (uses.size() > 1) {
                whole.add(new Attempt(Map.of(cell.id(), written(cell.text(), uses, from, to)), uses.size()));
            }
            if (!uses.isEmpty()) {
                everywhere.put(cell.id(), written(cell.text(), uses, from, to));
                all += uses.size();
            }
        }
        List<Attempt> attempts = new ArrayList<>(single);
        attempts.addAll(whole);
        if (everywhere.size() > 1) {
            attempts.add(new Attempt(Map.copyOf(everywhere), all));
        }
        return attempts;
    }

    private static String written(String text, List<Integer> places, String from, String to) {
        StringBuilder changed = new StringBuilder(text);
        for (int i = places.size() - 1; i >= 0; i--) {
            changed.replace(places.get(i), places.get(i) + from.length(), to);
        }
        return changed.toString();
    }
}
