package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.calicograph.wire.VisiblePackages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WordsCommandTest {

    @TempDir
    Path folder;

    @Test
    void the_page_names_every_public_type_that_a_cell_can_name_and_asks_the_network_for_nothing() throws IOException {
        Path page = folder.resolve("words.html");
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told, true);
        assertThat(Main.run(new String[] {"words", "--out", page.toString()}, to, to)).as(told.toString()).isZero();
        assertThat(Main.run(new String[] {"words", "--out", page.toString()}, to, to)).as("and once more over it: " + told).isZero();
        String html = Files.readString(page);
        for (String room : VisiblePackages.HOUSE) {
            Path sources = Path.of("src/main/java/org/calicograph").resolve(room.replace('.', '/'));
            try (Stream<Path> files = Files.list(sources)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    String type = file.getFileName().toString().replace(".java", "");
                    if (VisiblePackages.MACHINERY.contains(type)) {
                        assertThat(html).as(room).doesNotContain("id=\"w-" + type + "\"");
                    } else if (Files.readString(file).matches("(?s).*\\npublic (final |sealed |static )*(class|record|interface|enum) " + type + "\\b.*")) {
                        assertThat(html).as(room).contains("id=\"w-" + type + "\"");
                    }
                }
            }
        }
        try (Stream<Path> files = Files.list(Path.of("stdlib"))) {
            files.map(f -> f.getFileName().toString().replace(".java", "")).forEach(type -> assertThat(html).contains("id=\"w-" + type + "\""));
        }
        assertThat(html).contains("PiecedBorder GeeseBorder.of(Length width)", "Fit between(Length least, Length greatest)", "Refuses: with the reason, if nothing near fits either",
                "A border of geese whose corners turn", "one of CUT, PIECED, QUILTED, BOUND");
        for (String outside : List.of("src=\"http", "href=\"http", "@import", "url(")) {
            assertThat(html).doesNotContain(outside);
        }
        assertThat(html).doesNotContain("{@", "<p><p>");
    }
}
