package org.calicograph.session;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.calicograph.measure.Length;

/**
 * How a session runs its kernel.
 *
 * @param heapMegabytes the kernel's heap
 * @param timeLimit     for each cell
 * @param stdlib        folders of stdlib sources, later ones laid over earlier ones; those that don't exist are skipped
 * @param cache         folder for compiled stdlib classes and class-data archives
 * @param spare         true to keep a second kernel warm, for a quick start after a stop
 * @param warm          true to prepare completion while the kernel is idle
 * @param patience      how long a kernel may keep silent where it owes an answer at once
 * @param kernel        the kernel's main class and options put before it; for tests
 * @param lengths       the system in which the kernel writes lengths and areas; values are the same in both
 */
public record SessionOptions(int heapMegabytes, Duration timeLimit, List<Path> stdlib, Path cache, boolean spare, boolean warm,
                             Duration patience, List<String> kernel, Length.System lengths) {

    private static final String KERNEL = "org.calicograph.kernel.KernelMain";

    public SessionOptions {
        if (heapMegabytes < 64) {
            throw new IllegalArgumentException("a kernel can't work in " + heapMegabytes + " MB; give it 64 or more");
        }
        if (timeLimit.isNegative() || timeLimit.isZero()) {
            throw new IllegalArgumentException("a time limit of " + timeLimit.toMillis() + " ms lets no cell run; give it more");
        }
        stdlib = List.copyOf(stdlib);
        kernel = List.copyOf(kernel);
    }

    /**
     * 1 GB, two minutes for each cell, the stdlib of the product (the folder {@code stdlib} in
     * {@code calicograph.home}, or else in the working directory), no spare.
     */
    public static SessionOptions standard() {
        return new SessionOptions(1024, Duration.ofMinutes(2), List.of(home().resolve("stdlib")), cacheFolder(), false, false,
                Duration.ofSeconds(20), List.of(KERNEL), Length.System.INCH);
    }

    private static Path home() {
        return Path.of(System.getProperty("calicograph.home", "")).toAbsolutePath();
    }

    private static Path cacheFolder() {
        String given = System.getProperty("calicograph.cache", "");
        if (!given.isBlank()) {
            return Path.of(given);
        }
        String xdg = System.getenv("XDG_CACHE_HOME");
        Path base = xdg != null && !xdg.isBlank() ? Path.of(xdg) : Path.of(System.getProperty("user.home"), ".cache");
        return base.resolve("calicograph");
    }

    public SessionOptions withHeap(int megabytes) {
        return new SessionOptions(megabytes, timeLimit, stdlib, cache, spare, warm, patience, kernel, lengths);
    }

    public SessionOptions withTimeLimit(Duration limit) {
        return new SessionOptions(heapMegabytes, limit, stdlib, cache, spare, warm, patience, kernel, lengths);
    }

    /** With the user's own routines in {@code stdlib} beside the notebook laid over the product's. */
    public SessionOptions beside(Path notebook) {
        Path own = notebook.toAbsolutePath().resolveSibling("stdlib");
        if (stdlib.contains(own)) {
            return this;
        }
        List<Path> all = new java.util.ArrayList<>(stdlib);
        all.add(own);
        return withStdlib(all);
    }

    public SessionOptions withStdlib(List<Path> folders) {
        return new SessionOptions(heapMegabytes, timeLimit, folders, cache, spare, warm, patience, kernel, lengths);
    }

    public SessionOptions withCache(Path folder) {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, folder, spare, warm, patience, kernel, lengths);
    }

    /** With lengths and areas written in the given system. */
    public SessionOptions withLengths(Length.System system) {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, cache, spare, warm, patience, kernel, system);
    }

    /** For drawings beside the open notebook: without a spare kernel or completion. */
    public SessionOptions alone() {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, cache, false, false, patience, kernel, lengths);
    }

    /** For the desk: a spare kernel and completion made ready beforehand. */
    public SessionOptions forDesk() {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, cache, true, true, patience, kernel, lengths);
    }

    public SessionOptions withPatience(Duration silence) {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, cache, spare, warm, silence, kernel, lengths);
    }

    /** Another program in the kernel's place: options for the JVM, if any, and a main class. */
    public SessionOptions withKernel(String... command) {
        return new SessionOptions(heapMegabytes, timeLimit, stdlib, cache, spare, warm, patience, List.of(command), lengths);
    }
}
