package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.HostileNotebooks;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every hostile notebook and home of {@link HostileRows} comes to what the table in {@code docs/hostile.md} says, and no
 * notebook is changed by it. {@code -Dhostile.all=true} runs the slow rows too, {@code -Dgolden.update=true} writes the
 * table anew.
 */
class HostileTableTest {

    private static final Path TABLE = Path.of("docs/hostile.md");
    private static final boolean ALL = Boolean.getBoolean("hostile.all");
    private static final String HEAD = "| what | command | exit code | what is told |\n|---|---|---|---|\n";

    @TempDir
    Path folder;

    /** Told by what was done: command, exit code and line. */
    private final Map<String, String> told = new LinkedHashMap<>();

    private static final String NO_CACHE = "a cache that is a file";
    private static final String NO_HOME = "a home that can't be there";
    private static final int LONGEST = 700;
    /** What no line may hold: a second line, a stack trace, an excuse, letters that steer a terminal. */
    private static final Pattern FOUL = Pattern.compile("[\\p{Cntrl}\\u202a-\\u202e\\u2028\\u2029]|should not have happened|Exception in thread");
    private final List<String> foul = new ArrayList<>();

    private record Ran(int code, String out, String err) { }

    private static Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Ran(code, out.toString().strip(), err.toString().strip());
    }

    private void row(String what, String command, int code, String line) {
        String shown = line.replace(folder.toString() + "/", "").replace(folder.toString(), "FOLDER").replaceAll("n{300}", "n…n").replace("|", "\\|");
        if (line.isBlank() || shown.length() > LONGEST || FOUL.matcher(line).find() || code < 0 || code > 2) {
            foul.add(what + ": " + code + " " + shown.substring(0, Math.min(LONGEST, shown.length())));
        }
        assertThat(told.put(what, "| " + what + " | `" + command.replaceAll("n{300}", "n…n") + "` | " + code + " | " + shown + " |")).as(what).isNull();
    }

    @Test
    void each_comes_to_its_line_and_no_notebook_is_changed() throws Exception {
        Map<String, String> before = new LinkedHashMap<>();
        for (String name : List.of("calicograph.cache", "calicograph.home", "user.home")) {
            before.put(name, System.getProperty(name));
        }
        try {
            System.setProperty("calicograph.home", folder.resolve("home").toString());
            System.setProperty("calicograph.cache", folder.resolve("cache").toString());
            files();
            cells("cells", HostileRows.cells(), "--time-limit", "20");
            if (ALL) {
                cells("deadly", HostileRows.deadly(), "--time-limit", "20");
                cells("slow", HostileRows.slow(), "--time-limit", "1.5", "--heap", "128");
            }
            routines();
            caches();
            commands();
        } finally {
            before.forEach((name, value) -> {
                if (value == null) {
                    System.clearProperty(name);
                } else {
                    System.setProperty(name, value);
                }
            });
        }
        compare();
    }

    private void compare() throws IOException {
        assertThat(foul).isEmpty();
        assertThat(told).hasSizeGreaterThan(90);
        String page = Files.readString(TABLE);
        String head = page.substring(0, page.indexOf(HEAD) + HEAD.length());
        Map<String, String> written = new LinkedHashMap<>();
        page.substring(head.length()).lines().forEach(l -> written.put(l.substring(2, l.indexOf(" | ")), l));
        if (Boolean.getBoolean("golden.update")) {
            assertThat(ALL).as("the table is written from all rows; add -Dhostile.all=true").isTrue();
            Files.writeString(TABLE, head + String.join("\n", told.values()) + "\n");
            return;
        }
        List<String> rows = new ArrayList<>(told.keySet());
        if (!ALL) {
            HostileRows.slow().keySet().forEach(k -> rows.add("a cell: " + k));
            HostileRows.deadly().keySet().forEach(k -> rows.add("a cell: " + k));
            rows.addAll(HostileRows.DRAWING);
            rows.addAll(List.of(NO_CACHE, NO_HOME));
        }
        assertThat(written.keySet()).containsExactlyInAnyOrderElementsOf(rows);
        told.forEach((what, row) -> assertThat(written.get(what)).as(what).isEqualTo(row));
    }

    private void files() throws IOException {
        Map<String, byte[]> all = HostileNotebooks.all();
        for (String name : HostileRows.FILES) {
            Path file = folder.resolve("hostile.json");
            Files.write(file, all.get(name));
            Ran ran = run("check", file.toString());
            row("no notebook: " + name, "check hostile.json", ran.code(), ran.err());
            assertThat(Files.readAllBytes(file)).as(name).isEqualTo(all.get(name));
        }
    }

    /** Draws all in one notebook; each is told by its own line, or by what it shows. */
    private void cells(String name, Map<String, String> cells, String... options) throws IOException {
        List<Cell> all = new ArrayList<>();
        cells.forEach((what, text) -> all.add(Cell.code("c" + all.size(), text.replace("CACHE", folder.resolve("cache").toString()))));
        Path file = folder.resolve(name + ".json");
        NotebookFile.save(Notebook.titled(name, all.toArray(Cell[]::new)), file);
        byte[] bytes = Files.readAllBytes(file);
        List<String> line = new ArrayList<>(List.of("draw", file.toString(), "--out", folder.resolve(name).toString(), "--quiet"));
        line.addAll(Arrays.asList(options));
        Ran ran = run(line.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isEqualTo(1);
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        int number = 0;
        for (String what : cells.keySet()) {
            String id = "c" + number++;
            List<String> lines = ran.err().lines().filter(l -> l.startsWith(file + ": cell " + id + " ")).toList();
            assertThat(lines).as(what).hasSizeLessThan(2);
            Path words = folder.resolve(name).resolve(id + ".txt");
            row("a cell: " + what, "draw", lines.size(), lines.isEmpty() ? "shows: " + (Files.exists(words) ? Files.readString(words).strip() : "nothing")
                    : lines.get(0).replace(file + ": cell " + id + " ", "cell "));
        }
    }

    private void routines() throws IOException {
        Path place = Files.createDirectories(folder.resolve("own/stdlib")).getParent();
        Map<String, String> sources = HostileRows.routines();
        List<Cell> all = new ArrayList<>();
        for (Map.Entry<String, String> each : sources.entrySet()) {
            Files.write(place.resolve("stdlib").resolve(each.getKey() + ".java"),
                    each.getValue().getBytes(each.getKey().equals("Latin") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8));
            all.add(Cell.code(each.getKey(), each.getKey() + ".value()"));
        }
        Files.createSymbolicLink(place.resolve("stdlib/.#Sound.java"), Path.of("nobody@nowhere.1"));
        Files.write(place.resolve("stdlib/._Sound.java"), new byte[] {0, 5, 22, 7});
        Files.createDirectories(place.resolve("stdlib/Old.java"));
        Files.createSymbolicLink(place.resolve("stdlib/Gone.java"), Path.of("nowhere.java"));
        Path file = place.resolve("own.json");
        NotebookFile.save(Notebook.titled("Own", all.toArray(Cell[]::new)), file);
        byte[] bytes = Files.readAllBytes(file);
        Ran ran = run("draw", file.toString(), "--out", folder.resolve("owned").toString(), "--quiet");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        for (String name : sources.keySet()) {
            List<String> lines = ran.err().lines().filter(l -> l.startsWith(file + ": cell " + name + " ")).toList();
            Path words = folder.resolve("owned").resolve(name + ".txt");
            row("an own routine " + name + ".java", "draw", lines.size(), lines.isEmpty() ? "shows: " + Files.readString(words).strip()
                    : lines.get(0).replace(file + ": cell " + name + " ", "cell "));
        }
    }

    private void caches() throws IOException {
        Path notebook = folder.resolve("own/sound.json");
        NotebookFile.save(Notebook.titled("Sound", Cell.code("a1", "Sound.value()")), notebook);
        byte[] bytes = Files.readAllBytes(notebook);
        Files.writeString(folder.resolve("blocked"), "no folder");
        Map<String, String> caches = new LinkedHashMap<>();
        if (ALL) {
            caches.put(NO_CACHE, folder.resolve("blocked").toString());
            caches.put(NO_HOME, "/proc/nowhere");
        }
        caches.forEach((what, cache) -> {
            System.setProperty("calicograph.cache", cache);
            Ran ran = run("check", notebook.toString(), "--quiet");
            row(what, "check", ran.code(), ran.out() + ran.err());
        });
        System.setProperty("calicograph.cache", folder.resolve("cache").toString());
        assertThat(Files.readAllBytes(notebook)).isEqualTo(bytes);
    }

    private void commands() throws Exception {
        Path notebook = folder.resolve("N.json");
        Path other = folder.resolve("other.json");
        Notebook beds = Notebook.titled("Beds", Cell.code("a1", "int beds = dial(\"beds\", 2, 12, 6);\nPicture.of(Region.rectangle(inches(beds), inches(2)))"));
        for (Path each : List.of(notebook, other, Files.createDirectories(folder.resolve("reported")).resolve("report.json"))) {
            NotebookFile.save(beds, each);
        }
        byte[] bytes = Files.readAllBytes(notebook);
        Files.writeString(folder.resolve("letter.txt"), "Dear Wren");
        Files.createDirectories(folder.resolve("folder"));
        Files.createDirectories(folder.resolve("foldered/report.json"));
        Files.createDirectories(folder.resolve("pictured/a1.svg"));
        Files.createSymbolicLink(folder.resolve("loop"), Path.of("loop"));
        Files.createSymbolicLink(folder.resolve("linked.html"), other);
        assertThat(new ProcessBuilder("mkfifo", folder.resolve("pipe").toString()).start().waitFor()).isZero();
        for (Map.Entry<String, String> each : HostileRows.commands().entrySet()) {
            if (!ALL && HostileRows.DRAWING.contains(each.getKey())) {
                continue;
            }
            String[] line = Arrays.stream(each.getValue().split(" ")).map(w -> w.equals("N") ? notebook.toString() : w.equals("''") ? ""
                    : w.startsWith("+") ? folder.resolve(w.substring(1)).toString() : w).toArray(String[]::new);
            Ran ran = run(line);
            row(each.getKey(), each.getValue().replaceAll("\\bN\\b", "N.json").replace("+", ""), ran.code(), ran.err() + ran.out());
            for (Path file : List.of(notebook, other, folder.resolve("reported/report.json"))) {
                assertThat(Files.readAllBytes(file)).as(each.getKey()).isEqualTo(bytes);
            }
            assertThat(folder.resolve("letter.txt")).hasContent("Dear Wren");
        }
    }
}
