package org.calicograph.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code page}: a notebook as one HTML file. */
@Command(
        name = "page",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "1:a cell failed", "2:a file can't be read or written, or the command was not understood"},
        header = "Draw a notebook and write it as one HTML file.",
        description = "The file needs nothing else: prose, pictures, tables, and the code folded away.",
        footer = {"", "Example:", "  calicograph page notebooks/harbour-light.json --out harbour-light.html", ""})
final class PageCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook's file.")
    private Path notebook;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The page's file.")
    private Path out;

    @Mixin
    private DrawingOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try (Drawing drawing = Drawing.open(notebook, options, spec.commandLine().getErr())) {
            drawing.drawAll();
            drawing.requireDials(options.dials().keySet());
            String html = HtmlPage.of(drawing.notebook(), drawing.states(), drawing.session().dials());
            OutputFiles.save(out, html.getBytes(StandardCharsets.UTF_8));
            spec.commandLine().getOut().println(drawing.notebook().cells().size() + " cells in " + out);
            return drawing.tellFailures(notebook.toString(), spec.commandLine().getErr());
        }
    }
}
