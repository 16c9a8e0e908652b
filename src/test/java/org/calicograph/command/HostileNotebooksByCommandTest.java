package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.calicograph.notebook.HostileNotebooks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HostileNotebooksByCommandTest {

    @TempDir
    private Path folder;

    @Test
    void each_of_a_hundred_hostile_notebooks_gets_one_clear_line_and_exit_code_2() throws IOException {
        Map<String, byte[]> all = HostileNotebooks.all();
        assertThat(all).hasSizeGreaterThanOrEqualTo(100);
        for (Map.Entry<String, byte[]> hostile : all.entrySet()) {
            Path file = folder.resolve("hostile.json");
            Files.write(file, hostile.getValue());
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(new String[] {"check", file.toString()}, new PrintWriter(out, true), new PrintWriter(err, true));
            assertThat(code).as(hostile.getKey()).isEqualTo(2);
            assertThat(out.toString()).as(hostile.getKey()).isEmpty();
            assertThat(err.toString().strip()).as(hostile.getKey()).startsWith("calicograph: " + file).doesNotContain("\n", "\tat ", "Exception");
            assertThat(Files.readAllBytes(file)).as(hostile.getKey()).isEqualTo(hostile.getValue());
        }
    }
}
