package org.calicograph.drawing.writing;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPatternContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.util.Matrix;
import org.calicograph.colour.Photo;
import org.calicograph.drawing.Paint;
import org.calicograph.fabric.Cloth;
import org.calicograph.geometry.Transform;

/** The cloths of one page as tiling patterns; each picture and each way it lies is written once. */
final class PdfCloths {

    private final PDDocument document;
    private final PDPage page;
    private final Map<Photo, PDImageXObject> images = new HashMap<>();
    private final Map<Paint.Printed, PDColor> colours = new HashMap<>();

    PdfCloths(PDDocument document, PDPage page) {
        this.document = document;
        this.page = page;
    }

    /** What to fill with; the paint lies in points on the page. */
    PDColor colour(Paint.Printed printed) throws IOException {
        PDColor known = colours.get(printed);
        if (known == null) {
            known = pattern(printed.cloth(), printed.lay());
            colours.put(printed, known);
        }
        return known;
    }

    private PDColor pattern(Cloth cloth, Transform lay) throws IOException {
        float width = (float) cloth.repeat().inInches();
        float height = (float) cloth.height().inInches();
        PDTilingPattern pattern = new PDTilingPattern();
        pattern.setPaintType(PDTilingPattern.PAINT_COLORED);
        pattern.setTilingType(PDTilingPattern.TILING_CONSTANT_SPACING);
        pattern.setResources(new PDResources());
        pattern.setBBox(new PDRectangle(width, height));
        pattern.setXStep(width);
        pattern.setYStep(height);
        COSArray matrix = new COSArray();
        matrix.setFloatArray(new float[] {(float) lay.a(), (float) lay.b(), (float) lay.c(), (float) lay.d(), (float) lay.e(), (float) lay.f()});
        pattern.getCOSObject().setItem(COSName.MATRIX, matrix);
        try (PDPatternContentStream tile = new PDPatternContentStream(pattern)) {
            // Pictures stand on their feet in PDF, and cloth is measured downwards.
            tile.drawImage(image(cloth.photo()), new Matrix(width, 0, 0, -height, 0, height));
        }
        PDResources resources = page.getResources() == null ? new PDResources() : page.getResources();
        page.setResources(resources);
        COSName name = resources.add(pattern);
        return new PDColor(name, new PDPattern(null));
    }

    private PDImageXObject image(Photo photo) throws IOException {
        PDImageXObject known = images.get(photo);
        if (known == null) {
            known = PDImageXObject.createFromByteArray(document, PngWriter.write(photo), "cloth");
            images.put(photo, known);
        }
        return known;
    }
}
