package org.calicograph.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.book.Part;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.command.output.Refusal;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Cell;
import org.calicograph.session.BookletCell;
import org.calicograph.session.CellState;
import org.calicograph.wire.Failure;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code book}: a quilt of a notebook as a booklet in PDF. */
@Command(
        name = "book",
        description = {"Draw a notebook and write the last quilt that it names as a booklet in PDF: fabric, cutting, sewing, templates at full size.",
            "A draft that it names follows as a handout, a panel for each step; a lesson's questions come behind it, the answers last."},
        footer = {"", "Example:", "  calicograph book notebooks/ropewalk-workroom.json --out ropewalk.pdf --paper A4", ""})
final class BookCommand extends NotebookCommand {

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The booklet's file; - for standard output.")
    private Path out;

    /** What the pages are made of, for the telling. */
    private final List<String> taken = new ArrayList<>();

    @Option(names = "--paper", paramLabel = "PAPER", defaultValue = "A4", description = "A4, A3 or Letter; A4 if not given.")
    private String paper;

    @Option(names = "--quilt", paramLabel = "NAME", description = "The name of the quilt, the draft, or the pages in the notebook; the last quilt and draft if not given.")
    private String quilt;

    @Option(names = "--parts", paramLabel = "PART", split = ",", description = {"Only these parts of the booklet, with commas between them: cover, materials, cutting,",
        "sewing, finishing, measures, templates."})
    private List<String> parts = List.of();

    private List<Part> chosen() {
        try {
            return parts.stream().map(Part::of).toList();
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.FILE, e.getMessage());
        }
    }

    private Paper sheet() {
        return switch (paper.toUpperCase(Locale.ROOT)) {
            case "A4" -> Paper.A4;
            case "A3" -> Paper.A3;
            case "LETTER" -> Paper.LETTER;
            default -> throw new Refusal(Refusal.FILE, "'" + paper + "' is not a paper for booklets; use A4, A3 or Letter");
        };
    }

    @Override
    void requireOptions() {
        sheet();
        chosen();
        OutputPlace.require(out, notebook(), "%PDF");
    }

    @Override
    int make(Drawing drawing) {
        int code = drawing.tellFailures(notebook().toString(), err());
        List<Picture> pages = pages(drawing, sheet());
        // Pages that were set before know their own paper, which is as large as the page.
        Box size = pages.get(0).bounds();
        OutputFiles.save(out, PdfWriter.write(drawing.notebook().title(), pages, Length.inches(size.width()), Length.inches(size.height())));
        tell(out, (pages.size() == 1 ? "1 page in " : pages.size() + " pages in ") + out + ": " + String.join(", ", taken));
        return code;
    }

    private List<Picture> pages(Drawing drawing, Paper sheet) {
        List<String> names = quilt == null ? BookletCell.names(drawing.notebook()) : List.of(quilt);
        List<Picture> pages = new ArrayList<>(pages(drawing, sheet, names, "Booklet"));
        if (parts.isEmpty() && (quilt == null || pages.isEmpty())) {
            pages.addAll(pages(drawing, sheet, names, "Handout"));
            pages.addAll(questions(drawing, sheet));
        }
        if (parts.isEmpty() && pages.isEmpty() && quilt != null) {
            pages.addAll(pages(drawing, sheet, names, "Sheaf"));
        }
        if (!pages.isEmpty()) {
            return pages;
        }
        String why = "no cell names a quilt or a draft; write 'var quilt = …' in one";
        String asked = quilt != null ? quilt : names.isEmpty() || parts.isEmpty() ? null : names.get(names.size() - 1);
        if (asked != null && made(drawing, sheet, asked, "Booklet") instanceof CellState.Failed failed) {
            why = "'" + asked + "': " + failed.failure().message();
        }
        throw new Refusal(Refusal.CELL, notebook() + ": no booklet can be made: " + why);
    }

    /** The questions of a lesson and, behind them, their answers; none if no cell asks. */
    private List<Picture> questions(Drawing drawing, Paper sheet) {
        List<Cell> asking = drawing.notebook().cells().stream()
                .filter(c -> drawing.states().get(c.id()) instanceof CellState.Done done && done.kind().equals("Question")).toList();
        if (quilt != null || asking.isEmpty() || !(drawing.alsoDraw(BookletCell.ofQuestions(drawing.notebook().title(), asking, sheet)) instanceof CellState.Done done)
                || !(done.exhibit() instanceof Exhibit.Several several)) {
            return List.of();
        }
        taken.add("its questions, the answers on the last page");
        return several.parts().stream().filter(Exhibit.Drawn.class::isInstance).map(p -> ((Exhibit.Drawn) p).picture()).toList();
    }

    /**
     * The pages made of the first name that gives any; none if none does.
     *
     * @throws Refusal if a name comes first whose own cell failed, so that nobody can tell whether it is the quilt meant
     */
    private List<Picture> pages(Drawing drawing, Paper sheet, List<String> names, String kind) {
        for (String name : names) {
            CellState state = made(drawing, sheet, name, kind);
            if (quilt == null && state instanceof CellState.Failed failed && failed.failure() instanceof Failure.Depends) {
                throw new Refusal(Refusal.CELL, notebook() + ": no booklet was made: '" + name
                        + "' could not be drawn, and may be the one that is meant; mend its cell, or name another with --quilt");
            }
            if (state instanceof CellState.Done done && done.exhibit() instanceof Exhibit.Several several) {
                taken.add((!parts.isEmpty() ? String.join(", ", parts) + " of '" : kind.equals("Handout") ? "the handout of '" : kind.equals("Sheaf") ? "the pages of '" : "the booklet of '") + name + "'");
                return several.parts().stream().filter(Exhibit.Drawn.class::isInstance).map(p -> ((Exhibit.Drawn) p).picture()).toList();
            }
        }
        return List.of();
    }

    private CellState made(Drawing drawing, Paper sheet, String name, String kind) {
        if (kind.equals("Booklet") && !parts.isEmpty()) {
            return drawing.alsoDraw(BookletCell.ofParts(name, sheet, chosen().stream().map(Part::name).toList()));
        }
        return drawing.alsoDraw(BookletCell.of(kind, name, sheet));
    }
}
