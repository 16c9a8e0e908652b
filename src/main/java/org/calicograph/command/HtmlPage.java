package org.calicograph.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.calicograph.command.output.HtmlFrame;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellState;
import org.calicograph.wire.Dial;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/** A drawn notebook as one HTML page. HTML within prose is shown as text, never obeyed. */
final class HtmlPage {

    private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().extensions(List.of(TablesExtension.create()))
            .escapeHtml(true).sanitizeUrls(true).nodeRendererFactory(HtmlPage::pictures).build();

    /** Rows of tables are ticked off by a press or by Enter, and are still ticked when the page is opened again in the same browser. */
    private static final String TICKS = """
            document.querySelectorAll('tbody tr').forEach((row, i) => {
              const name = document.title + ' ' + i + ' ' + row.textContent;
              const show = on => { row.classList.toggle('done', on); row.setAttribute('aria-checked', on); };
              const turn = () => { const on = !row.classList.contains('done'); show(on); try { on ? localStorage.setItem(name, 1) : localStorage.removeItem(name); } catch (e) { } };
              row.tabIndex = 0; row.setAttribute('role', 'checkbox');
              try { show(localStorage.getItem(name) === '1'); } catch (e) { show(false); }
              row.addEventListener('click', turn);
              row.addEventListener('keydown', e => { if (e.key === 'Enter' || e.key === ' ') { e.preventDefault(); turn(); } });
            });
            """;

    /** Pictures narrower than this, in inches, stand beside each other. */
    private static final double SMALL = 4;

    private HtmlPage() { }

    static String of(Notebook notebook, Map<String, CellState> states, List<Dial> dials) {
        StringBuilder out = new StringBuilder();
        out.append(HtmlFrame.head(notebook.title(), ""));
        if (notebook.cells().stream().noneMatch(c -> c instanceof Cell.Prose && c.text().startsWith("# "))) {
            out.append("<h1>").append(HtmlFrame.escaped(notebook.title())).append("</h1>\n");
        }
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Prose prose) {
                out.append("<section>\n").append(RENDERER.render(PARSER.parse(prose.text()))).append("</section>\n");
            } else {
                code(cell, Optional.ofNullable(states.get(cell.id())), dials, out);
            }
        }
        return out.append("</main>\n<script>\n").append(TICKS).append("</script>\n</body>\n</html>\n").toString();
    }

    private static void code(Cell cell, Optional<CellState> state, List<Dial> dials, StringBuilder out) {
        out.append("<section id=\"cell-").append(HtmlFrame.escaped(cell.id())).append("\">\n");
        List<Dial> own = dials.stream().filter(d -> d.cell().equals(cell.id())).toList();
        if (!own.isEmpty()) {
            out.append("<p class=\"dials\">");
            own.forEach(d -> out.append(HtmlFrame.escaped(d.name())).append(" = ").append(HtmlFrame.escaped(d.text())).append(" &nbsp; "));
            out.append("</p>\n");
        }
        if (state.orElse(null) instanceof CellState.Done done) {
            output(done.output(), out);
            exhibit(done.exhibit(), "c" + cell.id(), out);
        } else if (state.orElse(null) instanceof CellState.Failed failed) {
            output(failed.output(), out);
            String at = failed.failure().at().map(p -> "At " + p + ": ").orElse("");
            out.append("<p class=\"wrong\" role=\"alert\">This cell failed. ").append(HtmlFrame.escaped(at + failed.failure().message())).append("</p>\n");
        }
        out.append("<details><summary>The working lines</summary><pre><code>").append(HtmlFrame.escaped(cell.text())).append("</code></pre></details>\n</section>\n");
    }

    private static void output(String output, StringBuilder out) {
        if (!output.isBlank()) {
            out.append("<pre>").append(HtmlFrame.escaped(output)).append("</pre>\n");
        }
    }

    private static void exhibit(Exhibit exhibit, String id, StringBuilder out) {
        if (exhibit instanceof Exhibit.Drawn drawn) {
            Box box = drawn.picture().bounds();
            String words = drawn.caption().isEmpty() ? "a picture, " + size(box.width()) + " by " + size(box.height()) : drawn.caption();
            boolean sheet = isSheet(drawn.picture());
            if (sheet) {
                // Paper of the sheet's own size: a page that is smaller would part it.
                out.append("<style>@page ").append("sheet-").append(id).append(" { size: ").append(box.width()).append("in ").append(box.height())
                        .append("in; margin: 0; }</style>\n");
            }
            out.append(sheet ? "<figure class=\"sheet\" style=\"page: sheet-" + id + "; --width: " + box.width() + "in; --height: " + box.height() + "in\"" : "<figure")
                    .append(" role=\"img\" aria-label=\"").append(HtmlFrame.escaped(words)).append("\">\n")
                    .append(SvgWriter.inline(drawn.picture(), id)).append('\n');
            if (!drawn.caption().isEmpty()) {
                out.append("<figcaption>").append(HtmlFrame.escaped(drawn.caption())).append("</figcaption>\n");
            }
            out.append("</figure>\n");
            if (sheet) {
                out.append("<p class=\"dials screen\">A sheet at full size, shown smaller here. Print this page at 100 %, and measure the square on the paper.</p>\n");
            }
        } else if (exhibit instanceof Exhibit.Tabled tabled) {
            table(tabled.table(), out);
        } else if (exhibit instanceof Exhibit.Words words) {
            out.append("<p>").append(HtmlFrame.escaped(words.text()).replace("\n", "<br>\n")).append("</p>\n");
        } else if (exhibit instanceof Exhibit.Several several) {
            boolean small = several.parts().stream().allMatch(p -> p instanceof Exhibit.Drawn drawn && drawn.picture().bounds().width() < SMALL);
            out.append(small ? "<div class=\"row\">\n" : "");
            for (int i = 0; i < several.parts().size(); i++) {
                exhibit(several.parts().get(i), id + "-" + (i + 1), out);
            }
            out.append(small ? "</div>\n" : "");
        }
    }

    private static void table(Table table, StringBuilder out) {
        out.append("<div class=\"wide\">\n<table>\n");
        if (!table.title().isEmpty()) {
            out.append("<caption>").append(HtmlFrame.escaped(table.title())).append("</caption>\n");
        }
        out.append("<thead><tr>");
        for (int c = 0; c < table.columns().size(); c++) {
            out.append(isNumeric(table, c) ? "<th class=\"number\" scope=\"col\">" : "<th scope=\"col\">").append(HtmlFrame.escaped(table.columns().get(c))).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<Table.Entry> row : table.rows()) {
            out.append("<tr>");
            for (int c = 0; c < row.size(); c++) {
                out.append(isNumeric(table, c) ? "<td class=\"number\">" : "<td>").append(HtmlFrame.escaped(row.get(c).text())).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n</div>\n");
    }

    private static String size(double inches) {
        return Length.inches(Math.rint(inches * 8) / 8).toString();
    }

    /** True for a sheet that is printed at full size: one with a test square. */
    private static boolean isSheet(Picture picture) {
        return picture instanceof Picture.Group group
                && (group.label().map(l -> l.id().equals("test-square")).orElse(false) || group.parts().stream().anyMatch(HtmlPage::isSheet));
    }

    /** Pictures that prose names lie elsewhere: their words stand in their place. */
    private static NodeRenderer pictures(HtmlNodeRendererContext context) {
        return new NodeRenderer() {
            @Override
            public Set<Class<? extends Node>> getNodeTypes() {
                return Set.of(Image.class);
            }

            @Override
            public void render(Node node) {
                StringBuilder words = new StringBuilder();
                for (Node each = node.getFirstChild(); each != null; each = each.getNext()) {
                    words.append(each instanceof Text text ? text.getLiteral() : "");
                }
                context.getWriter().text("[picture: " + words + "]");
            }
        };
    }

    private static boolean isNumeric(Table table, int column) {
        return !table.rows().isEmpty() && table.rows().stream().allMatch(r -> r.get(column).isNumber());
    }
}
