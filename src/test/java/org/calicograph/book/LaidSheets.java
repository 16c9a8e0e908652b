package org.calicograph.book;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** Sheets of a tiled template, rendered from the PDF and laid together by the crosses found on the rendering. */
final class LaidSheets {

    private static final int DPI = 200;
    private static final Pattern NAME = Pattern.compile("page ([A-Z]+)(\\d+)");

    /** A sheet as it lies: its rendering, and where its top left corner is on the floor, in inches. */
    private record Sheet(BufferedImage image, double left, double top) { }

    private final List<Sheet> sheets = new ArrayList<>();
    private int first;

    private LaidSheets() { }

    static LaidSheets of(byte[] pdf) throws java.io.IOException {
        Map<Integer, BufferedImage> images = new HashMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(i + 1);
                text.setEndPage(i + 1);
                Matcher m = NAME.matcher(text.getText(document));
                if (!m.find()) {
                    throw new AssertionError("sheet " + (i + 1) + " has no name");
                }
                images.put((m.group(1).charAt(0) - 'A') * 100 + Integer.parseInt(m.group(2)) - 1, new PDFRenderer(document).renderImageWithDPI(i, DPI));
            }
        }
        LaidSheets laid = new LaidSheets();
        // From the sheet at the top left, each laid on the one before it or above it, cross on cross.
        int first = images.keySet().stream().min(Integer::compare).orElseThrow();
        Map<Integer, Sheet> done = new HashMap<>();
        done.put(first, new Sheet(images.get(first), 0, 0));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (int at : images.keySet()) {
                for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                    Sheet base = done.get(at - way[0] - 100 * way[1]);
                    if (!done.containsKey(at) && base != null) {
                        Point here = cross(base.image(), way[0] > 0, way[1] > 0);
                        Point there = cross(images.get(at), way[0] < 0, way[1] < 0);
                        done.put(at, new Sheet(images.get(at), base.left() + here.x() - there.x(), base.top() + here.y() - there.y()));
                        grew = true;
                    }
                }
            }
        }
        if (done.size() != images.size()) {
            throw new AssertionError("only " + done.size() + " of " + images.size() + " sheets hang together");
        }
        laid.sheets.addAll(done.values());
        laid.first = first;
        return laid;
    }

    /** The middle of the cross in a corner, from the darkness of its arms beyond the little circle. */
    private static Point cross(BufferedImage image, boolean right, boolean bottom) {
        double x = right ? image.getWidth() / (double) DPI - 0.75 : 0.75;
        // The foot of a page, 1 1/4 in, is kept clear for the test square.
        double y = bottom ? image.getHeight() / (double) DPI - 2 : 0.75;
        return new Point(middle(image, x, y, true), middle(image, x, y, false));
    }

    private static double middle(BufferedImage image, double x, double y, boolean across) {
        double sum = 0;
        double weight = 0;
        for (double arm : new double[] {-0.1, -0.085, 0.085, 0.1}) {
            for (int d = -8; d <= 8; d++) {
                int px = (int) Math.floor((across ? x : x + arm) * DPI) + (across ? d : 0);
                int py = (int) Math.floor((across ? y + arm : y) * DPI) + (across ? 0 : d);
                double dark = 255 - (image.getRGB(px, py) & 255);
                sum += dark * ((across ? px : py) + 0.5);
                weight += dark;
            }
        }
        return sum / weight / DPI;
    }

    /**
     * How far the line on paper lies from the template's cutting line, every quarter of an inch along it on
     * every sheet that shows it; infinite where there is no ink at all.
     *
     * @param at where on the floor the middle of the template's bounds lies
     */
    List<Double> offsets(Template template, Point at) {
        List<Double> found = new ArrayList<>();
        Point move = at.minus(template.cut().bounds().centre());
        for (Segment s : template.cut().outer().segments()) {
            int steps = (int) Math.ceil(s.length() / 0.25);
            for (int i = 0; i < steps; i++) {
                Point p = s.at((i + 0.5) / steps);
                boolean atNotch = template.notches().stream().anyMatch(n -> n.at().plus(n.outward().times(0.25)).near(p, 0.1));
                if (!atNotch) {
                    offset(p.plus(move), s.heading((i + 0.5) / steps).unit().quarterTurned()).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private Optional<Double> offset(Point p, Point normal) {
        double worst = -1;
        for (Sheet sheet : sheets) {
            double x = p.x() - sheet.left();
            double y = p.y() - sheet.top();
            double w = sheet.image().getWidth() / (double) DPI;
            // The foot is folded back when sheets are laid together.
            double h = sheet.image().getHeight() / (double) DPI - 1.25;
            if (x < 0.6 || y < 0.6 || x > w - 0.6 || y > h - 0.6 || isMark(x, w) && isMark(y, h)) {
                continue;
            }
            double sum = 0;
            double weight = 0;
            for (double d = -0.05; d <= 0.05; d += 0.25 / DPI) {
                int px = (int) Math.floor((x + normal.x() * d) * DPI);
                int py = (int) Math.floor((y + normal.y() * d) * DPI);
                double dark = 255 - (sheet.image().getRGB(px, py) & 255);
                dark = dark > 150 ? dark : 0;
                sum += dark * d;
                weight += dark;
            }
            worst = Math.max(worst, weight == 0 ? Double.POSITIVE_INFINITY : Math.abs(sum / weight));
        }
        return worst < 0 ? Optional.empty() : Optional.of(worst);
    }

    /** Near a row or column of crosses. */
    private static boolean isMark(double at, double size) {
        return Math.abs(at - 0.75) < 0.2 || Math.abs(at - size / 2) < 0.2 || Math.abs(at - size + 0.75) < 0.2;
    }

    /** The column and row of the first sheet. */
    int column() {
        return first % 100;
    }

    int row() {
        return first / 100;
    }
}
