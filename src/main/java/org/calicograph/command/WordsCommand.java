package org.calicograph.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.command.output.Refusal;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.reference.Room;
import org.calicograph.reference.WordReader;
import org.calicograph.reference.WordsPage;
import org.calicograph.wire.VisiblePackages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code words}: the reference. */
@Command(
        name = "words",
        header = "Write a page of every word that a cell can say.",
        description = "Types, what they are made of, their methods, units and errors, the routines of stdlib, and where the cookbook uses each. The page needs no network.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all went well", "2:a file can't be read or written, or the command was not understood"},
        footer = {"", "Example:", "  calicograph words --out words.html", ""})
final class WordsCommand implements Callable<Integer> {

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The page's file; - for standard output.")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        OutputPlace.require(out, "<!DOCTYPE");
        Path home = Path.of(System.getProperty("calicograph.home", "")).toAbsolutePath();
        Path sources = Files.isDirectory(home.resolve("sources")) ? home.resolve("sources") : home.resolve("src/main/java");
        try {
            List<Room> rooms = new ArrayList<>();
            for (String name : VisiblePackages.HOUSE) {
                rooms.add(WordReader.read(name, sources.resolve("org/calicograph").resolve(name.replace('.', '/'))).without(VisiblePackages.MACHINERY));
            }
            rooms.add(WordReader.read("stdlib", home.resolve("stdlib")));
            OutputFiles.save(out, WordsPage.of(rooms, examples(home.resolve("notebooks"))).getBytes(StandardCharsets.UTF_8));
            OutputFiles.tell(out, spec, rooms.stream().mapToInt(r -> r.types().size()).sum() + " types in " + out);
            return 0;
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, sources + ": the words can't be read there (" + Refusal.reason(e) + "); the folder sources belongs beside stdlib", e);
        }
    }

    /** The lines of the cookbook, by the title of the notebook. */
    private static Map<String, List<String>> examples(Path notebooks) throws IOException {
        Map<String, List<String>> all = new LinkedHashMap<>();
        if (!Files.isDirectory(notebooks)) {
            return all;
        }
        try (Stream<Path> files = Files.walk(notebooks)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted((a, b) -> Boolean.compare(!a.toString().contains("cookbook"), !b.toString().contains("cookbook"))).toList()) {
                Notebook notebook = NotebookFile.read(file);
                all.put(notebook.title(), notebook.cells().stream().filter(Cell.Code.class::isInstance).map(Cell::text).toList());
            }
        }
        return all;
    }
}
