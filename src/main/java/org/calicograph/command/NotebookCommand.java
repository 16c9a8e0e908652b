package org.calicograph.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that draws one notebook and makes something of it. */
@Command(
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "1:a cell failed", "2:a file can't be read or written, or the command was not understood"})
abstract class NotebookCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook's file.")
    private Path notebook;

    @Mixin
    private DrawingOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public final Integer call() {
        requireOptions();
        try (Drawing drawing = Drawing.open(notebook, options, err())) {
            drawing.drawAll();
            drawing.requireDials(options.dials().keySet());
            return make(drawing);
        }
    }

    /** @throws Refusal before anything is drawn, if an option of the command's own is not in order */
    void requireOptions() { }

    /** Makes what the command is for, and gives the exit code. */
    abstract int make(Drawing drawing);

    final Path notebook() {
        return notebook;
    }

    /** Tells what was written to a file, or to standard output. */
    final void tell(Path file, String words) {
        OutputFiles.tell(file, spec, words);
    }

    final PrintWriter out() {
        return spec.commandLine().getOut();
    }

    final PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
