package org.calicograph.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.command.output.Report;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.session.CellState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code draw}: every cell of a notebook, to files. */
@Command(
        name = "draw",
        header = "Draw every cell of a notebook and write what it shows into a folder.",
        description = {"An SVG and a PNG for each picture, a CSV for each table, and report.json with each cell's state, files, time and error."},
        footer = {"", "Examples:", "  calicograph draw notebooks/harbour-light.json --out drawn",
            "  calicograph draw notebooks/harbour-light.json --out drawn --set points=16", ""})
final class DrawCommand extends NotebookCommand {

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder for the files; it is made if it isn't there.")
    private Path out;

    @Option(names = "--json", description = "Print the report on standard output too, for those who script it; what is told in words goes to standard error.")
    private boolean json;

    @Override
    void requireOptions() {
        OutputPlace.require(out.resolve("report.json"), notebook(), "{");
    }

    @Override
    int make(Drawing drawing) {
        Map<String, CellState> states = drawing.states();
        OutputFiles files = new OutputFiles(out, states.keySet());
        Map<String, List<String>> names = new LinkedHashMap<>();
        states.forEach((id, state) -> {
            if (state instanceof CellState.Done done) {
                names.put(id, files.write(id, done.exhibit()));
            }
        });
        files.clearLast(names.values().stream().flatMap(List::stream).toList());
        String report = Report.of(drawing.notebook().title(), states, names, drawing.session().dials());
        files.save("report.json", report.getBytes(StandardCharsets.UTF_8));
        int code = drawing.tellFailures(notebook().toString(), err());
        long drawn = states.values().stream().filter(CellState.Done.class::isInstance).count();
        long written = names.values().stream().mapToLong(List::size).sum() + 1;
        if (json) {
            out().print(report);
            out().flush();
        }
        (json ? err() : out()).println(drawn + " of " + states.size() + " cells drawn, " + written + " files in " + out);
        return code;
    }
}
