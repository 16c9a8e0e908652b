package org.calicograph.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutSearch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * Length of layouts over the known optimum, and their cost: by the clock, and by CPU for each of the two
 * threads, which a busy machine changes less. The bar is 2 % on average in ten seconds. Reads the instances of Hopper and Turton
 * (EJOR 128/1, 2001, 34-57, series C) from the file that the system property {@code packing} names; otherwise it cuts
 * up sheets of the same sizes and numbers of pieces by random edge-to-edge cuts.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class PackingBench {

    /** The published instances, where {@code -Dpacking=FILE} names a file that holds them. */
    private static final Path PUBLISHED = Path.of(System.getProperty("packing", "no-instances-named"));

    private static final com.sun.management.OperatingSystemMXBean PROCESS =
            (com.sun.management.OperatingSystemMXBean) java.lang.management.ManagementFactory.getOperatingSystemMXBean();

    @Param({"C1_1", "C1_2", "C1_3", "C2_1", "C2_2", "C2_3", "C3_1", "C3_2", "C3_3", "C4_1", "C4_2", "C4_3"})
    public String instance;

    private Length width;
    private Length optimum;
    private final List<Blank> blanks = new ArrayList<>();
    private Layout found;
    private double seconds;
    private double perThread;

    @Setup
    public void read() throws IOException {
        blanks.clear();
        if (!Files.exists(PUBLISHED)) {
            generate();
            return;
        }
        for (JsonNode each : new ObjectMapper().readTree(PUBLISHED.toFile()).get("instances")) {
            if (each.get("name").asText().equals(instance)) {
                width = Length.inches(each.get("strip_width").asLong());
                optimum = Length.inches(each.get("optimum_height").asLong());
                for (JsonNode item : each.get("items")) {
                    for (int i = 0; i < item.get("n").asInt(); i++) {
                        blanks.add(Blank.of("P" + blanks.size(), Length.inches(item.get("w").asLong()), Length.inches(item.get("h").asLong())));
                    }
                }
            }
        }
    }

    private void generate() {
        int[][] sizes = {{20, 20, 17}, {40, 15, 25}, {60, 30, 28}, {60, 60, 49}};
        int[] size = sizes[instance.charAt(1) - '1'];
        width = Length.inches(size[0]);
        optimum = Length.inches(size[1]);
        Random random = new Random(instance.hashCode());
        List<int[]> sheets = new ArrayList<>(List.of(new int[] {size[0], size[1]}));
        while (sheets.size() < size[2]) {
            int[] s = sheets.remove(random.nextInt(sheets.size()));
            int side = random.nextInt(s[0] + s[1]) < s[0] ? 0 : 1;
            int at = s[side] < 2 ? 0 : 1 + random.nextInt(s[side] - 1);
            int[] a = s.clone();
            int[] b = s.clone();
            a[side] = s[side] - at;
            b[side] = at;
            sheets.add(a);
            if (at > 0) {
                sheets.add(b);
            }
        }
        for (int[] s : sheets) {
            blanks.add(Blank.of("P" + blanks.size(), Length.inches(s[0]), Length.inches(s[1])));
        }
    }

    @Benchmark
    public Layout thorough() {
        long from = System.nanoTime();
        long cpuFrom = PROCESS.getProcessCpuTime();
        found = LayoutSearch.THOROUGH.lay(width, blanks);
        seconds = (System.nanoTime() - from) / 1e9;
        perThread = (PROCESS.getProcessCpuTime() - cpuFrom) / 1e9 / LayoutSearch.THOROUGH.starts();
        return found;
    }

    @TearDown
    public void report() {
        System.out.printf("%n%-8s  %9s  %9s  %8s  %7s  %14s%n", "instance", "optimum", "height", "excess", "seconds", "CPU a thread");
        System.out.printf("%-8s  %9s  %9s  %6.2f %%  %7.1f  %14.1f%n", instance, optimum, found.length(),
                100 * (found.length().ratioTo(optimum) - 1), seconds, perThread);
    }
}
