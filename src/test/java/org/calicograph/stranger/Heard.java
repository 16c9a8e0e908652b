package org.calicograph.stranger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * A PDF as somebody hears it who can't see it: its parts in the order of its structure, by ISO 32000-1, 14.6 to 14.8, read
 * from the bytes alone. Whatever is out of order is an objection.
 *
 * @param parts      in the order in which they are read
 * @param objections what a listener would miss or be misled by
 */
public record Heard(String title, List<Part> parts, List<String> objections) {

    private static final Set<String> PAINTING = Set.of("Tj", "TJ", "'", "\"", "f", "F", "f*", "S", "s", "B", "B*", "b", "b*", "Do", "sh", "BI");

    /**
     * A part that holds words or a drawing.
     *
     * @param within the types of the parts about it, the outermost first
     * @param alt    what stands for it; empty if nothing does
     */
    public record Part(String type, List<String> within, String text, String alt, int page) { }

    /** Everything read aloud, one part after another, drawings left out. */
    public String words() {
        return parts.stream().filter(p -> !p.type().equals("Figure")).map(Part::text).filter(t -> !t.isBlank()).collect(Collectors.joining(" ")).replaceAll("\\s+", " ");
    }

    public static Heard of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Reading reading = new Reading(document);
            reading.read();
            return new Heard(String.valueOf(document.getDocumentInformation().getTitle()), List.copyOf(reading.parts), List.copyOf(reading.objections));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Reading {

        private final PDDocument document;
        private final List<Part> parts = new ArrayList<>();
        private final List<String> objections = new ArrayList<>();
        private final Map<COSDictionary, Integer> numberOf = new HashMap<>();
        /** Of each page what is written under each mark. */
        private final List<Map<Integer, String>> texts = new ArrayList<>();
        private final List<Set<Integer>> held = new ArrayList<>();
        private final List<COSArray> owners = new ArrayList<>();
        private int heading;

        Reading(PDDocument document) {
            this.document = document;
        }

        void read() throws IOException {
            COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
            require(catalog.getCOSDictionary(name("MarkInfo")) != null && catalog.getCOSDictionary(name("MarkInfo")).getBoolean(name("Marked"), false), "is not marked as tagged");
            require(!catalog.getString("Lang", "").isEmpty(), "tells no language");
            COSDictionary shown = catalog.getCOSDictionary(name("ViewerPreferences"));
            require(shown != null && shown.getBoolean(name("DisplayDocTitle"), false), "doesn't show its title");
            String title = document.getDocumentInformation().getTitle();
            require(title != null && !title.isBlank(), "has no title");
            require(document.getDocumentCatalog().getMetadata() != null, "has no metadata");
            COSDictionary root = catalog.getCOSDictionary(name("StructTreeRoot"));
            require(root != null, "has no structure");
            if (root == null) {
                return;
            }
            COSArray numbers = root.getCOSDictionary(name("ParentTree")).getCOSArray(name("Nums"));
            for (PDPage page : document.getPages()) {
                numberOf.put(page.getCOSObject(), owners.size());
                int key = page.getCOSObject().getInt(name("StructParents"));
                require(page.getCOSObject().getNameAsString("Tabs", "").equals("S"), "has a page not tabbed by structure");
                COSArray of = null;
                for (int i = 0; i < numbers.size(); i += 2) {
                    of = numbers.getInt(i) == key ? (COSArray) numbers.getObject(i + 1) : of;
                }
                owners.add(of == null ? new COSArray() : of);
                texts.add(new HashMap<>());
                held.add(new HashSet<>());
                contents(page, owners.size() - 1);
            }
            COSDictionary whole = root.getCOSDictionary(name("K"));
            walk(whole, List.of(), null);
            for (int p = 0; p < texts.size(); p++) {
                Set<Integer> lost = new HashSet<>(texts.get(p).keySet());
                lost.removeAll(held.get(p));
                require(lost.isEmpty(), "page " + (p + 1) + ": marks " + lost + " are held by no part");
            }
        }

        private void require(boolean holds, String otherwise) {
            if (!holds) {
                objections.add(otherwise);
            }
        }

        private static COSName name(String name) {
            return COSName.getPDFName(name);
        }

        /** Every painting operator stands within a mark or an artifact, and marks neither nest nor come twice. */
        private void contents(PDPage page, int p) throws IOException {
            int open = 0;
            int painted = 0;
            List<COSBase> operands = new ArrayList<>();
            PDFStreamParser parser = new PDFStreamParser(page);
            for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
                if (token instanceof COSBase operand) {
                    operands.add(operand);
                    continue;
                }
                String operator = ((Operator) token).getName();
                if (operator.equals("BDC") || operator.equals("BMC")) {
                    open++;
                    require(open == 1, "page " + (p + 1) + ": a mark within another");
                    COSDictionary properties = operator.equals("BDC") && operands.get(1) instanceof COSDictionary d ? d : new COSDictionary();
                    boolean artifact = operands.get(0).equals(COSName.ARTIFACT);
                    int mark = properties.getInt(name("MCID"));
                    require(artifact != mark >= 0, "page " + (p + 1) + ": " + operands + " is neither part nor artifact");
                    require(artifact || texts.get(p).put(mark, "") == null, "page " + (p + 1) + ": mark " + mark + " twice");
                } else if (operator.equals("EMC")) {
                    open--;
                } else if (PAINTING.contains(operator)) {
                    painted++;
                    require(open == 1, "page " + (p + 1) + ": " + operator + " outside of any mark");
                }
                operands.clear();
            }
            require(open == 0, "page " + (p + 1) + ": a mark that does not end");
            require(painted == 0 || p < owners.size(), "page " + (p + 1) + ": no parts");
            PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
            extractor.setSuppressDuplicateOverlappingText(false);
            extractor.processPage(page);
            for (PDMarkedContent content : extractor.getMarkedContents()) {
                if (content.getMCID() >= 0) {
                    texts.get(p).put(content.getMCID(), content.getContents().stream().filter(TextPosition.class::isInstance)
                            .map(t -> ((TextPosition) t).getUnicode()).collect(Collectors.joining()));
                }
            }
        }

        private void walk(COSDictionary element, List<String> within, COSDictionary above) {
            String type = element.getNameAsString("S", "?");
            require(above == null || element.getCOSDictionary(name("P")) == above, type + " does not know what it belongs to");
            if (type.matches("H[1-6]")) {
                int level = type.charAt(1) - '0';
                require(level <= heading + 1, type + " after H" + heading);
                heading = level;
            }
            String parent = within.isEmpty() ? "" : within.get(within.size() - 1);
            require(!type.equals("TR") || parent.equals("Table"), "a row in " + parent);
            require(!type.matches("T[HD]") || parent.equals("TR"), "a cell in " + parent);
            require(!type.equals("LI") || parent.equals("L"), "a point in " + parent);
            require(!type.matches("Lbl|LBody") || parent.equals("LI"), type + " in " + parent);
            require(!type.equals("TH") || element.getCOSDictionary(name("A")) != null && element.getCOSDictionary(name("A")).getNameAsString("Scope", "").equals("Column"),
                    "the name of a column without its scope");
            List<COSBase> kids = kids(element);
            StringBuilder text = new StringBuilder();
            int first = -1;
            List<String> inside = new ArrayList<>(within);
            inside.add(type);
            Set<Integer> cells = new HashSet<>();
            boolean leaf = kids.stream().noneMatch(k -> k instanceof COSDictionary d && d.containsKey(name("S")));
            for (COSBase kid : kids) {
                if (kid instanceof COSInteger mark) {
                    int p = numberOf.getOrDefault(element.getCOSDictionary(name("Pg")), -1);
                    first = first < 0 ? p : first;
                    text.append(marked(element, p, mark.intValue()));
                } else if (((COSDictionary) kid).containsKey(name("MCID"))) {
                    COSDictionary mark = (COSDictionary) kid;
                    int p = numberOf.getOrDefault(mark.getCOSDictionary(name("Pg")), -1);
                    first = first < 0 ? p : first;
                    text.append(" ").append(marked(element, p, mark.getInt(name("MCID"))));
                }
            }
            if (leaf) {
                String alt = element.getString("Alt", "");
                require(!type.equals("Figure") || !alt.isBlank(), "page " + (first + 1) + ": a drawing without words");
                require(!type.matches("H[1-6]|P|LBody|Lbl|Caption") || !text.toString().isBlank(), "page " + (first + 1) + ": " + type + " without words");
                parts.add(new Part(type, within, text.toString(), alt, first + 1));
            }
            for (COSBase kid : kids) {
                if (kid instanceof COSDictionary d && d.containsKey(name("S"))) {
                    if (type.equals("Table")) {
                        cells.add(kids(d).size());
                    }
                    walk(d, inside, element);
                }
            }
            require(!type.equals("Table") || cells.size() == 1, "a table with rows of " + cells + " cells");
        }

        private String marked(COSDictionary element, int p, int mark) {
            if (p < 0) {
                objections.add("a mark on no page");
                return "";
            }
            require(held.get(p).add(mark), "page " + (p + 1) + ": mark " + mark + " is held twice");
            require(mark < owners.get(p).size() && owners.get(p).getObject(mark) == element, "page " + (p + 1) + ": mark " + mark + " is led back to another part");
            require(texts.get(p).containsKey(mark), "page " + (p + 1) + ": mark " + mark + " is not on the page");
            return texts.get(p).getOrDefault(mark, "");
        }

        private static List<COSBase> kids(COSDictionary element) {
            COSBase kids = element.getDictionaryObject(name("K"));
            List<COSBase> all = new ArrayList<>();
            if (kids instanceof COSArray list) {
                for (int i = 0; i < list.size(); i++) {
                    all.add(list.getObject(i));
                }
            } else if (kids != null) {
                all.add(kids instanceof COSObject o ? o.getObject() : kids);
            }
            return all;
        }
    }
}
