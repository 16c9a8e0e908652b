package org.calicograph.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.Refusal;
import org.calicograph.fabric.NearestNames;
import org.calicograph.notebook.NotebookReader;
import org.calicograph.notebook.NotebookWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code new}: a notebook to begin with. */
@Command(
        name = "new",
        header = "Write a new notebook, empty or with a beginning.",
        description = {"Beginnings: empty; quilt, a block in a top with a border; lesson, a draft and a question; student, a quilt and how it stands, for a class.",
            "A file that is there already is never replaced."},
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "2:a file can't be read or written, or the command was not understood"},
        footer = {"", "Example:", "  calicograph new gulls.json --from quilt --title \"Gulls over the roof\"", ""})
final class NewCommand implements Callable<Integer> {

    /** What a notebook may begin with. */
    enum Beginning { EMPTY, QUILT, LESSON, STUDENT }

    @Parameters(paramLabel = "FILE", description = "The notebook's file; .json is added where it has no ending.")
    private Path file;

    @Option(names = "--from", paramLabel = "BEGINNING", defaultValue = "empty", description = "empty, quilt, lesson or student (default: ${DEFAULT-VALUE}).")
    private String from;

    @Option(names = "--title", paramLabel = "TITLE", description = "The title (default: the file's name).")
    private String title;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String name = file.getFileName().toString();
        Path place = name.contains(".") ? file : file.resolveSibling(name + ".json");
        if (Files.exists(place)) {
            throw new Refusal(Refusal.FILE, place + ": there is a file by this name; give another");
        }
        Beginning beginning = Arrays.stream(Beginning.values()).filter(b -> b.name().equalsIgnoreCase(from)).findFirst().orElseThrow(() -> new Refusal(Refusal.FILE,
                "there is no beginning '" + from + "'" + NearestNames.question(from, Arrays.stream(Beginning.values()).map(b -> b.name().toLowerCase(Locale.ROOT)).toList())));
        String heading = title != null && !title.isBlank() ? title.strip() : name.replaceFirst("\\.[^.]*$", "").replace('-', ' ').replace('_', ' ');
        OutputFiles.save(place, text(beginning, heading).getBytes(StandardCharsets.UTF_8));
        spec.commandLine().getOut().println(place + ": a new notebook, '" + heading + "'");
        return 0;
    }

    private static String text(Beginning beginning, String title) {
        String resource = "beginning-" + beginning.name().toLowerCase(Locale.ROOT) + ".json";
        try (InputStream in = NewCommand.class.getResourceAsStream(resource)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String titled = text.lines().map(l -> l.replace("Untitled", escaped(title, l))).collect(Collectors.joining("\n"));
            return NotebookWriter.write(NotebookReader.read(titled.getBytes(StandardCharsets.UTF_8), resource));
        } catch (IOException e) {
            throw new IllegalStateException("the beginning '" + resource + "' can't be read", e);
        }
    }

    /** As JSON writes it; within a string of Java, first as Java writes that. */
    private static String escaped(String title, String line) {
        return quoted(line.contains("\\\"Untitled") ? quoted(title) : title);
    }

    private static String quoted(String text) {
        return text.replace("\\", "\\\\").replace("\"", "\\\"");
    }
}
