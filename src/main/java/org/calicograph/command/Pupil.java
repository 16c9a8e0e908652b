package org.calicograph.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.command.output.Refusal;
import org.calicograph.course.Finding;
import org.calicograph.course.Season;
import org.calicograph.course.StandingReport;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.BookletCell;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.wire.Failure;

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

    /** @param bench draws what has to be drawn; empty where no cell is to be run */
    static Pupil of(Path file, DrawingOptions options, Optional<ClassBench> bench) {
        try {
            Notebook notebook = NotebookFile.read(file);
            if (bench.isEmpty()) {
                return new Pupil(file, notebook.title(), saved(notebook), List.of(), false, false);
            }
            KeptStandings kept = KeptStandings.of(file, options.session().beside(file));
            Optional<Pupil> last = kept.read(file, notebook.title());
            if (last.isPresent()) {
                return last.get();
            }
            Pupil drawn = bench.get().draw(file, drawing -> drawn(file, drawing));
            // A failure may be that of a limit or of the moment: it is looked at again the next time.
            if (drawn.failures().isEmpty()) {
                kept.write(drawn);
            }
            return drawn;
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

    private static Pupil drawn(Path file, Drawing drawing) {
        drawing.drawAll();
        List<String> failures = new ArrayList<>();
        List<Finding> wrong = new ArrayList<>();
        Optional<StandingReport> report = Optional.empty();
        for (Map.Entry<String, CellState> each : drawing.states().entrySet()) {
            if (each.getValue() instanceof CellState.Failed failed) {
                String words = Main.oneLine(failed.failure().message());
                failures.add("cell " + each.getKey() + " failed" + failed.failure().at().map(p -> " at " + p).orElse("") + ": " + words);
                if (!(failed.failure() instanceof Failure.Depends)) {
                    wrong.add(Finding.wrong(Season.DRAFTING, "cell " + each.getKey(), words));
                }
            } else if (each.getValue() instanceof CellState.Done done) {
                Optional<StandingReport> here = StandingReport.read(done.exhibit());
                report = here.isPresent() ? here : report;
            }
        }
        String title = drawing.notebook().title();
        if (report.isEmpty()) {
            report = asked(drawing);
        }
        StandingReport whole = report.orElse(new StandingReport(title, "", "", Optional.empty(),
                failures.isEmpty() ? List.of(Finding.open(Season.DRAFTING, "the quilt", "no quilt is named yet; write 'var quilt = …' in a cell.")) : List.of())).with(wrong);
        return new Pupil(file, title, Optional.of(whole), failures, false, true);
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
}
