package org.calicograph.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.command.output.Refusal;
import org.calicograph.course.StandingReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code class}: how every quilt of a folder of notebooks stands, on one page. */
@Command(
        name = "class",
        header = "Tell how every quilt of a class stands.",
        description = {"Each notebook in the folder is one student's. Its cell of the form Standing.of(quilt).by(\"…\") says what it is for and what is done; "
            + "without one its last quilt is looked at. Only notebooks that have changed are drawn anew.",
            "The page shows each quilt small, its standing through the seasons, and what is wrong with it in words."},
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:every notebook was read and drawn", "1:a cell failed; the page says which", "2:a file can't be read or written, or the command was not understood"},
        footer = {"", "Example:", "  calicograph class notebooks/sail-loft --out sail-loft.html", ""})
final class ClassCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FOLDER", description = "The folder with the notebooks.")
    private Path folder;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The page's file; - for standard output.")
    private Path out;

    @Option(names = "--unrun", description = "Run no cell: show only what the notebooks have saved.")
    private boolean unrun;

    @Mixin
    private DrawingOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        if (!options.dials().isEmpty()) {
            throw new Refusal(Refusal.FILE, "--set turns a dial of one notebook, and a class has many; leave it out");
        }
        List<Path> files = notebooks();
        OutputPlace.require(out, folder, "<!DOCTYPE");
        List<Pupil> pupils = new ArrayList<>();
        int failed = 0;
        int workers = Math.max(1, Math.min(4, Runtime.getRuntime().availableProcessors()));
        ExecutorService bench = Executors.newFixedThreadPool(workers);
        try (ClassBench kernels = new ClassBench(options)) {
            Optional<ClassBench> drawing = unrun ? Optional.empty() : Optional.of(kernels);
            List<Future<Pupil>> all = files.stream().map(f -> bench.submit(() -> Pupil.of(f, options, drawing))).toList();
            for (Future<Pupil> each : all) {
                pupils.add(each.get());
            }
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(Refusal.FILE, "interrupted", e);
        } finally {
            bench.shutdownNow();
        }
        for (Pupil p : pupils) {
            for (String line : p.failures()) {
                err.println(p.file() + ": " + line);
                failed = Math.max(failed, p.unreadable() ? Refusal.FILE : Refusal.CELL);
            }
        }
        String title = folder.toAbsolutePath().normalize().getFileName() == null ? "class" : folder.toAbsolutePath().normalize().getFileName().toString();
        OutputFiles.save(out, ClassPage.of(title, pupils).getBytes(StandardCharsets.UTF_8));
        long drawn = pupils.stream().filter(Pupil::drawnNow).count();
        long wrong = pupils.stream().filter(p -> p.report().map(r -> !r.wrong().isEmpty()).orElse(true)).count();
        OutputFiles.tell(out, spec, pupils.size() + (pupils.size() == 1 ? " notebook" : " notebooks") + " in " + out + ", " + drawn + " drawn anew; "
                + wrong + (wrong == 1 ? " has" : " have") + " something to mend");
        return failed;
    }

    /** @throws Refusal if there is no such folder, or no notebook in it */
    private List<Path> notebooks() {
        if (!Files.isDirectory(folder)) {
            throw new Refusal(Refusal.FILE, folder + ": this is not a folder; name the folder that the class's notebooks lie in");
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*.json")) {
            for (Path file : all) {
                if (Files.isRegularFile(file) && !file.getFileName().toString().startsWith(".") && !file.getFileName().toString().equals("report.json")) {
                    files.add(file);
                }
            }
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, folder + ": the folder can't be read (" + Refusal.reason(e) + ")", e);
        }
        if (files.isEmpty()) {
            throw new Refusal(Refusal.FILE, folder + ": there is no notebook in this folder; notebooks end in .json");
        }
        files.sort(null);
        return files;
    }
}
