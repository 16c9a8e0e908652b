package org.calicograph.command;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.calicograph.command.output.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code open}: the desk. */
@Command(
        name = "open",
        mixinStandardHelpOptions = true,
        header = "Open a notebook at the desk, in a window.",
        description = "This needs a screen; every other command works without one.",
        footer = {"", "Example:", "  calicograph open notebooks/harbour-light.json", ""})
final class OpenCommand implements Callable<Integer> {

    private static final String DESK = "org.calicograph.desk.Desk";

    @Parameters(paramLabel = "NOTEBOOK", arity = "0..1", description = "The notebook's file; without one the desk opens with the first-run notebook.")
    private List<Path> notebook = List.of();

    @Override
    public Integer call() {
        try {
            Class<?> desk = Class.forName(DESK);
            desk.getMethod("open", List.class).invoke(null, notebook);
            return 0;
        } catch (ClassNotFoundException | NoClassDefFoundError e) {
            throw new Refusal(Refusal.FILE, "this build has no desk; use draw, sheet or page instead", e);
        } catch (InvocationTargetException e) {
            throw new Refusal(Refusal.FILE, "the desk can't open a window here (" + e.getCause().getMessage() + "); use draw, sheet or page instead", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
