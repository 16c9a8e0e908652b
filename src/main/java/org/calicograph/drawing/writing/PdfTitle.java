package org.calicograph.drawing.writing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a document says of itself: its title, where a reader and a screen reader look for it, its language, and that it is tagged. */
final class PdfTitle {

    private static final String MAKER = "Calicograph";

    private PdfTitle() { }

    static void set(PDDocument document, String title) throws IOException {
        document.getDocumentInformation().setProducer(MAKER);
        document.getDocumentInformation().setTitle(title);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage("en");
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
        shown.setDisplayDocTitle(true);
        catalog.setViewerPreferences(shown);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(packet(title).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
    }

    /** As ISO 16684-1 has it, without a date. */
    private static String packet(String title) {
        return """
                <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
                <dc:format>application/pdf</dc:format>
                <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                </rdf:Description></rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>""".formatted(new SvgText().escaped(title));
    }
}
