package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Failure;
import org.junit.jupiter.api.Test;

class DependenciesTest {

    /** Written as {@code cell: declared, … < read, … ! written, …}. */
    private static CellScan scan(String text) {
        String[] parts = text.split("[:<!]", -1);
        String writes = text.contains("!") ? parts[parts.length - 1] : "";
        return new CellScan(parts[0].strip(), words(parts[1]).stream().map(w -> new CellScan.Declared(w, w)).toList(),
                text.contains("<") ? words(parts[2]) : List.of(), words(writes));
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.strip().split("[ ,]+")).filter(w -> !w.isEmpty()).toList();
    }

    private static Dependencies of(String... scans) {
        return Dependencies.of(Arrays.stream(scans).map(DependenciesTest::scan).toList());
    }

    @Test
    void cells_that_need_nothing_keep_the_order_of_the_notebook() {
        assertThat(of("p: a", "q: b", "r: c").order()).containsExactly("p", "q", "r");
    }

    @Test
    void a_cell_comes_behind_those_that_it_needs() {
        assertThat(of("p: a < b", "q: b < c", "r: c").order()).containsExactly("r", "q", "p");
    }

    @Test
    void names_that_no_cell_declares_are_nobodys() {
        assertThat(of("p: a < Star, System").needs().get("p")).isEmpty();
    }

    @Test
    void a_reader_below_a_writer_comes_behind_it_and_one_above_does_not_need_it() {
        Dependencies graph = of("o: x", "above: < x", "w: ! x", "below: < x");
        assertThat(graph.needs().get("below")).containsExactlyInAnyOrder("o", "w");
        assertThat(graph.needs().get("above")).containsExactly("o");
    }

    @Test
    void dependents_are_found_through_others() {
        assertThat(of("p: a", "q: b < a", "r: < b", "s: z").dependents("p")).containsExactly("q", "r");
    }

    @Test
    void the_first_of_two_declarations_counts() {
        Dependencies graph = of("p: a", "q: a", "r: < a");
        assertThat(graph.problems()).containsOnlyKeys("q");
        assertThat(graph.needs().get("r")).containsExactly("p");
    }

    @Test
    void a_circle_names_its_cells_and_names_and_leaves_others_out() {
        Dependencies graph = of("p: a < b", "q: b < a", "r: < a", "s: c");
        assertThat(graph.problems()).containsOnlyKeys("p", "q");
        assertThat(graph.problems().get("p")).isEqualTo(new Failure.InCircle(List.of("p", "q"), List.of("a", "b")));
        assertThat(graph.order()).containsExactlyInAnyOrder("p", "q", "r", "s");
    }

    /** By a second road: powers of the table of who needs whom, on random notebooks with and without circles. */
    @Test
    void dependents_needs_and_circles_are_those_of_the_closed_table() {
        java.util.Random random = new java.util.Random(8);
        int circles = 0;
        for (int t = 0; t < 300; t++) {
            int n = 2 + random.nextInt(9);
            String[] cells = new String[n];
            boolean[][] far = new boolean[n][n];
            boolean forward = t % 2 == 0;
            for (int i = 0; i < n; i++) {
                StringBuilder reads = new StringBuilder();
                for (int j = 0; j < n; j++) {
                    if (i != j && (forward ? j < i : true) && random.nextInt(n) == 0) {
                        far[i][j] = true;
                        reads.append(" a").append(j);
                    }
                }
                cells[i] = "c" + i + ": a" + i + " <" + reads;
            }
            Dependencies graph = of(cells);
            for (int k = 0; k < n; k++) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        far[i][j] |= far[i][k] && far[k][j];
                    }
                }
            }
            for (int i = 0; i < n; i++) {
                List<String> needed = new java.util.ArrayList<>();
                List<String> dependents = new java.util.ArrayList<>();
                for (int j = 0; j < n; j++) {
                    if (far[i][j]) {
                        needed.add("c" + j);
                    }
                    if (far[j][i] && j != i) {
                        dependents.add("c" + j);
                    }
                }
                assertThat(graph.needed(List.of("c" + i))).containsExactlyInAnyOrderElementsOf(needed);
                assertThat(graph.dependents("c" + i)).containsExactlyInAnyOrderElementsOf(dependents);
                assertThat(graph.dependents("c" + i).stream().map(graph.order()::indexOf)).isSorted();
                assertThat(graph.problems().containsKey("c" + i)).isEqualTo(far[i][i]);
                circles += far[i][i] ? 1 : 0;
            }
        }
        assertThat(circles).isGreaterThan(100);
    }
}
