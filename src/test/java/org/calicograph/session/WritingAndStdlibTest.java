package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Frame;
import org.calicograph.wire.Suggestion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Completion, Javadoc and the stdlib, through a session; and a spare kernel. */
class WritingAndStdlibTest {

    @TempDir
    static Path place;
    private static Studio studio;

    @BeforeAll
    static void open() throws Exception {
        Path stdlib = Files.createDirectories(place.resolve("stdlib"));
        Files.writeString(stdlib.resolve("Ropes.java"), """
                /** Ropes of the walk. */
                public final class Ropes {
                    /** The length of some. */
                    public static Length of(int strands) {
                        if (strands < 3) {
                            throw new IllegalArgumentException("A rope of " + strands + " strands comes apart; give it 3 or more.");
                        }
                        return Length.inches(strands);
                    }
                }
                """.replace("public final class", "import org.calicograph.measure.Length;\npublic final class"));
        Files.writeString(stdlib.resolve("Frayed.java"), "public class Frayed { int a = ; }");
        SessionOptions options = Studio.options(place.resolve("cache")).withStdlib(List.of(place.resolve("none")))
                .beside(place.resolve("evening.json")).forDesk();
        studio = Studio.open(options, Map.of(), "1");
    }

    @AfterAll
    static void close() {
        studio.close();
    }

    @Test
    void a_cell_uses_routines_that_stand_beside_the_notebook() {
        studio.put("Ropes.of(4)").drawAll();
        assertThat(studio.words("a1")).isEqualTo("4 in");
    }

    @Test
    void an_exception_in_a_routine_names_the_file_and_the_cell() {
        studio.put("int n = 2;\nRopes.of(n)").drawAll();
        Failure.Threw threw = studio.failure("a1", Failure.Threw.class);
        assertThat(threw.message()).isEqualTo("A rope of 2 strands comes apart; give it 3 or more.");
        assertThat(threw.at().orElseThrow().line()).isEqualTo(2);
        assertThat(threw.frames()).containsExactly(new Frame("Ropes.java", false, 7, "of"), new Frame("a1", true, 2, ""));
    }

    @Test
    void a_routine_that_does_not_compile_is_told_with_the_kernel() {
        studio.put("1").drawAll();
        KernelState.Ready ready = (KernelState.Ready) studio.session.kernel();
        assertThat(ready.broken()).extracting(b -> Path.of(b.file()).getFileName().toString()).containsExactly("Frayed.java");
        Catalogue catalogue = Studio.get(studio.session.browse());
        assertThat(catalogue.entries()).extracting(Catalogue.Entry::name).contains("Ropes");
    }

    @Test
    void completion_knows_drawn_cells_undrawn_cells_and_the_cell_itself() {
        studio.put("var drawn = inches(2);", "var waiting = List.of(1);", "").draw("a1");
        assertThat(suggest("drawn.pl")).contains("plus(");
        assertThat(suggest("waiting.si")).contains("size()");
        assertThat(suggest("var here = Ropes.of(5);\nhere.ti")).contains("times(");
        assertThat(suggest("Rop")).contains("Ropes");
    }

    private static List<String> suggest(String text) {
        return Studio.get(studio.session.complete("a3", text, text.length())).suggestions().stream().map(Suggestion::insert).toList();
    }

    @Test
    void completion_is_answered_while_a_cell_runs() {
        studio.put("while (true) { }", "");
        var drawing = studio.session.draw("a1");
        studio.await("the cell at work", () -> studio.session.state("a1") instanceof CellState.Drawing);
        String text = "inches(1).ti";
        assertThat(Studio.get(studio.session.complete("a2", text, text.length())).suggestions()).isNotEmpty();
        studio.session.stop();
        Studio.get(drawing);
    }

    @Test
    void a_call_is_explained_with_the_javadoc_of_the_routine() {
        studio.put("");
        assertThat(Studio.get(studio.session.explain("a1", "Ropes.of(", 9))).singleElement().satisfies(s -> {
            assertThat(s.declaration()).isEqualTo("Length Ropes.of(int strands)");
            assertThat(s.about()).isEqualTo("The length of some.");
        });
    }

    @Test
    void a_spare_kernel_takes_over_from_one_that_is_killed() {
        studio.put("int a = 2;", "a + 1").drawAll();
        for (int i = 0; i < 3; i++) {
            studio.session.restart();
            studio.draw("a2");
            assertThat(studio.words("a2")).isEqualTo("3");
        }
    }
}
