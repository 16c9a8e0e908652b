package org.calicograph.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.execution.LocalExecutionControlProvider;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * What the way through the kernel costs. {@code throughTheKernel} should take at most 1.15 times
 * {@code jshellAlone}; {@code turn} should take at most a fiftieth of {@code anew}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class KernelBenchmark {

    private static final String CELL = """
            int rows = %d;
            Length side = inches(3);
            List<Picture> parts = new ArrayList<>();
            for (int i = 0; i < rows; i++) {
                parts.add(Picture.of(Region.rectangle(side, side)).filled(Colour.hex("#24425c")).moved(3 * i, 0));
            }
            Picture.group(parts)
            """;
    private static final String DIAL = "int rows = dial(\"rows\", 1, 50, 10);";
    private static final String DEPENDENT = CELL.substring(CELL.indexOf('\n') + 1);

    private Session session;
    private Session dialled;
    private JShell jshell;
    private List<Snippet> last = new ArrayList<>();
    private int count;
    private int position;

    @Setup
    public void start() throws Exception {
        Path cache = Files.createTempDirectory("bench");
        SessionOptions options = SessionOptions.standard().withStdlib(List.of()).withCache(cache).forDesk();
        session = Session.open(List.of(new CellSource("a1", CELL.formatted(10))), Map.of(), options, SessionListener.NONE);
        session.drawAll().get();
        dialled = Session.open(List.of(new CellSource("a1", DIAL), new CellSource("a2", DEPENDENT)), Map.of(), options, SessionListener.NONE);
        dialled.drawAll().get();
        jshell = JShell.builder().executionEngine(new LocalExecutionControlProvider(), Map.of()).build();
        jshell.addToClasspath(System.getProperty("java.class.path"));
        for (String each : List.of("measure.*", "geometry.*", "fabric.*", "drawing.*")) {
            jshell.eval("import org.calicograph." + each + ";");
        }
        jshell.eval("import java.util.*;");
        jshell.eval("import static org.calicograph.measure.Length.inches;");
    }

    @TearDown
    public void end() {
        session.close();
        dialled.close();
        jshell.close();
    }

    /** Every time another text, since JShell takes the class it has where a text has not changed. */
    private String cell() {
        return CELL.formatted(10 + ++count % 10_000 % 7) + "// " + count + "\n.moved(" + count + ", 0)";
    }

    @Benchmark
    public CellState throughTheKernel() throws Exception {
        session.edit("a1", cell());
        session.draw("a1").get();
        if (session.state("a1") instanceof CellState.Done done) {
            return done;
        }
        throw new IllegalStateException(session.state("a1").toString());
    }

    @Benchmark
    public List<Snippet> jshellAlone() {
        for (int i = last.size() - 1; i >= 0; i--) {
            if (jshell.status(last.get(i)).isActive()) {
                jshell.drop(last.get(i));
            }
        }
        List<Snippet> now = new ArrayList<>();
        String rest = cell();
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo info = jshell.sourceCodeAnalysis().analyzeCompletion(rest);
            for (SnippetEvent event : jshell.eval(info.source())) {
                if (event.status() == Snippet.Status.REJECTED || event.exception() != null) {
                    throw new IllegalStateException(event.toString());
                }
                if (event.causeSnippet() == null && event.snippet().kind().isPersistent()) {
                    now.add(event.snippet());
                }
            }
            rest = info.remaining();
        }
        last = now;
        return now;
    }

    @Benchmark
    public CellState turn() throws Exception {
        dialled.setDial("rows", 1 + ++position % 50);
        dialled.drawStale().get();
        return dialled.state("a2");
    }

    @Benchmark
    public CellState anew() throws Exception {
        count++;
        dialled.edit("a1", DIAL + " // " + count);
        dialled.edit("a2", "// " + count + "\n" + DEPENDENT + ".moved(" + count + ", 0)");
        dialled.drawStale().get();
        return dialled.state("a2");
    }
}
