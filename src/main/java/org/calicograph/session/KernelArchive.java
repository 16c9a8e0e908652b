package org.calicograph.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * The class-data archive that kernels start from: about a third less to load and check before the first
 * cell. It belongs to one build of the product and one Java, and lives in the cache. A session that finds
 * none has it made as it closes, by a process of its own that ends after a few seconds.
 *
 * <p>The system property {@code calicograph.cds} names another archive, or with {@code off} none.
 */
final class KernelArchive {

    private static final String REHEARSAL = "org.calicograph.kernel.Rehearsal";

    private final Path folder;
    private final Optional<Path> file;
    private final boolean ours;

    KernelArchive(SessionOptions options, String classPath) {
        String given = System.getProperty("calicograph.cds", "");
        this.folder = options.cache().resolve("kernel");
        if (!given.isBlank()) {
            this.file = given.equals("off") ? Optional.empty() : Optional.of(Path.of(given));
            this.ours = false;
        } else {
            // Java archives classes from jars only; loose classes are at work where the product is being built.
            boolean jars = List.of(classPath.split(java.io.File.pathSeparator)).stream().allMatch(e -> e.endsWith(".jar"));
            this.file = jars ? Optional.of(folder.resolve(name(classPath))) : Optional.empty();
            this.ours = jars;
        }
    }

    private static String name(String classPath) {
        CRC32 sum = new CRC32();
        sum.update((Runtime.version() + System.getProperty("java.home") + classPath).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        for (String entry : classPath.split(java.io.File.pathSeparator)) {
            java.io.File jar = new java.io.File(entry);
            sum.update((jar.length() + " " + jar.lastModified()).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        return "kernel-" + Runtime.version().feature() + "-" + Long.toHexString(sum.getValue()) + ".jsa";
    }

    List<String> options() {
        return file.filter(Files::isReadable).map(f -> List.of("-XX:SharedArchiveFile=" + f)).orElse(List.of());
    }

    /** Has the archive made, if there is none, by a process that nobody waits for. */
    void rehearse(List<String> java, String classPath) {
        if (!ours || file.isEmpty() || Files.exists(file.get())) {
            return;
        }
        try {
            Files.createDirectories(folder);
            try (var old = Files.newDirectoryStream(folder, "kernel-" + Runtime.version().feature() + "-*.jsa")) {
                for (Path each : old) {
                    Files.deleteIfExists(each); // of a build that is gone
                }
            }
            List<String> command = new ArrayList<>(List.of(java.get(0), "-Xmx64m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1",
                    "-Xlog:disable", "-cp", classPath, REHEARSAL, file.get().toString(), folder.toString()));
            command.addAll(java);
            command.addAll(List.of("-cp", classPath));
            new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        } catch (IOException e) {
            // The next kernel starts without it, a little later.
        }
    }
}
