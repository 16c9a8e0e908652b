package org.calicograph.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.course.Finding;
import org.calicograph.course.Season;
import org.calicograph.course.StandingReport;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.NotebookWriter;
import org.calicograph.notebook.Saved;
import org.calicograph.notebook.WholeFile;
import org.calicograph.session.BookletCell;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionOptions;

/**
 * One notebook of a class and how its quilt stands.
 *
 * @param file     the notebook's file
 * @param title    its title; the file's name if it can't be read
 * @param report   the standing; empty if there is none
 * @param failures what could not be read or drawn, a line each
 * @param drawnNow true if it was drawn for this page, and not kept from the last time
 */
record Pupil(Path file, String title, Optional<StandingReport> report, List<String> failures, boolean unreadable, boolean drawnNow) {

    private static final String ASKED = "_the-standing";

    Pupil {
        failures = List.copyOf(failures);
    }

    static Pupil of(Path file, DrawingOptions options, boolean unrun, PrintWriter err) {
        try {
            Notebook notebook = NotebookFile.read(file);
            if (unrun) {
                return new Pupil(file, notebook.title(), saved(notebook), List.of(), false, false);
            }
            SessionOptions settings = options.session().beside(file);
            Path kept = settings.cache().resolve("standings").resolve(key(file, settings) + ".json");
            Optional<Pupil> last = kept(file, notebook, kept);
            return last.isPresent() ? last.get() : drawn(file, notebook, options, kept);
        } catch (NotebookException | Refusal e) {
            return new Pupil(file, file.getFileName().toString(), Optional.empty(), List.of(Main.oneLine(e.getMessage())), true, false);
        }
    }

    /** Of the file's saved results the last that is a standing, whatever has changed since. */
    private static Optional<StandingReport> saved(Notebook notebook) {
        Optional<StandingReport> found = Optional.empty();
        for (Cell cell : notebook.cells()) {
            Optional<StandingReport> here = Optional.ofNullable(notebook.results().get(cell.id())).flatMap(s -> StandingReport.read(s.exhibit()));
            found = here.isPresent() ? here : found;
        }
        return found;
    }

    private static Pupil drawn(Path file, Notebook notebook, DrawingOptions options, Path kept) {
        try (Drawing drawing = Drawing.open(file, options, new PrintWriter(new StringWriter()))) {
            drawing.drawAll();
            List<String> failures = new ArrayList<>();
            List<Finding> wrong = new ArrayList<>();
            Optional<StandingReport> report = Optional.empty();
            for (Map.Entry<String, CellState> each : drawing.states().entrySet()) {
                if (each.getValue() instanceof CellState.Failed failed) {
                    String words = Main.oneLine(failed.failure().message());
                    failures.add("cell " + each.getKey() + " failed" + failed.failure().at().map(p -> " at " + p).orElse("") + ": " + words);
                    wrong.add(Finding.wrong(Season.DRAFTING, "cell " + each.getKey(), words));
                } else if (each.getValue() instanceof CellState.Done done) {
                    Optional<StandingReport> here = StandingReport.read(done.exhibit());
                    report = here.isPresent() ? here : report;
                }
            }
            if (report.isEmpty()) {
                report = asked(drawing);
            }
            StandingReport whole = report.orElse(new StandingReport(notebook.title(), "", "", Optional.empty(),
                    failures.isEmpty() ? List.of(Finding.open(Season.DRAFTING, "the quilt", "no quilt is named yet; write 'var quilt = …' in a cell.")) : List.of())).with(wrong);
            Pupil pupil = new Pupil(file, notebook.title(), Optional.of(whole), failures, false, true);
            pupil.keep(kept);
            return pupil;
        }
    }

    /** The standing of the last quilt that the notebook names. */
    private static Optional<StandingReport> asked(Drawing drawing) {
        for (String name : BookletCell.names(drawing.notebook())) {
            CellState state = drawing.alsoDraw(new CellSource(ASKED, "org.calicograph.course.Standing.ofAny(" + name + ")"));
            if (state instanceof CellState.Done done && StandingReport.read(done.exhibit()).isPresent()) {
                return StandingReport.read(done.exhibit());
            }
        }
        return Optional.empty();
    }

    /** The report as a notebook of its own, in the cache; a cache that can't be written costs only time. */
    private void keep(Path kept) {
        Notebook leaf = Notebook.titled(title, Cell.prose("standing", String.join("\n", failures)))
                .withResult("standing", Saved.shown(Saved.key(List.of(), Map.of()), report.map(StandingReport::exhibit).orElse(Exhibit.NOTHING), ""));
        try {
            Files.createDirectories(kept.getParent());
            WholeFile.write(kept, NotebookWriter.write(leaf).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            // The next page draws it again.
        }
    }

    private static Optional<Pupil> kept(Path file, Notebook notebook, Path kept) {
        if (!Files.isRegularFile(kept)) {
            return Optional.empty();
        }
        try {
            Notebook leaf = NotebookFile.read(kept);
            List<String> failures = leaf.cell("standing").map(Cell::text).orElse("").lines().filter(l -> !l.isBlank()).toList();
            Optional<StandingReport> report = Optional.ofNullable(leaf.results().get("standing")).flatMap(s -> StandingReport.read(s.exhibit()));
            return report.map(r -> new Pupil(file, notebook.title(), Optional.of(r), failures, false, false));
        } catch (NotebookException e) {
            return Optional.empty();
        }
    }

    /** A digest of everything the standing is drawn from: the file, the routines, the product's version and its way to write lengths. */
    private static String key(Path file, SessionOptions settings) {
        List<String> texts = new ArrayList<>();
        try {
            texts.add(Files.readString(file, StandardCharsets.UTF_8));
            texts.add(String.join(" ", new Main.Version().getVersion()) + " " + settings.lengths() + " " + build());
            for (Path folder : settings.stdlib()) {
                if (Files.isDirectory(folder)) {
                    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*.java")) {
                        List<Path> sorted = new ArrayList<>();
                        all.forEach(sorted::add);
                        sorted.sort(null);
                        for (Path each : sorted) {
                            texts.add(each.getFileName() + "\n" + new String(Files.readAllBytes(each), StandardCharsets.ISO_8859_1));
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, file + ": it can't be read (" + Refusal.reason(e) + ")", e);
        }
        return Saved.key(texts, Map.of());
    }

    /** When this program was built: what it says may have changed since the last one. */
    private static String build() throws IOException {
        try {
            Path program = Path.of(Pupil.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            return Files.getLastModifiedTime(program).toString() + Files.size(program);
        } catch (java.net.URISyntaxException | RuntimeException e) {
            return "";
        }
    }
}
