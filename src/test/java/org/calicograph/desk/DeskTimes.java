package org.calicograph.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.desk.opened.Trust;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long things take at the desk, as ratios within one run: {@code mvn -q test -Dtest=DeskTimes}. No
 * part of the suite, since it asserts nothing.
 */
class DeskTimes {

    private static final int TIMES = 15;

    @TempDir
    Path folder;

    private Evening evening(String name, List<Cell> cells, boolean trusted) throws Exception {
        Path file = folder.resolve(name + ".json");
        Notebook notebook = Notebook.titled(name, cells.toArray(Cell[]::new));
        NotebookFile.save(notebook, file);
        if (trusted) {
            new Trust(folder.resolve("own"), folder.resolve("none")).grant(notebook);
        }
        return Evening.asLived(folder.resolve("own"), file);
    }

    private static double millis(long since) {
        return (System.nanoTime() - since) / 1e6;
    }

    static void say(String form, Object... values) {
        System.out.println(String.format(Locale.ROOT, form, values));
    }

    @Test
    void from_a_dial_to_the_picture() throws Exception {
        for (int patches : new int[] {400, 2000, 10_000}) {
            DialStages.say(patches);
        }
        for (int patches : new int[] {400, 2000, 10_000}) {
            try (Evening evening = evening("dial" + patches, List.of(Cell.code("a1", DialRace.code(patches))), true);
                    DialRace race = new DialRace(evening, patches)) {
                race.run();
                if (patches == 2000) {
                    race.drag();
                }
            }
        }
    }

    private static List<Cell> cells(int count) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cells.add(i % 3 == 0 ? Cell.prose("p" + i, "## Part " + i + "\n\nWords about *this* part.") : Cell.code("c" + i,
                    "int a" + i + " = " + i + ";\nvar s" + i + " = Star.of(a" + i + " + 5).across(inches(12));\ns" + i));
        }
        return cells;
    }

    private static double opening(Evening evening, Path file) {
        return Evening.onFx(() -> {
            long start = System.nanoTime();
            evening.window.papers().open(file);
            evening.scene().getRoot().applyCss();
            evening.scene().getRoot().layout();
            return millis(start);
        });
    }

    private static org.fxmisc.richtext.CodeArea area(Evening evening) throws Exception {
        evening.write("c1");
        evening.until("every cell is there", evening.window.column()::isWhole);
        return Evening.onFx(() -> (org.fxmisc.richtext.CodeArea) evening.scene().lookup("#code-c1"));
    }

    /** Letters typed into a cell as it was, each with the layout that it asks for. */
    private static void typing(Evening evening, org.fxmisc.richtext.CodeArea area, List<Double> into) {
        Evening.onFx(() -> {
            evening.stage.requestFocus();
            area.replaceText("int a = 1;\nvar s = Star.of(a + 5).across(inches(12));\ns");
            evening.scene().getRoot().layout();
            return null;
        });
        into.addAll(Evening.onFx(() -> {
            List<Double> times = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                long start = System.nanoTime();
                area.appendText("x");
                evening.scene().getRoot().layout();
                times.add(millis(start));
            }
            return times;
        }));
    }

    @Test
    void opening() throws Exception {
        Path ten = folder.resolve("ten.json");
        NotebookFile.save(Notebook.titled("ten", cells(10).toArray(Cell[]::new)), ten);
        try (Evening evening = evening("hundred", cells(100), false)) {
            List<Double> few = new ArrayList<>();
            List<Double> many = new ArrayList<>();
            for (int i = 0; i < 2 * TIMES; i++) {
                if (i == TIMES) {
                    few.clear();
                    many.clear();
                }
                few.add(opening(evening, ten));
                many.add(opening(evening, folder.resolve("hundred.json")));
            }
            say("opening 10 cells: %.1f ms; 100 cells: %.1f ms; ratio %.2f", median(few), median(many), median(many) / median(few));
        }
    }

    /** In turns, in two windows, so that neither has a warmer machine. */
    @Test
    void typing() throws Exception {
        try (Evening many = evening("hundred", cells(100), false); Evening one = evening("one", cells(2).subList(1, 2), false)) {
            org.fxmisc.richtext.CodeArea among = area(many);
            org.fxmisc.richtext.CodeArea alone = area(one);
            List<Double> amongTimes = new ArrayList<>();
            List<Double> aloneTimes = new ArrayList<>();
            for (int round = 0; round < 2 * TIMES; round++) {
                if (round == TIMES) {
                    amongTimes.clear();
                    aloneTimes.clear();
                }
                typing(many, among, amongTimes);
                typing(one, alone, aloneTimes);
            }
            double long100 = median(amongTimes);
            double short1 = median(aloneTimes);
            say("a letter typed, 1 cell: %.2f ms; 100 cells: %.2f ms; ratio %.2f", short1, long100, long100 / short1);
        }
    }

    private static double median(List<Double> times) {
        return times.stream().sorted().toList().get(times.size() / 2);
    }
}
