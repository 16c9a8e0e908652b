package org.calicograph.desk.lessons;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;

/**
 * A notebook as a lesson: what is seen, in order. A draft comes step by step; of one that goes on with a
 * draft before it, or with the first steps of one, the new steps only. Cells without anything to see are passed over.
 */
public final class Lesson {

    private static final Pattern LAST_NAME = Pattern.compile("(?:^|\\n|;)\\s*(\\w+)\\s*;?\\s*$");
    private static final Pattern LAST_DECLARED = Pattern.compile("(?:var|Draft)\\s+(\\w+)\\s*=(?![\\s\\S]*(?:var|Draft)\\s+\\w+\\s*=)");
    private static final String STEPS = "steps-of-";

    /** What is seen at once. */
    public sealed interface Stage {

        String cell();

        /** Words to be read. */
        record Prose(String cell, String markdown) implements Stage { }

        /**
         * A step of a draft.
         *
         * @param number of the step in its draft, from 1
         * @param of     how many steps the draft has
         */
        record Step(String cell, Exhibit.Drawn drawn, int number, int of) implements Stage { }

        /** A question with a place for the answer. */
        record Asked(String cell) implements Stage { }

        /** Whatever else a cell shows. */
        record Shown(String cell) implements Stage { }
    }

    private Lesson() { }

    /** Cells that give the steps of each draft, to be drawn beside the notebook's own. */
    public static List<CellSource> stepCells(Notebook notebook, Map<String, CellState> states) {
        List<CellSource> cells = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            if (states.get(cell.id()) instanceof CellState.Done done && done.kind().equals("Draft")) {
                named(cell.text()).ifPresent(name -> cells.add(new CellSource(STEPS + cell.id(), "DraftPicture.steps(" + name + ")")));
            }
        }
        return cells;
    }

    /** The name of the value that a cell ends with. */
    static Optional<String> named(String text) {
        Matcher name = LAST_NAME.matcher(text.strip());
        if (name.find()) {
            return Optional.of(name.group(1));
        }
        Matcher declared = LAST_DECLARED.matcher(text);
        return declared.find() ? Optional.of(declared.group(1)) : Optional.empty();
    }

    /**
     * @param states how the notebook's cells stand
     * @param steps  how the cells of {@link #stepCells} stand
     */
    public static List<Stage> stages(Notebook notebook, Map<String, CellState> states, Map<String, CellState> steps) {
        List<Stage> stages = new ArrayList<>();
        List<List<String>> seen = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            String id = cell.id();
            if (cell instanceof Cell.Prose) {
                if (!cell.text().isBlank()) {
                    stages.add(new Stage.Prose(id, cell.text()));
                }
            } else if (states.get(id) instanceof CellState.Done done && !(done.exhibit() instanceof Exhibit.Nothing)) {
                List<Exhibit.Drawn> frames = frames(steps.get(STEPS + id));
                List<String> words = frames.stream().map(Exhibit.Drawn::caption).toList();
                if (done.kind().equals("Question")) {
                    stages.add(new Stage.Asked(id));
                } else if (frames.isEmpty()) {
                    stages.add(new Stage.Shown(id));
                } else {
                    for (int i = seen.stream().mapToInt(s -> alike(s, words)).max().orElse(0); i < frames.size(); i++) {
                        stages.add(new Stage.Step(id, frames.get(i), i + 1, frames.size()));
                    }
                    seen.add(words);
                }
            }
        }
        return List.copyOf(stages);
    }

    /** With how many equal steps two drafts begin. */
    private static int alike(List<String> one, List<String> other) {
        int count = 0;
        while (count < Math.min(one.size(), other.size()) && one.get(count).equals(other.get(count))) {
            count++;
        }
        return count;
    }

    private static List<Exhibit.Drawn> frames(CellState state) {
        List<Exhibit.Drawn> frames = new ArrayList<>();
        if (state instanceof CellState.Done done && done.exhibit() instanceof Exhibit.Several several) {
            several.parts().forEach(p -> {
                if (p instanceof Exhibit.Drawn drawn) {
                    frames.add(drawn);
                }
            });
        }
        return frames;
    }

    /** A question's words, and what is said of the answer once there is one. */
    static Map.Entry<String, String> question(String text) {
        int end = text.lastIndexOf('\n');
        return end < 0 ? Map.entry(text, "") : Map.entry(text.substring(0, end), text.substring(end + 1));
    }

    /** The code cells of a notebook and those that give its steps. */
    static List<CellSource> all(List<CellSource> opened, List<CellSource> steps) {
        Map<String, CellSource> all = new LinkedHashMap<>();
        opened.forEach(c -> all.put(c.id(), c));
        steps.forEach(c -> all.put(c.id(), c));
        return List.copyOf(all.values());
    }
}
