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

/**
 * Every notebook that comes with the product, but for those that other tests draw whole: the class, whose slips are to be found, the
 * lessons, and those that the stranger sews.
 */
class ShippedNotebooksTest {

    private static final List<String> DRAWN_ELSEWHERE = List.of("sail-loft", "harbour-light", "ropewalk-workroom", "estuary-settings", "tide-table-quilting", "oyster-beds-colour", "feathered-star",
            "lessons");

    @Test
    void every_cell_of_every_shipped_notebook_draws() throws IOException {
        List<String> all;
        try (Stream<Path> files = Files.walk(Path.of("notebooks"))) {
            all = files.map(Path::toString).filter(f -> f.endsWith(".json") && DRAWN_ELSEWHERE.stream().noneMatch(f::contains)).sorted().toList();
        }
        assertThat(all).hasSizeGreaterThan(28);
        StringWriter told = new StringWriter();
        int code = Main.run(Stream.concat(Stream.of("check"), all.stream()).toArray(String[]::new), new PrintWriter(told, true), new PrintWriter(told, true));
        assertThat(code).as(told.toString()).isZero();
    }
}
