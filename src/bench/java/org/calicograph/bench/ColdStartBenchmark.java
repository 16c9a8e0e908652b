package org.calicograph.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import jdk.jshell.JShell;
import jdk.jshell.SnippetEvent;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * From a cold start to the first result, processes and all: {@code draw} should take at most twice as
 * long as {@code bareJShell}, a program of a few lines that creates a JShell and evaluates the same cell.
 * Neither has a class-data archive.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ColdStartBenchmark {

    private static final List<String> CELL = List.of("int points = 12;", "var wide = inches(24);", "wide.times(points)");

    private Path folder;

    /** The program to compare with. */
    public static final class Bare {
        public static void main(String[] arguments) {
            try (JShell jshell = JShell.create()) {
                jshell.addToClasspath(System.getProperty("java.class.path"));
                jshell.eval("import static org.calicograph.measure.Length.inches;");
                for (String each : CELL) {
                    for (SnippetEvent event : jshell.eval(each)) {
                        System.out.println(event.value());
                    }
                }
            }
        }
    }

    @Setup
    public void write() throws IOException {
        folder = Files.createTempDirectory("bench");
        Files.writeString(folder.resolve("cold.json"), "{\"calicograph\": 1, \"title\": \"\", \"cells\": [{\"id\": \"a1\", \"kind\": \"code\", \"text\": [\""
                + String.join("\", \"", CELL) + "\"]}], \"dials\": {}, \"results\": {}}\n");
    }

    private static int run(List<String> options, String... main) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(main));
        int code = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.INHERIT).start().waitFor();
        if (code != 0) {
            throw new IllegalStateException(main[0] + " ended with " + code);
        }
        return code;
    }

    @Benchmark
    public int draw() throws Exception {
        // As the launcher starts it.
        return run(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Dcalicograph.cds=off", "-Dcalicograph.cache=" + folder),
                "org.calicograph.command.Main", "draw", folder.resolve("cold.json").toString(), "--out", folder.resolve("out").toString());
    }

    @Benchmark
    public int bareJShell() throws Exception {
        return run(List.of(), Bare.class.getName());
    }
}
