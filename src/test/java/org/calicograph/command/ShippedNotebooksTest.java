package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every notebook that comes with the product, but for the class, whose slips are to be found: those are drawn by its own test. */
class ShippedNotebooksTest {

    @Test
    void every_cell_of_every_shipped_notebook_draws() throws IOException {
        List<String> all;
        try (Stream<Path> files = Files.walk(Path.of("notebooks"))) {
            all = files.map(Path::toString).filter(f -> f.endsWith(".json") && !f.contains("sail-loft")).sorted().toList();
        }
        assertThat(all).hasSizeGreaterThan(30);
        StringWriter told = new StringWriter();
        int code = Main.run(Stream.concat(Stream.of("check"), all.stream()).toArray(String[]::new), new PrintWriter(told, true), new PrintWriter(told, true));
        assertThat(code).as(told.toString()).isZero();
    }
}
