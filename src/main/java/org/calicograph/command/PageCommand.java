package org.calicograph.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code page}: a notebook as one HTML file. */
@Command(
        name = "page",
        header = "Draw a notebook and write it as one HTML file.",
        description = "The file needs nothing else: prose, pictures, tables, and the code folded away.",
        footer = {"", "Example:", "  calicograph page notebooks/harbour-light.json --out harbour-light.html", ""})
final class PageCommand extends NotebookCommand {

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The page's file; - for standard output.")
    private Path out;

    @Override
    void requireOptions() {
        OutputPlace.require(out, notebook(), "<!DOCTYPE");
    }

    @Override
    int make(Drawing drawing) {
        String html = HtmlPage.of(drawing.notebook(), drawing.states(), drawing.session().dials());
        OutputFiles.save(out, html.getBytes(StandardCharsets.UTF_8));
        tell(out, drawing.notebook().cells().size() + " cells in " + out);
        return drawing.tellFailures(notebook().toString(), err());
    }
}
