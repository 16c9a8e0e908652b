package org.calicograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stands in the repository's texts, and what must not. */
class ShippedTextTest {

    private static final Pattern DOMAIN = Pattern.compile("\\b(?:www\\.)?[a-z0-9-]+\\.(?:com|net|co\\.uk|org\\.uk|com\\.au)\\b(?![.(]?[a-z])");

    /** Package names and addresses of XML features are no web pages. */
    private static final Pattern ALLOWED = Pattern.compile("java\\.net|this\\.net|\\.net\\(\\)|com\\.(sun|tngtech|fasterxml|networknt|example)");

    @Test
    void no_text_names_a_web_domain() throws IOException {
        List<String> found = new ArrayList<>();
        for (String root : List.of("src", "stdlib", "notebooks", "docs", "README.md", "DEVELOPERS.md")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                files.filter(p -> p.toString().matches(".*\\.(java|csv|json|md|txt|css|mjs|ftl)")).forEach(p -> collect(p, found));
            }
        }
        assertThat(found).isEmpty();
    }

    private static void collect(Path file, List<String> found) {
        try {
            for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                Matcher m = DOMAIN.matcher(ALLOWED.matcher(line).replaceAll(""));
                while (m.find()) {
                    found.add(file + ": " + m.group());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
