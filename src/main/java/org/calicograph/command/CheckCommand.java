package org.calicograph.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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

    /** What is told of one notebook. */
    private record Checked(int code, String out, String err) { }

    @Override
    public Integer call() {
        int workers = Math.max(1, Math.min(4, Math.min(notebooks.size(), Runtime.getRuntime().availableProcessors())));
        ExecutorService bench = Executors.newFixedThreadPool(workers);
        int worst = 0;
        try {
            List<Future<Checked>> all = notebooks.stream().map(n -> bench.submit(() -> checked(n))).toList();
            for (Future<Checked> each : all) {
                Checked checked = each.get();
                spec.commandLine().getOut().print(checked.out());
                spec.commandLine().getOut().flush();
                spec.commandLine().getErr().print(checked.err());
                spec.commandLine().getErr().flush();
                worst = Math.max(worst, checked.code());
            }
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(Refusal.FILE, "interrupted", e);
        } finally {
            bench.shutdownNow();
        }
        return worst;
    }

    /** Each notebook has a kernel of its own, so that nothing of one reaches another; as many are drawn at once as there are processors. */
    private Checked checked(Path notebook) {
        StringWriter err = new StringWriter();
        PrintWriter told = new PrintWriter(err, true);
        try (Drawing drawing = Drawing.open(notebook, options, notebooks.size() == 1 ? spec.commandLine().getErr() : told)) {
            drawing.drawAll();
            drawing.requireDials(options.dials().keySet());
            int code = drawing.tellFailures(notebook.toString(), told);
            return new Checked(code, code == 0 ? notebook + ": all " + drawing.states().size() + " cells draw" + System.lineSeparator() : "", err.toString());
        } catch (Refusal refusal) {
            told.println("calicograph: " + Main.oneLine(refusal.getMessage()));
            return new Checked(refusal.code(), "", err.toString());
        }
    }
}
