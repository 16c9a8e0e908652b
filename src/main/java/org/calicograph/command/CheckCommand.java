package org.calicograph.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.calicograph.command.output.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code check}: does every cell draw? */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "1:a cell failed", "2:a file can't be read or written, or the command was not understood"},
        header = "Draw notebooks, write nothing, and tell of every cell that fails.",
        description = "One line for each cell that fails, with its place and what would repair it.",
        footer = {"", "Example:", "  calicograph check notebooks/*.json", ""})
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NOTEBOOK", arity = "1..*", description = "The notebooks' files.")
    private List<Path> notebooks;

    @Mixin
    private DrawingOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        int worst = 0;
        for (Path notebook : notebooks) {
            try (Drawing drawing = Drawing.open(notebook, options, err)) {
                drawing.drawAll();
                drawing.requireDials(options.dials().keySet());
                int code = drawing.tellFailures(notebook.toString(), err);
                if (code == 0) {
                    spec.commandLine().getOut().println(notebook + ": all " + drawing.states().size() + " cells draw");
                }
                worst = Math.max(worst, code);
            } catch (Refusal refusal) {
                err.println("calicograph: " + Main.oneLine(refusal.getMessage()));
                worst = Math.max(worst, refusal.code());
            }
        }
        return worst;
    }
}
