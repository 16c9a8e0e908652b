package org.calicograph.desk.prose;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/** Markdown set as a page: paragraphs, headings, lists, quotations, tables and code. HTML is shown as it is written. */
public final class Prose {

    private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();

    private static final TextContentRenderer ALOUD = TextContentRenderer.builder().extensions(List.of(TablesExtension.create())).build();
    private static final String INVITATION = "Write here what the notebook is about. Double-click, or press Enter.";

    private Prose() { }

    /** The text as a column of nodes; an invitation where there is none. */
    public static Region of(String markdown) {
        return of(markdown, "");
    }

    /** The same, with every place of the sought words marked. */
    public static Region of(String markdown, String sought) {
        VBox page = new VBox(10);
        page.getStyleClass().add("prose");
        if (markdown.isBlank()) {
            Label empty = new Label(INVITATION);
            empty.getStyleClass().add("invitation");
            page.getChildren().add(empty);
        } else {
            blocks(PARSER.parse(markdown), page);
            Words.mark(page, sought);
        }
        return page;
    }

    /** The text as it is read aloud, without its marks. */
    public static String spoken(String markdown) {
        return markdown.isBlank() ? INVITATION : ALOUD.render(PARSER.parse(markdown)).strip();
    }

    /** Plain words that wrap and are never cut, in a style of the desk. */
    public static Label words(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    private static void blocks(org.commonmark.node.Node parent, VBox into) {
        for (var block = parent.getFirstChild(); block != null; block = block.getNext()) {
            into.getChildren().add(block(block));
        }
    }

    private static Node block(org.commonmark.node.Node block) {
        if (block instanceof Heading heading) {
            TextFlow flow = Words.of(block);
            flow.getStyleClass().add("heading-" + Math.min(4, heading.getLevel()));
            flow.setAccessibleRoleDescription("heading");
            return flow;
        } else if (block instanceof BulletList) {
            return list(block, 0, false);
        } else if (block instanceof OrderedList ordered) {
            Integer first = ordered.getMarkerStartNumber();
            return list(block, first == null ? 1 : first, true);
        } else if (block instanceof BlockQuote) {
            VBox quote = new VBox(8);
            quote.getStyleClass().add("quotation");
            blocks(block, quote);
            return quote;
        } else if (block instanceof FencedCodeBlock code) {
            return code(code.getLiteral());
        } else if (block instanceof IndentedCodeBlock code) {
            return code(code.getLiteral());
        } else if (block instanceof HtmlBlock html) {
            return code(html.getLiteral());
        } else if (block instanceof ThematicBreak) {
            Region rule = new Region();
            rule.getStyleClass().add("prose-rule");
            return rule;
        } else if (block instanceof TableBlock) {
            return table(block);
        } else if (block instanceof Paragraph) {
            return Words.of(block);
        }
        VBox other = new VBox(8);
        blocks(block, other);
        return other;
    }

    private static Node list(org.commonmark.node.Node list, int first, boolean numbered) {
        VBox items = new VBox(4);
        items.setPadding(new Insets(0, 0, 0, 6));
        int number = first;
        for (var item = list.getFirstChild(); item != null; item = item.getNext()) {
            Label mark = new Label(numbered ? number++ + "." : "\u2022");
            mark.getStyleClass().add("list-mark");
            mark.setMinWidth(22);
            VBox body = new VBox(4);
            blocks(item, body);
            HBox.setHgrow(body, Priority.ALWAYS);
            items.getChildren().add(new HBox(mark, body));
        }
        return items;
    }

    private static Node code(String literal) {
        Label label = new Label(literal.stripTrailing());
        label.getStyleClass().addAll("code", "prose-code");
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    private static Node table(org.commonmark.node.Node block) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("prose-table");
        grid.setHgap(18);
        grid.setVgap(4);
        grid.setAccessibleRole(AccessibleRole.TABLE_VIEW);
        int row = 0;
        for (var part = block.getFirstChild(); part != null; part = part.getNext()) {
            if (part instanceof TableHead || part instanceof TableBody) {
                for (var line = part.getFirstChild(); line != null; line = line.getNext()) {
                    row = line instanceof TableRow ? row(grid, line, row, part instanceof TableHead) : row;
                }
            }
        }
        return grid;
    }

    private static int row(GridPane grid, org.commonmark.node.Node line, int row, boolean head) {
        int column = 0;
        for (var cell = line.getFirstChild(); cell != null; cell = cell.getNext()) {
            if (cell instanceof TableCell) {
                TextFlow words = Words.of(cell);
                words.getStyleClass().add(head ? "prose-table-head" : "prose-table-cell");
                grid.add(words, column++, row);
            }
        }
        return row + 1;
    }
}
