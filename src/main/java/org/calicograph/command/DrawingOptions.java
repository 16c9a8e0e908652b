package org.calicograph.command;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.calicograph.measure.Length;
import org.calicograph.session.SessionOptions;
import picocli.CommandLine.Option;

/** The options of every command that draws a notebook. */
final class DrawingOptions {

    @Option(names = "--set", paramLabel = "NAME=VALUE", description = "Set a dial; may be given again for another. Lengths as the trade writes them: --set \"width=7 3/8 in\".")
    private Map<String, String> dials = new LinkedHashMap<>();

    @Option(names = "--metric", description = "Write lengths and areas in metric; where that rounds, the exact inches stand beside.")
    private boolean metric;

    @Option(names = "--heap", paramLabel = "MB", defaultValue = "1024", description = "Memory for the cells, in megabytes (default: ${DEFAULT-VALUE}).")
    private int heap;

    @Option(names = "--time-limit", paramLabel = "SECONDS", defaultValue = "120", description = "The longest a cell may take (default: ${DEFAULT-VALUE}).")
    private double seconds;

    @Option(names = {"-q", "--quiet"}, description = "Show no progress.")
    private boolean quiet;

    @Option(names = "--trace", description = "Show stack traces, for developers.")
    private boolean trace;

    Map<String, String> dials() {
        return new LinkedHashMap<>(dials);
    }

    boolean quiet() {
        return quiet;
    }

    SessionOptions session() {
        try {
            return SessionOptions.standard().withHeap(heap).withTimeLimit(Duration.ofMillis(Math.round(seconds * 1000)))
                    .withLengths(metric ? Length.System.METRIC : Length.System.INCH);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.FILE, e.getMessage(), e);
        }
    }
}
