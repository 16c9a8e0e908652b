package org.calicograph.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * A notebook as a value. Every edit returns another one; a result of a cell that leaves leaves with it.
 *
 * @param cells   in reading order; no id twice
 * @param dials   values of dials that were moved, by name, in alphabetical order
 * @param results by cell id, in the order of the cells
 * @param unknown fields of the file that this version doesn't know
 */
public record Notebook(String title, List<Cell> cells, Map<String, DialValue> dials, Map<String, Saved> results,
                       Json.Obj unknown) {

    /** The version of the file format that is written, and the latest that is read. */
    public static final int FORMAT = 1;

    /** @throws IllegalArgumentException if two cells have one id, or a result belongs to no cell */
    public Notebook {
        cells = List.copyOf(cells);
        Set<String> ids = new HashSet<>();
        for (Cell cell : cells) {
            if (!ids.add(cell.id())) {
                throw new IllegalArgumentException("two cells have the id '" + cell.id() + "'; give one of them another");
            }
        }
        Map<String, Saved> ordered = new LinkedHashMap<>();
        for (Cell cell : cells) {
            if (results.containsKey(cell.id())) {
                ordered.put(cell.id(), results.get(cell.id()));
            }
        }
        for (String id : results.keySet()) {
            if (!ids.contains(id)) {
                throw new IllegalArgumentException("there is a result for '" + Excerpt.of(id) + "' but no such cell; take the result out");
            }
        }
        results = Collections.unmodifiableMap(ordered);
        dials = Collections.unmodifiableMap(new TreeMap<>(dials));
    }

    public static Notebook titled(String title, Cell... cells) {
        return new Notebook(title, List.of(cells), Map.of(), Map.of(), Json.Obj.EMPTY);
    }

    public Optional<Cell> cell(String id) {
        return cells.stream().filter(c -> c.id().equals(id)).findFirst();
    }

    public List<String> ids() {
        return cells.stream().map(Cell::id).toList();
    }

    /** The place of a cell, from 0. */
    public int indexOf(String id) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("there is no cell '" + Excerpt.of(id) + "'; the cells are "
                + (cells.isEmpty() ? "none" : String.join(", ", ids())));
    }

    /** An id for a new cell. */
    public String freshId() {
        return CellId.after(ids());
    }

    public Notebook withTitle(String other) {
        return new Notebook(other, cells, dials, results, unknown);
    }

    /** With a cell put in at a place: 0 is first, the number of cells last. */
    public Notebook add(int place, Cell cell) {
        if (place < 0 || place > cells.size()) {
            throw new IllegalArgumentException("a cell can't be put in at place " + place + "; use 0 to " + cells.size());
        }
        return edited(list -> {
            list.add(place, cell);
            return list;
        }, results);
    }

    public Notebook remove(String id) {
        int at = indexOf(id);
        return edited(list -> {
            list.remove(at);
            return list;
        }, without(id));
    }

    /** The cell taken out and put back so that it stands at the place. */
    public Notebook move(String id, int place) {
        int at = indexOf(id);
        if (place < 0 || place >= cells.size()) {
            throw new IllegalArgumentException("cell '" + id + "' can't move to place " + place + "; use 0 to " + (cells.size() - 1));
        }
        return edited(list -> {
            list.add(place, list.remove(at));
            return list;
        }, results);
    }

    /** The cell in two of its kind: the lines before the given one (from 1) keep the id, the others get a fresh one. */
    public Notebook split(String id, int line) {
        Cell cell = cells.get(indexOf(id));
        List<String> lines = cell.lines();
        if (line < 2 || line > lines.size()) {
            throw new IllegalArgumentException("cell '" + id + "' has " + lines.size() + " lines and can't be split before line " + line
                    + (lines.size() < 2 ? "; it needs at least 2" : "; use 2 to " + lines.size()));
        }
        Cell rest = cell.withId(freshId()).withText(String.join("\n", lines.subList(line - 1, lines.size())));
        return replace(cell.withText(String.join("\n", lines.subList(0, line - 1)))).add(indexOf(id) + 1, rest);
    }

    /** The cell and the next one, which must be of its kind, in one; it keeps the first one's id. */
    public Notebook join(String id) {
        int at = indexOf(id);
        if (at + 1 == cells.size()) {
            throw new IllegalArgumentException("cell '" + id + "' is the last; there is none to join it with");
        }
        Cell cell = cells.get(at);
        Cell next = cells.get(at + 1);
        if (!cell.kind().equals(next.kind())) {
            throw new IllegalArgumentException("cell '" + id + "' is " + cell.kind() + " and cell '" + next.id() + "' is " + next.kind()
                    + "; join cells of one kind");
        }
        return remove(next.id()).replace(cell.withText(cell.text() + "\n" + next.text()));
    }

    public Notebook withText(String id, String text) {
        return replace(cells.get(indexOf(id)).withText(text));
    }

    /** The cell as prose or code, as given, in place of the one with its id. */
    public Notebook replace(Cell cell) {
        int at = indexOf(cell.id());
        return edited(list -> {
            list.set(at, cell);
            return list;
        }, results);
    }

    /** The cell under another id; its result follows it. */
    public Notebook rename(String id, String other) {
        int at = indexOf(id);
        Map<String, Saved> kept = new LinkedHashMap<>(results);
        if (kept.containsKey(id)) {
            kept.put(other, kept.remove(id));
        }
        return edited(list -> {
            list.set(at, list.get(at).withId(other));
            return list;
        }, kept);
    }

    public Notebook withDial(String name, DialValue value) {
        Map<String, DialValue> all = new TreeMap<>(dials);
        all.put(name, value);
        return new Notebook(title, cells, all, results, unknown);
    }

    public Notebook withoutDial(String name) {
        Map<String, DialValue> all = new TreeMap<>(dials);
        all.remove(name);
        return new Notebook(title, cells, all, results, unknown);
    }

    /** The dials as a kernel takes them: values as text, by name. */
    public Map<String, String> dialTexts() {
        Map<String, String> texts = new LinkedHashMap<>();
        dials.forEach((name, value) -> texts.put(name, value.text()));
        return Collections.unmodifiableMap(texts);
    }

    public Notebook withResult(String id, Saved saved) {
        indexOf(id);
        Map<String, Saved> all = new LinkedHashMap<>(results);
        all.put(id, saved);
        return new Notebook(title, cells, dials, all, unknown);
    }

    public Notebook withoutResults() {
        return new Notebook(title, cells, dials, Map.of(), unknown);
    }

    private Map<String, Saved> without(String id) {
        Map<String, Saved> kept = new LinkedHashMap<>(results);
        kept.remove(id);
        return kept;
    }

    private Notebook edited(UnaryOperator<List<Cell>> edit, Map<String, Saved> kept) {
        return new Notebook(title, edit.apply(new ArrayList<>(cells)), dials, kept, unknown);
    }
}
