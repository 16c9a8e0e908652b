package org.calicograph.kernel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.calicograph.wire.ExhibitFormat;
import org.calicograph.wire.ToKernel;

/**
 * Makes the class-data archive from which later kernels start: runs a process that does what a kernel
 * does first, lets Java write down the classes that it loaded, and puts the file in its place whole.
 *
 * <p>Started by a session as it closes, once for every build of the product and every Java; it is of no
 * consequence if it fails.
 */
public final class Rehearsal {

    private static final String CELL = """
            int points = dial("points", 5, 16, 12);
            Length wide = inches(24);
            record Corner(double x, double y) { }
            List<Corner> corners = new ArrayList<>();
            for (int i = 0; i < points; i++) {
                corners.add(new Corner(cos(i), sin(i)));
            }
            int twice(int n) { return 2 * n; }
            var names = corners.stream().map(c -> c.toString()).toList();
            Picture.of(Region.rectangle(wide, wide)).filled(Colour.hex("#24425c"))
            """;

    private Rehearsal() { }

    /**
     * @param arguments {@code play FOLDER} to do what a kernel does, with a folder for classes; or an archive's file,
     *     the folder, and then the java command and its options, to have it done and written down
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments[0].equals("play")) {
            play(Path.of(arguments[1]));
        } else {
            direct(Path.of(arguments[0]), arguments[1], List.of(arguments).subList(2, arguments.length));
        }
    }

    private static void play(Path cache) throws IOException {
        Cells cells = new Cells(new Running(), Stdlib.of(List.of(), cache), 256);
        cells.takeOverOutput();
        cells.scan(List.of("a1"), List.of(CELL));
        Cells.Result result = cells.evaluate("a1", CELL, Map.of(), List.of());
        if (result.exhibit().isPresent()) {
            ExhibitFormat.exhibit(result.exhibit().get());
        }
        cells.evaluate("a2", "wrong", Map.of(), List.of());
        String text = "inches(2).ti";
        new Completer(cells, new Sources("", Stdlib.of(List.of(), cache))).complete(new ToKernel.Complete(1, "a1", List.of(), text, text.length()));
        System.exit(result.failure().isEmpty() ? 0 : 1);
    }

    private static void direct(Path archive, String cache, List<String> java) throws IOException, InterruptedException {
        Path draft = Files.createTempFile(archive.getParent(), "kernel", ".draft");
        try {
            List<String> command = new ArrayList<>(java);
            command.add(1, "-XX:ArchiveClassesAtExit=" + draft);
            command.addAll(List.of(Rehearsal.class.getName(), "play", cache));
            Process player = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD).start();
            boolean ended = player.waitFor(2, TimeUnit.MINUTES);
            if (ended && player.exitValue() == 0 && Files.size(draft) > 0) {
                Files.move(draft, archive, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } else {
                player.destroyForcibly();
            }
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}
