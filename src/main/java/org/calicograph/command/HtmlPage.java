package org.calicograph.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.drawing.Table;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellState;
import org.calicograph.wire.Dial;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** A drawn notebook as one HTML page. HTML within prose is shown as text, never obeyed. */
final class HtmlPage {

    private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().extensions(List.of(TablesExtension.create()))
            .escapeHtml(true).sanitizeUrls(true).build();

    private static final String STYLE = """
            :root { --ink: #23303a; --faint: #5d6b74; --paper: #fcfaf5; --line: #d9d3c5; --accent: #2f6f8f; --wrong: #9b3d2a; }
            @media (prefers-color-scheme: dark) {
              :root { --ink: #e7e3d8; --faint: #a4aeb4; --paper: #1d2429; --line: #3a444b; --accent: #8cc3dc; --wrong: #f0a08c; } }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 1.05rem/1.6 Georgia, 'Liberation Serif', serif; }
            main { max-width: 46rem; margin: 0 auto; padding: 2.5rem 1.25rem 5rem; }
            h1, h2, h3 { line-height: 1.2; font-weight: 600; margin: 2.2rem 0 .7rem; }
            h1 { font-size: 2rem; } h2 { font-size: 1.45rem; } h3 { font-size: 1.15rem; }
            a { color: var(--accent); }
            figure { margin: 1.4rem 0; text-align: center; }
            figure svg { max-width: 100%; max-height: 42rem; height: auto; background: #fff; border-radius: 3px; }
            figcaption { color: var(--faint); font-size: .9rem; margin-top: .5rem; }
            table { border-collapse: collapse; margin: 1.2rem 0; font-size: .95rem; width: 100%; }
            caption { text-align: left; font-weight: 600; padding-bottom: .3rem; }
            th, td { padding: .3rem .7rem .3rem 0; border-bottom: 1px solid var(--line); text-align: left; vertical-align: top; }
            td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; }
            pre { background: rgba(128, 128, 128, .1); padding: .8rem 1rem; overflow-x: auto; font: .85rem/1.5 'DejaVu Sans Mono', Menlo, monospace; border-radius: 3px; }
            details { margin: .4rem 0 1rem; } summary { color: var(--faint); font-size: .85rem; cursor: pointer; }
            .wrong { border-left: 3px solid var(--wrong); padding-left: .8rem; color: var(--wrong); }
            .dials { color: var(--faint); font-size: .9rem; }
            @media print { details { display: none; } main { max-width: none; padding: 0; } figure, table { break-inside: avoid; } }
            """;

    private HtmlPage() { }

    static String of(Notebook notebook, Map<String, CellState> states, List<Dial> dials) {
        StringBuilder out = new StringBuilder();
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .append("<title>").append(escaped(notebook.title())).append("</title>\n<style>\n").append(STYLE)
                .append("</style>\n</head>\n<body>\n<main>\n");
        if (notebook.cells().stream().noneMatch(c -> c instanceof Cell.Prose && c.text().startsWith("# "))) {
            out.append("<h1>").append(escaped(notebook.title())).append("</h1>\n");
        }
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Prose prose) {
                out.append("<section>\n").append(RENDERER.render(PARSER.parse(prose.text()))).append("</section>\n");
            } else {
                code(cell, Optional.ofNullable(states.get(cell.id())), dials, out);
            }
        }
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private static void code(Cell cell, Optional<CellState> state, List<Dial> dials, StringBuilder out) {
        out.append("<section id=\"cell-").append(escaped(cell.id())).append("\">\n");
        List<Dial> own = dials.stream().filter(d -> d.cell().equals(cell.id())).toList();
        if (!own.isEmpty()) {
            out.append("<p class=\"dials\">");
            own.forEach(d -> out.append(escaped(d.name())).append(" = ").append(escaped(d.text())).append(" &nbsp; "));
            out.append("</p>\n");
        }
        if (state.orElse(null) instanceof CellState.Done done) {
            output(done.output(), out);
            exhibit(done.exhibit(), "c" + cell.id(), out);
        } else if (state.orElse(null) instanceof CellState.Failed failed) {
            output(failed.output(), out);
            String at = failed.failure().at().map(p -> "At " + p + ": ").orElse("");
            out.append("<p class=\"wrong\" role=\"alert\">This cell failed. ").append(escaped(at + failed.failure().message())).append("</p>\n");
        }
        out.append("<details><summary>The code of this cell</summary><pre><code>").append(escaped(cell.text())).append("</code></pre></details>\n</section>\n");
    }

    private static void output(String output, StringBuilder out) {
        if (!output.isBlank()) {
            out.append("<pre>").append(escaped(output)).append("</pre>\n");
        }
    }

    private static void exhibit(Exhibit exhibit, String id, StringBuilder out) {
        if (exhibit instanceof Exhibit.Drawn drawn) {
            out.append("<figure role=\"img\" aria-label=\"").append(escaped(drawn.caption().isEmpty() ? "picture" : drawn.caption())).append("\">\n")
                    .append(SvgWriter.inline(drawn.picture(), id)).append('\n');
            if (!drawn.caption().isEmpty()) {
                out.append("<figcaption>").append(escaped(drawn.caption())).append("</figcaption>\n");
            }
            out.append("</figure>\n");
        } else if (exhibit instanceof Exhibit.Tabled tabled) {
            table(tabled.table(), out);
        } else if (exhibit instanceof Exhibit.Words words) {
            out.append("<p>").append(escaped(words.text()).replace("\n", "<br>\n")).append("</p>\n");
        } else if (exhibit instanceof Exhibit.Several several) {
            for (int i = 0; i < several.parts().size(); i++) {
                exhibit(several.parts().get(i), id + "-" + (i + 1), out);
            }
        }
    }

    private static void table(Table table, StringBuilder out) {
        out.append("<table>\n");
        if (!table.title().isEmpty()) {
            out.append("<caption>").append(escaped(table.title())).append("</caption>\n");
        }
        out.append("<thead><tr>");
        for (int c = 0; c < table.columns().size(); c++) {
            out.append(isNumeric(table, c) ? "<th class=\"number\" scope=\"col\">" : "<th scope=\"col\">").append(escaped(table.columns().get(c))).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<Table.Entry> row : table.rows()) {
            out.append("<tr>");
            for (int c = 0; c < row.size(); c++) {
                out.append(isNumeric(table, c) ? "<td class=\"number\">" : "<td>").append(escaped(row.get(c).text())).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n");
    }

    private static boolean isNumeric(Table table, int column) {
        return !table.rows().isEmpty() && table.rows().stream().allMatch(r -> r.get(column).isNumber());
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
