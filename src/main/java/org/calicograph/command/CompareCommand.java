package org.calicograph.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.calicograph.command.output.HtmlFrame;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.command.output.OutputPlace;
import org.calicograph.command.output.Refusal;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.session.BookletCell;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare}: two quilts beside each other. */
@Command(
        name = "compare",
        header = "Lay the quilts of two notebooks beside each other: what differs in the quilt, not in the text.",
        description = "Pictures, and every number that is not the same: size, patches, cloth to buy, pieces, finishing. Also for a notebook and its earlier version.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:both were drawn, alike or not", "1:a cell failed", "2:a file can't be read or written, or the command was not understood"},
        footer = {"", "Example:", "  calicograph compare last-week.json harbour-light.json --out what-changed.html", ""})
final class CompareCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "FIRST", description = "A notebook.")
    private Path first;

    @Parameters(index = "1", paramLabel = "SECOND", description = "Another, or a later version.")
    private Path second;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The page's file; - for standard output.")
    private Path out;

    @Option(names = "--quilt", paramLabel = "NAME", description = "The name of the quilt in both (default: the last that each names).")
    private String quilt;

    @Mixin
    private DrawingOptions options;

    @Spec
    private CommandSpec spec;

    /** One quilt: its picture, and what its table says. */
    private record Side(String title, String caption, Picture picture, Map<String, String> facts) { }

    @Override
    public Integer call() {
        OutputPlace.require(out, first, "<!DOCTYPE");
        OutputPlace.require(out, second, "<!DOCTYPE");
        Side a = side(first);
        Side b = side(second);
        Set<String> names = new LinkedHashSet<>(a.facts().keySet());
        names.addAll(b.facts().keySet());
        long differ = names.stream().filter(n -> !Objects.equals(a.facts().get(n), b.facts().get(n))).count();
        OutputFiles.save(out, page(a, b, names).getBytes(StandardCharsets.UTF_8));
        String words = differ == 0 ? "nothing differs but perhaps the picture" : differ + (differ == 1 ? " number differs" : " numbers differ");
        OutputFiles.tell(out, spec, words + ", of " + names.size() + ", in " + out);
        return 0;
    }

    private Side side(Path file) {
        try (Drawing drawing = Drawing.open(file, options, spec.commandLine().getErr())) {
            drawing.drawAll();
            List<String> names = quilt == null ? BookletCell.names(drawing.notebook()) : List.of(quilt);
            for (String name : names) {
                CellState state = drawing.alsoDraw(new CellSource("_the-facts", "org.calicograph.book.QuiltFacts.ofAny(" + name + ")"));
                Optional<Side> side = state instanceof CellState.Done done ? read(drawing.notebook().title(), done.exhibit()) : Optional.empty();
                if (side.isPresent()) {
                    return side.get();
                }
            }
            drawing.tellFailures(file.toString(), spec.commandLine().getErr());
            throw new Refusal(Refusal.CELL, file + ": there is no quilt to compare" + (quilt == null ? "; write 'var quilt = …' in a cell" : " by the name '" + quilt + "'"));
        }
    }

    private static Optional<Side> read(String title, Exhibit exhibit) {
        if (!(exhibit instanceof Exhibit.Several two) || two.parts().size() != 2 || !(two.parts().get(0) instanceof Exhibit.Drawn drawn)
                || !(two.parts().get(1) instanceof Exhibit.Tabled told)) {
            return Optional.empty();
        }
        Map<String, String> facts = new LinkedHashMap<>();
        for (List<Table.Entry> row : told.table().rows()) {
            facts.put(row.get(0).text(), row.get(1).text());
        }
        return Optional.of(new Side(title, drawn.caption(), drawn.picture(), facts));
    }

    private String page(Side a, Side b, Set<String> names) {
        StringBuilder html = new StringBuilder(HtmlFrame.head("Two quilts: " + a.title() + " and " + b.title(), """
                main { max-width: 62rem; }
                .two { display: grid; grid-template-columns: 1fr 1fr; gap: 1.5rem; } .two img { max-width: 100%; max-height: 26rem; } .two p { color: var(--faint); font-size: .92rem; }
                tr.same td { color: var(--faint); } td.mark { width: 5.5rem; }
                """));
        html.append("<h1>Two quilts beside each other</h1>\n<div class=\"two\">\n").append(figure(a, first)).append(figure(b, second)).append("</div>\n");
        html.append("<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\"></th><th scope=\"col\">What</th><th scope=\"col\">").append(HtmlFrame.escaped(name(first)))
                .append("</th><th scope=\"col\">").append(HtmlFrame.escaped(name(second))).append("</th></tr></thead>\n<tbody>\n");
        for (boolean changed : new boolean[] {true, false}) {
            for (String name : names) {
                String one = a.facts().getOrDefault(name, "none");
                String other = b.facts().getOrDefault(name, "none");
                if (one.equals(other) != changed) {
                    html.append("<tr class=\"").append(changed ? "changed" : "same").append("\"><td class=\"mark\">").append(changed ? "<strong>differs</strong>" : "the same").append("</td><td>")
                            .append(HtmlFrame.escaped(name)).append("</td><td>").append(HtmlFrame.escaped(one)).append("</td><td>").append(HtmlFrame.escaped(other)).append("</td></tr>\n");
                }
            }
        }
        return html.append("</tbody>\n</table></div>\n</main>\n</body>\n</html>\n").toString();
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private static String figure(Side side, Path file) {
        return "<figure><img alt=\"" + HtmlFrame.escaped(side.caption()) + "\" src=\"data:image/png;base64," + java.util.Base64.getEncoder().encodeToString(OutputFiles.png(side.picture(), 900))
                + "\">\n<p>" + HtmlFrame.escaped(name(file)) + ": " + HtmlFrame.escaped(side.caption()) + "</p></figure>\n";
    }
}
