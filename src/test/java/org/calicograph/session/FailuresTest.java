package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However a cell ends, it comes to a clear state, and the others keep theirs. */
class FailuresTest {

    @TempDir
    static Path cache;
    private static Studio studio;

    @BeforeAll
    static void open() {
        studio = Studio.open(Studio.options(cache).withHeap(128).withTimeLimit(Duration.ofSeconds(20)), Map.of());
    }

    @AfterAll
    static void close() {
        studio.close();
    }

    private static void stopped(String text) {
        studio.put("int a = 4;", text, "a + 1").draw("a1", "a3");
        var drawing = studio.session.draw("a2");
        studio.await("the cell at work", () -> studio.session.state("a2") instanceof CellState.Drawing);
        studio.session.stop();
        Studio.get(drawing);
        studio.failure("a2", Failure.Stopped.class);
        assertThat(studio.words("a3")).isEqualTo("5");
        studio.draw("a3");
        assertThat(studio.words("a3")).isEqualTo("5");
    }

    @Test
    void after_a_stop_nothing_is_drawn_until_it_is_asked_for() {
        try (Studio quick = Studio.open(Studio.options(cache), Map.of(), "int n = 1;", "while (n > 0) { }", "n + 1")) {
            quick.draw("a1");
            quick.session.draw("a2");
            quick.await("the cell at work", () -> quick.session.state("a2") instanceof CellState.Drawing);
            quick.session.edit("a1", "int n = 2;");
            quick.session.drawStale();
            quick.session.draw("a2");
            quick.await("the changed cell waits", () -> quick.session.state("a1") instanceof CellState.Waiting);
            quick.session.stop();
            quick.await("nothing is at work", () -> quick.session.states().values().stream().noneMatch(CellState::pending)
                    && quick.session.kernel() instanceof KernelState.Ready);
            // A question is answered behind all that was to be done before it.
            Studio.get(quick.session.check("a3", "n + 2"));
            assertThat(quick.session.states().values()).noneMatch(CellState::pending);
            assertThat(quick.session.state("a2")).isNotInstanceOf(CellState.Done.class);
            quick.draw("a3");
            assertThat(quick.words("a3")).isEqualTo("3");
        }
    }

    @Test
    void a_value_whose_to_string_gives_null_is_shown_as_one_without_words() {
        studio.put("new Object() { public String toString() { return null; } }", "5").drawAll();
        assertThat(studio.words("a1")).contains("a value without words");
        assertThat(studio.words("a2")).isEqualTo("5");
    }

    @Test
    void a_cell_that_takes_the_output_away_takes_it_from_no_other() {
        studio.put("System.setOut(null);", "System.out.println(\"heard\");").drawAll();
        assertThat(studio.session.state("a2")).isInstanceOfSatisfying(CellState.Done.class, done -> assertThat(done.output()).contains("heard"));
    }

    @Test
    void letters_that_steer_a_terminal_are_not_passed_on() {
        studio.put("throw new RuntimeException(\"a\\u001b[31mred\\u0007\");").drawAll();
        assertThat(studio.failure("a1", Failure.Threw.class).message()).doesNotContain("\u001b").doesNotContain("\u0007").contains("red");
    }

    @Test
    void processes_that_a_cell_started_end_with_the_kernel() {
        ProcessHandle started;
        try (Studio quick = Studio.open(Studio.options(cache), Map.of(), "new ProcessBuilder(\"sleep\", \"300\").start().pid()")) {
            quick.drawAll();
            started = ProcessHandle.of(Long.parseLong(quick.words("a1"))).orElseThrow();
            assertThat(started.isAlive()).isTrue();
        }
        Studio.get(started.onExit().thenApply(p -> p));
        assertThat(started.isAlive()).isFalse();
    }

    @Test
    void a_loop_is_stopped() {
        stopped("while (true) { }");
    }

    @Test
    void a_loop_that_catches_everything_is_stopped() {
        stopped("while (true) { try { while (true) { } } catch (Throwable t) { } }");
    }

    @Test
    void a_sleep_is_stopped() {
        stopped("Thread.sleep(1_000_000);");
    }

    @Test
    void a_loop_within_a_method_of_another_cell_is_stopped() {
        stopped("IntStream.iterate(0, i -> i).filter(i -> i > 0).findFirst()");
    }

    @Test
    void a_cell_past_its_time_limit_is_stopped_and_says_so() {
        try (Studio quick = Studio.open(Studio.options(cache).withTimeLimit(Duration.ofMillis(700)), Map.of(), "while (true) { }", "3")) {
            quick.drawAll();
            assertThat(quick.failure("a1", Failure.TimedOut.class).message()).contains("time limit of 700 ms");
            assertThat(quick.words("a2")).isEqualTo("3");
        }
    }

    @Test
    void exit_fails_the_cell_and_values_are_computed_again_when_they_are_needed() {
        studio.put("int a = 4;", "System.exit(3);", "a + 1").draw("a1");
        studio.draw("a2");
        assertThat(studio.failure("a2", Failure.ExitedKernel.class).code()).isEqualTo(3);
        assertThat(studio.words("a1")).isEqualTo("4");
        studio.draw("a3");
        assertThat(studio.words("a3")).isEqualTo("5");
        assertThat(studio.session.state("a1")).isInstanceOf(CellState.Done.class);
    }

    @Test
    void a_crash_of_the_process_fails_the_cell_and_names_the_signal() {
        studio.put("int a = 4;", "ProcessHandle.current().pid(); new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid()).start().waitFor(); "
                + "Thread.sleep(100_000);", "a + 1").drawAll();
        assertThat(studio.failure("a2", Failure.KernelDied.class).message()).contains("signal 9");
        assertThat(studio.words("a3")).isEqualTo("5");
    }

    @Test
    void too_much_memory_fails_the_cell_and_names_the_heap() {
        studio.put("int a = 4;", "var hoard = new ArrayList<long[]>();\nwhile (true) hoard.add(new long[1_000_000]);", "a + 1").drawAll();
        assertThat(studio.failure("a2", Failure.OutOfMemory.class).message()).contains("128 MB");
        assertThat(studio.words("a3")).isEqualTo("5");
    }

    @Test
    void calls_without_end_fail_the_cell_at_the_line_that_calls() {
        studio.put("int deep(int n) {\n    return 1 + deep(n + 1);\n}\n\ndeep(0)", "5").drawAll();
        Failure.TooDeep failure = studio.failure("a1", Failure.TooDeep.class);
        assertThat(failure.at()).contains(new Place(2, 5));
        assertThat(studio.words("a2")).isEqualTo("5");
    }

    @Test
    void a_value_whose_to_string_throws_fails_its_cell_alone() {
        studio.put("record Bad(int n) {\n    public String toString() {\n        throw new IllegalStateException(\"no words\");\n    }\n}\nnew Bad(1)", "5").drawAll();
        Failure.ShowFailed failure = studio.failure("a1", Failure.ShowFailed.class);
        assertThat(failure.message()).isEqualTo("The value of this cell, a Bad, can't be shown: IllegalStateException: no words");
        assertThat(failure.at()).contains(new Place(3, 9));
        assertThat(studio.words("a2")).isEqualTo("5");
    }

    @Test
    void a_drawable_whose_show_throws_fails_its_cell_alone() {
        studio.put("Drawable d = () -> { throw new IllegalArgumentException(\"Give it a size.\"); };\nd", "5").drawAll();
        assertThat(studio.failure("a1", Failure.ShowFailed.class).thrown().said()).isEqualTo("Give it a size.");
        assertThat(studio.words("a2")).isEqualTo("5");
    }

    @Test
    void a_flood_of_output_is_cut_and_says_so() {
        studio.put("for (int i = 0; i < 400_000; i++) System.out.println(\"flood\");\n7").drawAll();
        String output = studio.done("a1").output();
        assertThat(output).hasSizeLessThan(1_100_000).contains("… cut here: ").startsWith("flood\n");
        assertThat(studio.words("a1")).isEqualTo("7");
    }

    @Test
    void output_that_comes_before_a_failure_is_kept() {
        studio.put("System.out.println(\"before\");\nint z = 0;\nSystem.err.println(1 / z);").drawAll();
        studio.failure("a1", Failure.Threw.class);
        assertThat(((CellState.Failed) studio.session.state("a1")).output()).isEqualTo("before\n");
    }

    @Test
    void a_stop_takes_waiting_cells_off_the_list() {
        studio.put("while (true) { }", "5");
        var drawing = studio.session.drawAll();
        studio.await("the cell at work", () -> studio.session.state("a1") instanceof CellState.Drawing);
        studio.session.stop();
        Studio.get(drawing);
        studio.failure("a1", Failure.Stopped.class);
        assertThat(studio.session.state("a2")).isInstanceOf(CellState.Undrawn.class);
    }

    @Test
    void a_killed_kernel_loses_no_result() {
        studio.put("int a = 6;", "a * 7").drawAll();
        studio.session.kill();
        assertThat(studio.words("a2")).isEqualTo("42");
        studio.draw("a2");
        assertThat(studio.words("a2")).isEqualTo("42");
    }

    /** Expressions don't parse as members, and the compiler stops reporting after its hundredth objection unless told otherwise. */
    @Test
    void three_hundred_cells_are_read_together_and_each_says_what_it_declares() {
        String[] texts = new String[300];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = "int n" + i + " = " + (i == 0 ? "1" : i % 7 == 0 ? "n" + (i - 1) + " + 1" : "2") + ";\nn" + i;
        }
        try (Studio many = Studio.open(Studio.options(cache), Map.of(), texts)) {
            many.draw("a300");
            assertThat(many.words("a300")).isEqualTo("2");
            assertThat(many.session.needs().get("a8")).containsExactly("a7");
            assertThat(many.session.states().values()).noneMatch(s -> s instanceof CellState.Failed);
        }
    }
}
