package org.calicograph.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.calicograph.command.output.Refusal;
import org.calicograph.course.StandingReport;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.NotebookWriter;
import org.calicograph.notebook.Saved;
import org.calicograph.notebook.WholeFile;
import org.calicograph.session.SessionOptions;

/**
 * What was found of a notebook the last time, kept in the cache under a digest of everything it was found from: the
 * notebook's file, the routines, the program, and how it writes lengths. A cache that can't be read or written costs only time.
 *
 * @param place the file of this very notebook as it stands; there may be none yet
 */
record KeptStandings(Path place) {

    /** So many are kept; the oldest go first. */
    private static final int MOST = 400;
    private static final String LEAF = "standing";

    /** @throws Refusal if the notebook or a routine can't be read */
    static KeptStandings of(Path file, SessionOptions settings) {
        List<String> texts = new ArrayList<>();
        try {
            texts.add(Files.readString(file, StandardCharsets.UTF_8));
            texts.add(String.join(" ", new Main.Version().getVersion()) + " " + settings.lengths() + " " + build());
            for (Path folder : settings.stdlib()) {
                texts.add(folder.getFileName().toString());
                texts.addAll(routines(folder));
            }
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, file + ": it can't be read (" + Refusal.reason(e) + "); check its permissions", e);
        }
        return new KeptStandings(settings.cache().resolve("standings").resolve(Saved.key(texts, Map.of()) + ".json"));
    }

    private static List<String> routines(Path folder) throws IOException {
        List<String> texts = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            List<Path> sorted = new ArrayList<>();
            try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*.java")) {
                all.forEach(sorted::add);
            }
            sorted.sort(null);
            for (Path each : sorted) {
                texts.add(each.getFileName() + "\n" + (Files.isReadable(each) && Files.isRegularFile(each)
                        ? new String(Files.readAllBytes(each), StandardCharsets.ISO_8859_1) : "not readable"));
            }
        }
        return texts;
    }

    /** When this program was built: what it says may have changed since the last one. */
    private static String build() throws IOException {
        try {
            Path program = Path.of(KeptStandings.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            return Files.getLastModifiedTime(program).toString() + Files.size(program);
        } catch (java.net.URISyntaxException | RuntimeException e) {
            return "";
        }
    }

    Optional<Pupil> read(Path file, String title) {
        if (!Files.isRegularFile(place)) {
            return Optional.empty();
        }
        try {
            Notebook leaf = NotebookFile.read(place);
            List<String> failures = leaf.cell(LEAF).map(Cell::text).orElse("").lines().filter(l -> !l.isBlank()).toList();
            return Optional.ofNullable(leaf.results().get(LEAF)).flatMap(s -> StandingReport.read(s.exhibit()))
                    .map(r -> new Pupil(file, title, Optional.of(r), failures, false, false));
        } catch (NotebookException e) {
            return Optional.empty();
        }
    }

    void write(Pupil pupil) {
        Notebook leaf = Notebook.titled(pupil.title(), Cell.prose(LEAF, String.join("\n", pupil.failures())))
                .withResult(LEAF, Saved.shown(Saved.key(List.of(), Map.of()), pupil.report().map(StandingReport::exhibit).orElse(Exhibit.NOTHING), ""));
        try {
            Files.createDirectories(place.getParent());
            WholeFile.write(place, NotebookWriter.write(leaf).getBytes(StandardCharsets.UTF_8));
            prune();
        } catch (IOException e) {
            // The next page draws it again.
        }
    }

    private void prune() throws IOException {
        Map<Path, FileTime> ages = new HashMap<>();
        try (Stream<Path> all = Files.list(place.getParent())) {
            for (Path each : (Iterable<Path>) all::iterator) {
                ages.put(each, Files.getLastModifiedTime(each));
            }
        }
        List<Path> oldest = ages.keySet().stream().sorted(Comparator.comparing(ages::get)).toList();
        for (Path each : oldest.subList(0, Math.max(0, oldest.size() - MOST))) {
            Files.deleteIfExists(each);
        }
    }
}
