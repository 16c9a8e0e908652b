package org.calicograph.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import org.calicograph.command.output.Progress;
import org.calicograph.command.output.Refusal;
import org.calicograph.session.Session;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code routines}: what there is to be called by name. */
@Command(
        name = "routines",
        header = "List the routines that a cell can call: those of stdlib and your own.",
        description = {"Your own lie in a folder stdlib beside the notebook. A file of yours that can't be used is named with the reason."},
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "1:a routine of your own can't be used", "2:a file can't be read, or the command was not understood"},
        footer = {"", "Examples:", "  calicograph routines", "  calicograph routines --like star", "  calicograph routines notebooks/harbour-light.json", ""})
final class RoutinesCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NOTEBOOK", arity = "0..1", description = "A notebook, whose own folder stdlib is looked through too.")
    private Path notebook;

    @Option(names = "--like", paramLabel = "WORD", description = "Only those with this word in their name or in what is said of them.")
    private String like;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (notebook != null && !Files.exists(notebook)) {
            throw new Refusal(Refusal.FILE, notebook + ": there is no such file; name a notebook, or none");
        }
        SessionOptions options = SessionOptions.standard();
        Catalogue all;
        try (Session session = Session.open(List.of(), Map.of(), notebook == null ? options : options.beside(notebook), new Progress(spec.commandLine().getErr(), true))) {
            all = session.browse().get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(Refusal.FILE, "interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
        PrintWriter out = spec.commandLine().getOut();
        int shown = 0;
        for (Catalogue.Entry entry : all.entries()) {
            List<Catalogue.Routine> routines = entry.methods().stream().filter(m -> isLike(entry.name() + " " + entry.about()) || isLike(m.declaration() + " " + m.about())).toList();
            if (!routines.isEmpty()) {
                out.println(entry.name() + ": " + entry.about());
                routines.forEach(m -> out.println("    " + m.declaration() + (m.about().isEmpty() ? "" : "  " + m.about())));
                shown += routines.size();
            }
        }
        out.println(shown + (shown == 1 ? " routine" : " routines"));
        for (Catalogue.Broken broken : all.broken()) {
            spec.commandLine().getErr().println(broken.file() + ": " + Main.oneLine(broken.problem().message()));
        }
        return all.broken().isEmpty() ? 0 : Refusal.CELL;
    }

    private boolean isLike(String text) {
        return like == null || text.toLowerCase(Locale.ROOT).contains(like.toLowerCase(Locale.ROOT));
    }
}
