package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HostileNotebooksTest {

    @Test
    void there_are_more_than_a_hundred() {
        assertThat(HostileNotebooks.all()).hasSizeGreaterThan(100);
    }

    @TestFactory
    Stream<DynamicTest> each_is_refused_in_one_line_that_names_the_file() {
        Map<String, byte[]> all = HostileNotebooks.all();
        return all.entrySet().stream().map(e -> DynamicTest.dynamicTest(e.getKey().substring(0, Math.min(100, e.getKey().length())), () -> {
            Throwable refusal = catchThrowable(() -> NotebookReader.read(e.getValue(), "tide.json"));
            assertThat(refusal).isInstanceOf(NotebookException.class);
            String line = refusal.getMessage();
            assertThat(line).startsWith("tide.json").doesNotContain("\n", "\r").hasSizeLessThan(420);
            // A repair follows the thing and the value.
            assertThat(line).containsAnyOf("; ", "and a notebook can have");
            assertThat(line).doesNotContain("com.fasterxml", "java.", "Exception", "Source:");
            if (System.getProperty("hostile.print") != null) {
                System.out.println(e.getKey().substring(0, Math.min(50, e.getKey().length())) + " -> " + line);
            }
        }));
    }
}
