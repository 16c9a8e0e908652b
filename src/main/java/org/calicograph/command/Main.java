package org.calicograph.command;

import java.io.PrintWriter;
import org.calicograph.command.output.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine;

/** The command line's way in: {@code calicograph COMMAND …}. */
@Command(
        name = "calicograph",
        description = "A notebook for parametric quilt design: cells of Java come out as pictures, tables and true-scale pages.",
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        subcommands = {DrawCommand.class, CheckCommand.class, SheetCommand.class, PageCommand.class, BookCommand.class, ClassCommand.class,
            CompareCommand.class, NewCommand.class, RoutinesCommand.class, WordsCommand.class, OpenCommand.class, CompletionCommand.class},
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "1:a cell failed", "2:a file can't be read or written, or the command was not understood"},
        footer = {"", "Begin with:", "  calicograph draw notebooks/harbour-light.json --out drawn",
            "  calicograph draw --help"})
public final class Main implements Runnable {

    private CommandLine line;

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param arguments the command and its arguments; none prints the help
     */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true);
        PrintWriter err = new PrintWriter(System.err, true);
        System.exit(run(arguments, out, err));
    }

    /** Runs one command and gives its exit code. */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        Main main = new Main();
        CommandLine line = new CommandLine(main);
        main.line = line;
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(100);
        line.setExecutionExceptionHandler((thrown, command, parsed) -> told(thrown, command, parsed.originalArgs().contains("--trace")));
        line.setParameterExceptionHandler((wrong, given) -> {
            err.println("calicograph: " + Misunderstanding.of(wrong, given));
            return Refusal.FILE;
        });
        try {
            return line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println("calicograph: " + (e instanceof OutOfMemoryError ? "the command ran out of memory; give it more with CALICOGRAPH_JAVA_OPTIONS=-Xmx2g"
                    : "something in the notebook is nested too deep; flatten it"));
            return Refusal.FILE;
        }
    }

    private static int told(Exception thrown, CommandLine command, boolean trace) {
        boolean known = thrown instanceof Refusal;
        String message = known ? thrown.getMessage() : "this should not have happened: " + thrown + "; run again with --trace and report it";
        command.getErr().println("calicograph: " + oneLine(message));
        if (trace) {
            thrown.printStackTrace(command.getErr());
        }
        return known ? ((Refusal) thrown).code() : Refusal.FILE;
    }

    static String oneLine(String text) {
        return String.valueOf(text).strip().replaceAll("\\s*[\\r\\n]+\\s*", " ")
                // Letters that steer a terminal, or turn a line round, are no words.
                .replaceAll("[[\\p{Cntrl}\\u061c\\u200e\\u200f\\u2028-\\u202e\\u2066-\\u2069]&&[^\\t]]", "\uFFFD");
    }

    @Override
    public void run() {
        line.usage(line.getOut());
    }

    /** The version written into the jar; {@code development} when run from loose classes. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"Calicograph " + (version == null ? "development" : version)};
        }
    }
}
