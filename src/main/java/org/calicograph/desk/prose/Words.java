package org.calicograph.desk.prose;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;

/** The words of a paragraph: plain, strong, emphasised, code, links. */
final class Words {

    private Words() { }

    static TextFlow of(org.commonmark.node.Node block) {
        TextFlow flow = new TextFlow();
        flow.setLineSpacing(4);
        inline(block, List.of(), flow);
        return flow;
    }

    private static void inline(org.commonmark.node.Node parent, List<String> styles, TextFlow flow) {
        for (var each = parent.getFirstChild(); each != null; each = each.getNext()) {
            if (each instanceof org.commonmark.node.Text text) {
                add(text.getLiteral(), styles, flow);
            } else if (each instanceof SoftLineBreak) {
                add(" ", styles, flow);
            } else if (each instanceof HardLineBreak) {
                add("\n", styles, flow);
            } else if (each instanceof Code code) {
                add(code.getLiteral(), with(styles, "code"), flow);
            } else if (each instanceof HtmlInline html) {
                add(html.getLiteral(), styles, flow);
            } else if (each instanceof StrongEmphasis) {
                inline(each, with(styles, "strong"), flow);
            } else if (each instanceof Emphasis) {
                inline(each, with(styles, "emphasis"), flow);
            } else if (each instanceof Link link) {
                inline(each, with(styles, "link"), flow);
                if (!link.getDestination().isBlank()) {
                    add(" (" + link.getDestination() + ")", with(styles, "quiet"), flow);
                }
            } else if (each instanceof Image) {
                add("[picture: ", with(styles, "quiet"), flow);
                inline(each, with(styles, "quiet"), flow);
                add("]", with(styles, "quiet"), flow);
            } else {
                inline(each, styles, flow);
            }
        }
    }

    private static List<String> with(List<String> styles, String more) {
        List<String> all = new ArrayList<>(styles);
        all.add(more);
        return all;
    }

    private static void add(String words, List<String> styles, TextFlow flow) {
        Text text = new Text(words);
        text.getStyleClass().add("word");
        text.getStyleClass().addAll(styles);
        flow.getChildren().add(text);
    }
}
