package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;

class NotebookLaws {

    private static Notebook read(String text) throws NotebookException {
        return NotebookReader.read(text.getBytes(StandardCharsets.UTF_8), "laws.json");
    }

    @Property(tries = 300)
    void reading_what_was_written_gives_an_equal_notebook(@ForAll("notebooks") Notebook notebook) throws NotebookException {
        String text = NotebookWriter.write(notebook);
        assertThat(read(text)).isEqualTo(notebook);
        assertThat(NotebookWriter.write(read(text))).isEqualTo(text);
        assertThat(text).endsWith("}\n").doesNotContain("\r");
    }

    @Property(tries = 100)
    void what_is_written_conforms_to_the_schema(@ForAll("notebooks") Notebook notebook) {
        assertThat(NotebookSchema.objections(NotebookWriter.write(notebook))).isEmpty();
    }

    @Property(tries = 300)
    void joining_undoes_splitting(@ForAll("notebooks") Notebook notebook, @ForAll int seed) {
        List<Cell> long_ = notebook.cells().stream().filter(c -> c.lines().size() > 1).toList();
        Assume.that(!long_.isEmpty());
        Cell cell = long_.get(Math.floorMod(seed, long_.size()));
        int line = 2 + Math.floorMod(seed / 7, cell.lines().size() - 1);
        assertThat(notebook.split(cell.id(), line).join(cell.id())).isEqualTo(notebook);
    }

    @Property(tries = 300)
    void moving_back_undoes_moving(@ForAll("notebooks") Notebook notebook, @ForAll int seed) {
        Assume.that(!notebook.cells().isEmpty());
        int from = Math.floorMod(seed, notebook.cells().size());
        int to = Math.floorMod(seed / 31, notebook.cells().size());
        String id = notebook.cells().get(from).id();
        Notebook moved = notebook.move(id, to);
        assertThat(moved.indexOf(id)).isEqualTo(to);
        assertThat(moved.move(id, from)).isEqualTo(notebook);
    }

    @Property(tries = 300)
    void removing_undoes_adding(@ForAll("notebooks") Notebook notebook, @ForAll int seed) {
        String id = notebook.freshId();
        Notebook more = notebook.add(Math.floorMod(seed, notebook.cells().size() + 1), Cell.code(id, "1"));
        assertThat(more.remove(id)).isEqualTo(notebook);
        assertThat(notebook.ids()).doesNotContain(id);
    }

    @Property(tries = 200)
    void renaming_there_and_back_changes_nothing(@ForAll("notebooks") Notebook notebook, @ForAll int seed) {
        Assume.that(!notebook.cells().isEmpty());
        String id = notebook.ids().get(Math.floorMod(seed, notebook.cells().size()));
        assertThat(notebook.rename(id, "elsewhere").rename("elsewhere", id)).isEqualTo(notebook);
    }

    @Provide
    Arbitrary<Notebook> notebooks() {
        Arbitrary<String> numbers = Arbitraries.oneOf(Arbitraries.bigDecimals().map(d -> d.toString()),
                Arbitraries.of("-0", "1E+400", "0.10")).filter(Json.Num::isNumber);
        Arbitrary<DialValue> values = Arbitraries.oneOf(numbers.map(DialValue.Quantity::new),
                Arbitraries.of(true, false).map(DialValue.OnOff::new), words().map(DialValue.Words::new));
        Arbitrary<Map<String, DialValue>> dials = Arbitraries.maps(words(), values).ofMaxSize(3);
        Arbitrary<Json.Obj> unknown = unknownBut(List.of("calicograph", "title", "cells", "dials", "results"));
        return Combinators.combine(words(), cells(), dials, saved().list().ofMaxSize(3), unknown).as((title, cells, d, saved, more) -> {
            Map<String, Saved> results = new LinkedHashMap<>();
            for (int i = 0; i < Math.min(saved.size(), cells.size()); i++) {
                results.put(cells.get(i).id(), saved.get(i));
            }
            return new Notebook(title, cells, d, results, more);
        });
    }

    private static Arbitrary<String> words() {
        return Arbitraries.strings().ofMaxLength(12).map(NotebookLaws::wholePairs);
    }

    /** Half pairs can be written, but not as part of a text compared after UTF-8. */
    private static String wholePairs(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    private static Arbitrary<List<Cell>> cells() {
        Arbitrary<String> texts = words().list().ofMaxSize(4).map(lines -> String.join("\n", lines));
        Arbitrary<Cell> cell = Combinators.combine(texts, Arbitraries.of(true, false), unknownBut(List.of("id", "kind", "text")))
                .as((text, code, more) -> code ? new Cell.Code("x", text, more) : new Cell.Prose("x", text, more));
        return cell.list().ofMaxSize(5).map(list -> {
            List<Cell> named = new ArrayList<>();
            list.forEach(c -> named.add(c.withId(CellId.after(named.stream().map(Cell::id).toList()))));
            return named;
        });
    }

    private static Arbitrary<Saved> saved() {
        Arbitrary<Table> table = Combinators.combine(words(), words(), Arbitraries.doubles()).as((a, b, v) -> Table.of(a, "x", "y").row(b, v));
        Arbitrary<Exhibit> simple = Arbitraries.oneOf(words().map(Exhibit::words), table.map(Exhibit::of),
                PictureExamples.pictures().map(Exhibit::of), Arbitraries.just(Exhibit.NOTHING));
        Arbitrary<Exhibit> exhibits = Arbitraries.oneOf(simple, simple.list().ofMaxSize(3).map(Exhibit.Several::new));
        return Combinators.combine(words(), exhibits, words(), words().optional(), unknownBut(List.of("key", "exhibit", "output", "failure")))
                .as((key, exhibit, output, failure, more) -> new Saved(key, exhibit, output, failure, more));
    }

    private static Arbitrary<Json.Obj> unknownBut(List<String> known) {
        Arbitrary<Json> leaf = Arbitraries.oneOf(words().map(Json::of), Arbitraries.longs().map(Json::of),
                Arbitraries.of("1E400", "-0.0", "12345678901234567890123.50").map(Json.Num::new), Arbitraries.just(new Json.Null()));
        Arbitrary<Json> inner = Arbitraries.oneOf(leaf, leaf.list().ofMaxSize(3).map(Json.Arr::new),
                Arbitraries.maps(words(), leaf).ofMaxSize(2).map(Json.Obj::new));
        return Arbitraries.maps(words().filter(n -> !known.contains(n)), inner).ofMaxSize(2).map(Json.Obj::new);
    }

    @Property(tries = 100)
    void a_dial_value_is_read_as_it_was_written(@ForAll("values") String text) {
        assertThat(Optional.of(DialValue.of(text).text())).contains(text);
    }

    @Provide
    Arbitrary<String> values() {
        return Arbitraries.oneOf(words(), Arbitraries.of("12", "0.75", "true", "7 3/8 in", "on point", "1e3"));
    }
}
