package org.calicograph.drawing.writing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.calicograph.drawing.Tag;

/**
 * The parts of a document as they are read aloud: a tree whose leaves point at what is painted on the pages, and for each
 * page the way back (ISO 32000-1, 14.7). Headings go down by one level at a time, whatever their rank.
 */
final class PdfStructure {

    private static final COSName PARENT_TREE = COSName.getPDFName("ParentTree");

    /** A part of the document. */
    final class Element {

        private final COSDictionary fields = new COSDictionary();
        private final Tag.Role role;
        private final Element above;
        private COSDictionary page;

        private Element(Tag.Role role, String type, Element above) {
            this.role = role;
            this.above = above;
            fields.setName(COSName.S, type);
            if (above != null) {
                fields.setItem(COSName.P, above.fields);
                above.hold(fields);
            }
        }

        /** One entry stands for itself, several in a list. */
        private void hold(COSBase kid) {
            COSBase held = fields.getItem(COSName.K);
            if (held == null) {
                fields.setItem(COSName.K, kid);
            } else if (held instanceof COSArray list) {
                list.add(kid);
            } else {
                COSArray list = new COSArray();
                list.add(held);
                list.add(kid);
                fields.setItem(COSName.K, list);
            }
        }

        /** Its type, by which what belongs to it is marked too. */
        COSName type() {
            return fields.getCOSName(COSName.S);
        }

        /** What a drawing says, or what a table is of. */
        void says(String words) {
            if (role == Tag.Role.FIGURE) {
                fields.setString(COSName.ALT, words);
            } else if (role == Tag.Role.TABLE && !words.isEmpty()) {
                COSDictionary attributes = attributes("Table");
                attributes.setString(COSName.getPDFName("Summary"), words);
                fields.setItem(COSName.A, attributes);
            }
        }

        /** Where a drawing lies, in points. */
        void lies(PdfExtent extent) {
            COSDictionary attributes = attributes("Layout");
            attributes.setItem(COSName.BBOX, extent.array());
            fields.setItem(COSName.A, attributes);
        }

        /** The nearest part about it, or itself, that may hold drawings. */
        Element holdingFigures() {
            return above == null || role == Tag.Role.NOTE ? this : above.holdingFigures();
        }
    }

    private final COSDictionary root = new COSDictionary();
    private final Element whole = new Element(null, "Document", null);
    private final COSArray numbers = new COSArray();
    private final Map<COSDictionary, COSArray> marks = new HashMap<>();
    private final Map<Tag.Role, Element> last = new EnumMap<>(Tag.Role.class);
    private final Map<Tag.Role, COSDictionary> shared = new EnumMap<>(Tag.Role.class);
    private final Deque<Integer> ranks = new ArrayDeque<>();

    PdfStructure(PDDocument document) {
        root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        root.setItem(COSName.K, whole.fields);
        whole.fields.setItem(COSName.P, root);
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, numbers);
        root.setItem(PARENT_TREE, tree);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, root);
    }

    Element whole() {
        return whole;
    }

    /** The next page, in order. */
    void turn(PDPage page) {
        int number = numbers.size() / 2;
        page.setStructParents(number);
        COSArray list = new COSArray();
        numbers.add(COSInteger.get(number));
        numbers.add(list);
        marks.put(page.getCOSObject(), list);
        root.setInt(COSName.getPDFName("ParentTreeNextKey"), number + 1);
        page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
    }

    /** A part of this kind, or the one that goes on. */
    Element element(Element above, Tag tag) {
        Element before = last.get(tag.role());
        if (tag.continued() && before != null) {
            return before;
        }
        Element made = new Element(tag.role(), type(tag.role()), above);
        made.says(tag.said());
        COSDictionary same = shared(tag.role());
        if (same != null) {
            made.fields.setItem(COSName.A, same);
        }
        last.put(tag.role(), made);
        return made;
    }

    /** The number, on its page, of something painted that belongs to a part. */
    int mark(Element element, PDPage page) {
        COSArray list = marks.get(page.getCOSObject());
        int number = list.size();
        list.add(element.fields);
        if (element.page == null) {
            element.page = page.getCOSObject();
            element.fields.setItem(COSName.PG, element.page);
        }
        if (element.page == page.getCOSObject()) {
            element.hold(COSInteger.get(number));
        } else {
            COSDictionary elsewhere = new COSDictionary();
            elsewhere.setName(COSName.TYPE, "MCR");
            elsewhere.setItem(COSName.PG, page.getCOSObject());
            elsewhere.setInt(COSName.MCID, number);
            elsewhere.setDirect(true);
            element.hold(elsewhere);
        }
        return number;
    }

    /** Attributes that all parts of a kind have alike. */
    private COSDictionary shared(Tag.Role role) {
        return switch (role) {
            case COLUMN -> shared.computeIfAbsent(role, r -> attributes("Table", "Scope", "Column"));
            case LIST -> shared.computeIfAbsent(role, r -> attributes("List", "ListNumbering", "Disc"));
            default -> null;
        };
    }

    private static COSDictionary attributes(String owner, String... names) {
        COSDictionary attributes = new COSDictionary();
        attributes.setName(COSName.O, owner);
        for (int i = 0; i < names.length; i += 2) {
            attributes.setName(COSName.getPDFName(names[i]), names[i + 1]);
        }
        attributes.setDirect(names.length == 0);
        return attributes;
    }

    private String type(Tag.Role role) {
        return switch (role) {
            case TITLE, CHAPTER, HEADING -> "H" + level(role.rank());
            case PARAGRAPH -> "P";
            case NOTE -> "Div";
            case LIST -> "L";
            case ITEM -> "LI";
            case MARK -> "Lbl";
            case WORDS -> "LBody";
            case TABLE -> "Table";
            case ROW -> "TR";
            case COLUMN -> "TH";
            case CELL -> "TD";
            case FIGURE -> "Figure";
            case CAPTION -> "Caption";
            case FURNITURE -> throw new IllegalStateException("what only adorns is no part of what is read");
        };
    }

    private int level(int rank) {
        while (!ranks.isEmpty() && ranks.peek() >= rank) {
            ranks.pop();
        }
        ranks.push(rank);
        return ranks.size();
    }
}
