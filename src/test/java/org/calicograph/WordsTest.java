package org.calicograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One word for one thing: {@code docs/words.md} is the table, and nothing that a person reads departs from it. */
class WordsTest {

    private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\])*)\"");
    /** What the trade or a standard calls so, and words in quotation marks that stand for Java's own. */
    private static final Pattern TRADE = Pattern.compile("value stud(?:y|ies)|`[^`]*`|System\\.exit|in no process|process of (?:its|their) own");

    private record Barred(String word, String instead) { }

    /** By where they are barred: 'desk' or 'everywhere'. */
    private static Map<String, List<Barred>> table() throws IOException {
        Map<String, List<Barred>> barred = new LinkedHashMap<>(Map.of("desk", new ArrayList<>(), "everywhere", new ArrayList<>()));
        for (String line : Files.readAllLines(Path.of("docs/words.md"))) {
            String[] cells = line.split("\\|", -1);
            if (cells.length == 6 && barred.containsKey(cells[4].strip())) {
                Arrays.stream(cells[3].split(",")).map(String::strip).filter(w -> !w.isEmpty())
                        .forEach(w -> barred.get(cells[4].strip()).add(new Barred(w, cells[1].strip())));
            }
        }
        return barred;
    }

    /** Sentences in the strings of a source: those with a space between letters, which names of files, styles and ids don't have. */
    private static List<String> sentences(Path source) throws IOException {
        List<String> found = new ArrayList<>();
        for (String line : Files.readAllLines(source)) {
            String stripped = line.strip();
            if (stripped.startsWith("*") || stripped.startsWith("/*") || stripped.startsWith("//")) {
                continue;
            }
            Matcher m = LITERAL.matcher(line);
            while (m.find()) {
                if (m.group(1).matches(".*[A-Za-z,.] [A-Za-z'].*") && !m.group(1).contains("\\\\") && !m.group(1).contains("-fx-")) {
                    found.add(m.group(1));
                }
            }
        }
        return found;
    }

    private static void look(String where, String text, List<Barred> barred, List<String> faults) {
        String plain = TRADE.matcher(text).replaceAll("");
        for (Barred each : barred) {
            if (Pattern.compile("(?i)(?<![A-Za-z-])" + Pattern.quote(each.word()) + "s?(?![A-Za-z-])").matcher(plain).find()) {
                faults.add(where + ": '" + text + "' has '" + each.word() + "'; the word is '" + each.instead() + "'");
            }
        }
    }

    private static List<Path> files(String root, String pattern) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of(root))) {
            return all.filter(Files::isRegularFile).filter(p -> p.toString().matches(pattern)).sorted().toList();
        }
    }

    @Test
    void no_sentence_of_the_desk_has_a_word_of_machinery() throws IOException {
        List<String> faults = new ArrayList<>();
        List<Barred> barred = new ArrayList<>(table().get("desk"));
        barred.addAll(table().get("everywhere"));
        assertThat(barred).hasSizeGreaterThan(35);
        int read = 0;
        for (Path source : files("src/main/java/org/calicograph/desk", ".*\\.java")) {
            if (source.endsWith("Look.java")) {
                continue; // names of typefaces
            }
            for (String sentence : sentences(source)) {
                read++;
                look(source.getFileName().toString(), sentence, barred, faults);
            }
        }
        assertThat(faults).isEmpty();
        assertThat(read).isGreaterThan(150);
    }

    @Test
    void no_command_notebook_routine_or_page_departs_from_the_table() throws IOException {
        List<String> faults = new ArrayList<>();
        List<Barred> barred = table().get("everywhere");
        List<Path> sources = new ArrayList<>(files("src/main/java/org/calicograph", ".*\\.java"));
        sources.addAll(files("stdlib", ".*\\.java"));
        for (Path source : sources) {
            for (String sentence : sentences(source)) {
                look(source.toString(), sentence, barred, faults);
            }
        }
        List<Path> pages = new ArrayList<>(files("docs", ".*\\.md"));
        pages.addAll(files("notebooks", ".*\\.json"));
        pages.add(Path.of("README.md"));
        pages.removeIf(p -> p.endsWith("words.md"));
        for (Path page : pages) {
            for (String line : Files.readAllLines(page, StandardCharsets.UTF_8)) {
                look(page.toString(), line.strip(), barred, faults);
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void every_word_of_the_table_that_the_desk_shows_is_told_in_its_page() throws IOException {
        String page = Files.readString(Path.of("docs/desk.md")).toLowerCase(Locale.ROOT);
        for (String word : List.of("book", "wall", "pin", "rail", "tray", "bolts", "needle", "squint", "shelf", "slip", "note", "passage", "working lines")) {
            assertThat(page).contains(word);
        }
    }
}
