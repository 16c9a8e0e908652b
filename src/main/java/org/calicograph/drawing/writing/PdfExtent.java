package org.calicograph.drawing.writing;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;

/** How far what is painted reaches on a page, in points. */
final class PdfExtent {

    private double left = Double.POSITIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    void reach(double x, double y) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        low = Math.min(low, y);
        high = Math.max(high, y);
    }

    boolean isEmpty() {
        return left > right;
    }

    /** Whole points, outwards. */
    COSArray array() {
        COSArray box = new COSArray();
        for (double v : new double[] {Math.floor(left), Math.floor(low), Math.ceil(right), Math.ceil(high)}) {
            box.add(new COSFloat((float) v));
        }
        return box;
    }
}
