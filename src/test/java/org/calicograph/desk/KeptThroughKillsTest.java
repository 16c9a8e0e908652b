package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.calicograph.desk.opened.Recovery;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The desk's process is killed at random moments while somebody writes: what is on the disk is whole, and holds every
 * line that was written five seconds before. {@code -Dkills=N} for as many as one likes, {@code -Dkills.together=M} at
 * a time.
 */
class KeptThroughKillsTest {

    /** What the desk promises: no line older than this is lost. */
    private static final long PROMISED_MILLIS = 5_000;
    /** A notebook that takes a while to write, so that kills meet writing. */
    private static final Notebook LONG = Notebook.titled("Tide Table", Cell.prose("p1", ""), Cell.code("a1", ("// " + "tide ".repeat(20) + "\n").repeat(6_000)));
    /** Lines between two saves, which a hand asks for once in a second at most; 0 where nothing is ever saved. */
    private static final int[] SAVES = {0, 60, 90, 0, 180, 250};

    @TempDir
    Path folder;

    static String line(int number) {
        return "Line " + number + " of the evening.";
    }

    /** How many lines there are; every one must be whole and in its place. */
    static int lines(String text) {
        int count = text.isEmpty() ? 0 : (int) text.chars().filter(c -> c == '\n').count() + 1;
        assertThat(text).isEqualTo(IntStream.rangeClosed(1, count).mapToObj(KeptThroughKillsTest::line).collect(Collectors.joining("\n")));
        return count;
    }

    private static int held(Notebook notebook) {
        assertThat(notebook.title()).isEqualTo(LONG.title());
        assertThat(notebook.cell("a1")).isEqualTo(LONG.cell("a1"));
        return lines(notebook.cell("p1").orElseThrow().text());
    }

    /**
     * What one row of kills came to: how many there were, how many hit what was half written, how many came more than five seconds after
     * a line, and how old the oldest line lost was, in milliseconds.
     */
    private record Row(int kills, int halves, int tried, long oldest) {

        Row plus(Row other) {
            return new Row(kills + other.kills, halves + other.halves, tried + other.tried, Math.max(oldest, other.oldest));
        }
    }

    @Test
    void whenever_the_desk_is_killed_its_file_is_whole_and_no_line_older_than_five_seconds_is_lost() throws Exception {
        int kills = Integer.getInteger("kills", 3);
        int together = Math.min(kills, Integer.getInteger("kills.together", 3));
        ExecutorService bench = Executors.newFixedThreadPool(together);
        Row all = new Row(0, 0, 0, 0);
        try {
            List<Future<Row>> rows = new ArrayList<>();
            for (int i = 0; i < together; i++) {
                int row = i;
                rows.add(bench.submit(() -> row(row, kills / together + (row < kills % together ? 1 : 0))));
            }
            for (Future<Row> each : rows) {
                all = all.plus(each.get());
            }
        } finally {
            bench.shutdownNow();
        }
        assertThat(all.kills()).isEqualTo(kills);
        assertThat(all.tried()).as("some came so late that a line had to be there").isPositive();
        if (kills > 3) {
            System.out.println(all);
        }
    }

    /** Kills one window after another over the same notebook; each takes up what the one before had left. */
    private Row row(int row, int kills) throws Exception {
        Path place = Files.createDirectories(folder.resolve("row" + row));
        Path own = Files.createDirectories(place.resolve("own"));
        Random random = new Random(1851 + row);
        Row all = new Row(0, 0, 0, 0);
        int before = 0;
        Path file = place.resolve("tide.json");
        for (int i = 0; i < kills; i++) {
            if (i % 12 == 0) {
                before = 0;
                file = place.resolve("tide" + i + ".json");
                NotebookFile.save(LONG, file);
            }
            // Within the time in which the desk has to have kept a line, and beyond it.
            boolean late = i == 0 && row == 0;
            long after = late ? PROMISED_MILLIS + 300 : random.nextInt(7_000);
            List<long[]> written = writeUntilKilled(own, file, SAVES[random.nextInt(SAVES.length)], after);
            long killed = written.remove(written.size() - 1)[0];
            int saved = held(NotebookFile.read(file));
            int kept = left(file);
            int found = Math.max(saved, kept);
            assertThat(found).as("what was there stays").isGreaterThanOrEqualTo(before);
            int promised = (int) written.stream().filter(w -> w[1] <= killed - PROMISED_MILLIS).mapToLong(w -> w[0]).max().orElse(0);
            assertThat(found).as("%s: line %d was written five seconds before the end", file, promised).isGreaterThanOrEqualTo(promised);
            long oldest = written.stream().filter(w -> w[0] > found).mapToLong(w -> killed - w[1]).max().orElse(0);
            all = all.plus(new Row(1, halves(place), promised > 0 ? 1 : 0, oldest));
            before = found;
        }
        return all;
    }

    private static int left(Path file) throws NotebookException {
        return Recovery.beside(file).find().isPresent() ? held(Recovery.beside(file).find().orElseThrow().read()) : 0;
    }

    private static int halves(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return (int) Math.min(1, all.filter(f -> f.toString().endsWith(".part")).count());
        }
    }

    private static String said(Path own) {
        try {
            return Files.readString(own.resolve("said.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** The lines that the writer told of, each with its time, and at the end the time of the kill. */
    private static List<long[]> writeUntilKilled(Path own, Path file, int saves, long after) throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx200m"));
        for (String name : List.of("java.awt.headless", "glass.platform", "monocle.platform", "prism.order")) {
            command.add("-D" + name + "=" + System.getProperty(name));
        }
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), DoomedWriter.class.getName(), own.toString(), file.toString(), "" + saves));
        Path told = own.resolve("told.txt");
        Files.deleteIfExists(told);
        Process writer = new ProcessBuilder(command).redirectError(own.resolve("said.txt").toFile()).redirectOutput(told.toFile()).start();
        try {
            while (Files.size(told) == 0 && writer.isAlive()) {
                writer.waitFor(5, TimeUnit.MILLISECONDS);
            }
            boolean ended = writer.waitFor(after, TimeUnit.MILLISECONDS);
            long killed = System.currentTimeMillis();
            writer.destroyForcibly().waitFor();
            assertThat(ended).as(() -> "the writer ended by itself: " + said(own)).isFalse();
            List<long[]> written = Files.readAllLines(told).stream().filter(l -> l.matches("\\d+ \\d{13}"))
                    .map(l -> Stream.of(l.split(" ")).mapToLong(Long::parseLong).toArray()).collect(Collectors.toCollection(ArrayList::new));
            written.add(new long[] {killed});
            return written;
        } finally {
            writer.destroyForcibly();
        }
    }
}
