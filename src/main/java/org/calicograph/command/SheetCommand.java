package org.calicograph.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.command.output.Refusal;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.session.CellState;
import org.calicograph.wire.Dial;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sheet}: a page of variations over one or two dials. */
@Command(
        name = "sheet",
        header = "Draw a page of variations over one or two dials.",
        description = {"One picture of the notebook is drawn again and again with the dials turned.",
            "Without values a dial goes through its range in at most six steps."},
        footer = {"", "Examples:", "  calicograph sheet notebooks/harbour-light.json --over points --out points.svg",
            "  calicograph sheet notebooks/harbour-light.json --over points=8,16,32 --over border=\"2,3,4\" --out sheet.png", ""})
final class SheetCommand extends NotebookCommand {

    @Option(names = "--over", required = true, paramLabel = "NAME[=V,V…]", description = "A dial to go over; once or twice.")
    private List<String> over;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The sheet's file: .svg, .png or .pdf.")
    private Path out;

    @Option(names = "--cell", paramLabel = "ID", description = "The cell whose picture it is (default: the last one with a picture).")
    private String cell;

    private String ending() {
        return out.getFileName().toString().toLowerCase(Locale.ROOT).replaceAll(".*\\.", "");
    }

    @Override
    void requireOptions() {
        if (over.size() > 2) {
            throw new Refusal(Refusal.FILE, "a sheet goes over one or two dials, not " + over.size() + "; leave out --over " + over.get(2));
        }
        if (!List.of("svg", "png", "pdf").contains(ending())) {
            throw new Refusal(Refusal.FILE, out + ": a sheet is an .svg, .png or .pdf file; give --out such a name");
        }
        OutputPlace.require(out, notebook(), ending().equals("pdf") ? "%PDF" : ending().equals("svg") ? "<?xml" : "");
    }

    @Override
    int make(Drawing drawing) {
        drawing.requireDials(over.stream().map(SheetCommand::name).toList());
        String chosen = chosenCell(drawing);
        List<Dial> first = values(drawing, over.get(0));
        List<Dial> second = over.size() == 2 ? values(drawing, over.get(1)) : List.of();
        List<VariationSheet.Entry> entries = new ArrayList<>();
        for (Dial row : second.isEmpty() ? first.subList(0, 1) : second) {
            for (Dial column : first) {
                Map<String, String> turned = new LinkedHashMap<>();
                turned.put(column.name(), column.text());
                if (!second.isEmpty()) {
                    turned.put(row.name(), row.text());
                }
                drawing.turn(turned);
                entries.add(new VariationSheet.Entry(turned, picture(drawing.session().state(chosen)), trouble(drawing.session().state(chosen))));
            }
        }
        int columns = second.isEmpty() && first.size() > 4 ? (int) Math.ceil(Math.sqrt(first.size())) : first.size();
        Picture sheet = VariationSheet.of(drawing.notebook().title(), entries, columns);
        OutputFiles.save(out, switch (ending()) {
            case "svg" -> OutputFiles.svg(sheet);
            case "png" -> OutputFiles.png(sheet, 2000);
            default -> PdfWriter.write(drawing.notebook().title(), sheet);
        });
        out().println(entries.size() + " variations of cell " + chosen + " in " + out);
        return entries.stream().anyMatch(e -> e.picture().isEmpty()) ? Refusal.CELL : 0;
    }

    private static String name(String over) {
        return over.contains("=") ? over.substring(0, over.indexOf('=')) : over;
    }

    private List<Dial> values(Drawing drawing, String wanted) {
        Dial dial = drawing.session().dials().stream().filter(d -> d.name().equals(name(wanted))).findFirst().orElseThrow();
        if (!wanted.contains("=")) {
            return DialSteps.of(dial, 6);
        }
        List<Dial> dials = new ArrayList<>();
        for (String text : wanted.substring(wanted.indexOf('=') + 1).split(",")) {
            try {
                dials.add(dial.turnedTo(text.strip()));
            } catch (IllegalArgumentException e) {
                throw new Refusal(Refusal.FILE, e.getMessage(), e);
            }
        }
        return dials;
    }

    private String chosenCell(Drawing drawing) {
        if (cell != null) {
            if (!drawing.states().containsKey(cell)) {
                throw new Refusal(Refusal.FILE, "there is no code cell '" + cell + "'; the cells are " + String.join(", ", drawing.states().keySet()));
            }
            return cell;
        }
        String last = null;
        for (Map.Entry<String, CellState> each : drawing.states().entrySet()) {
            last = picture(each.getValue()).isPresent() ? each.getKey() : last;
        }
        if (last == null) {
            throw new Refusal(Refusal.FILE, notebook() + ": no cell shows a picture; a sheet needs one");
        }
        return last;
    }

    private static Optional<Picture> picture(CellState state) {
        return state instanceof CellState.Done done ? picture(done.exhibit()) : Optional.empty();
    }

    private static Optional<Picture> picture(Exhibit exhibit) {
        if (exhibit instanceof Exhibit.Drawn drawn) {
            return Optional.of(drawn.picture());
        }
        return exhibit instanceof Exhibit.Several several
                ? several.parts().stream().map(SheetCommand::picture).flatMap(Optional::stream).findFirst() : Optional.empty();
    }

    private static String trouble(CellState state) {
        return state instanceof CellState.Failed failed ? Main.oneLine(failed.failure().message()) : "";
    }
}
