package org.calicograph.desk.prose;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.calicograph.desk.opened.Finder;
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

    /** Marks the sought words in all paragraphs below a node; where they run over from one style to another they aren't seen. */
    static void mark(Parent page, String sought) {
        if (sought.isEmpty()) {
            return;
        }
        for (Node each : List.copyOf(page.getChildrenUnmodifiable())) {
            if (each instanceof TextFlow flow) {
                List<Node> parts = new ArrayList<>();
                flow.getChildren().forEach(t -> parts.addAll(t instanceof Text text ? parted(text, sought) : List.of(t)));
                flow.getChildren().setAll(parts);
            } else if (each instanceof Labeled code && !Finder.places(code.getText(), sought).isEmpty()) {
                code.getStyleClass().add("found");
            } else if (each instanceof Parent parent) {
                mark(parent, sought);
            }
        }
    }

    private static List<Node> parted(Text text, String sought) {
        List<Node> parts = new ArrayList<>();
        int from = 0;
        for (int at : Finder.places(text.getText(), sought)) {
            parts.add(like(text, from, at));
            Text found = like(text, at, at + sought.length());
            found.getStyleClass().add("found");
            parts.add(found);
            from = at + sought.length();
        }
        parts.add(like(text, from, text.getText().length()));
        return parts;
    }

    private static Text like(Text text, int from, int to) {
        Text part = new Text(text.getText().substring(from, to));
        part.getStyleClass().addAll(text.getStyleClass());
        return part;
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
