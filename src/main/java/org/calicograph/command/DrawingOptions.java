package org.calicograph.command;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.command.output.Refusal;
import org.calicograph.measure.Length;
import org.calicograph.session.SessionOptions;
import picocli.CommandLine.Option;

/** The options of every command that draws a notebook. */
final class DrawingOptions {

    @Option(names = "--set", paramLabel = "NAME=VALUE", description = "Set a dial; may be given again for another. Lengths as the trade writes them: --set \"width=7 3/8 in\".")
    private List<String> dials = new ArrayList<>();

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

    /**
     * The dials set, by name.
     *
     * @throws Refusal if one is set twice to different values, or a value has no name
     */
    Map<String, String> dials() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String each : dials) {
            int at = each.indexOf('=');
            if (at < 1) {
                throw new Refusal(Refusal.FILE, "'--set " + each + "' sets no dial; write NAME=VALUE");
            }
            String name = each.substring(0, at);
            String before = all.putIfAbsent(name, each.substring(at + 1));
            if (before != null && !before.equals(each.substring(at + 1))) {
                throw new Refusal(Refusal.FILE, "the dial '" + name + "' is set twice, to " + before + " and to " + each.substring(at + 1) + "; leave one of them");
            }
        }
        return all;
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
