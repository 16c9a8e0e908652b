package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;

/**
 * How densely a quilt is quilted: inches of line in every square inch, square by square.
 *
 * @param side    of a square, in inches
 * @param inches  by column and then row from the top left of the region: inches of line to the square inch
 */
public record Density(Region region, double side, List<List<Double>> inches) {

    /** Inches of line in each square inch, counted in squares whose side is given in inches. */
    public static Density of(Region region, Collection<Path> lines, double side) {
        if (!(side > 0)) {
            throw new IllegalArgumentException("squares of " + side + " in can't be counted; use a side above 0");
        }
        Box b = region.bounds();
        int columns = Math.max(1, (int) Math.ceil(b.width() / side - 1e-9));
        int rows = Math.max(1, (int) Math.ceil(b.height() / side - 1e-9));
        double[][] sum = new double[columns][rows];
        for (Path path : lines) {
            List<Point> p = path.flattened(0.005);
            for (int i = 1; i < p.size(); i++) {
                double length = p.get(i).distance(p.get(i - 1));
                int parts = Math.max(1, (int) Math.ceil(length / (side / 16)));
                for (int k = 0; k < parts; k++) {
                    Point m = p.get(i - 1).towards(p.get(i), (k + 0.5) / parts);
                    int c = Math.min(columns - 1, Math.max(0, (int) ((m.x() - b.left()) / side)));
                    int r = Math.min(rows - 1, Math.max(0, (int) ((m.y() - b.top()) / side)));
                    sum[c][r] += length / parts;
                }
            }
        }
        List<List<Double>> inches = new ArrayList<>();
        for (double[] column : sum) {
            List<Double> out = new ArrayList<>();
            for (double s : column) {
                out.add(s / (side * side));
            }
            inches.add(List.copyOf(out));
        }
        return new Density(region, side, List.copyOf(inches));
    }

    /** The most, in inches of line to a square inch. */
    public double densest() {
        return inches.stream().flatMap(List::stream).mapToDouble(d -> d).max().orElse(0);
    }

    /** The least, of the squares whose middle lies in the region. */
    public double sparsest() {
        return within().stream().mapToDouble(d -> d).min().orElse(0);
    }

    /** The mean, of the squares whose middle lies in the region. */
    public double mean() {
        return within().stream().mapToDouble(d -> d).average().orElse(0);
    }

    /**
     * How unevenly the quilt is quilted: what a square is off the mean, as a part of the mean; 0 where all are alike. Uneven quilting
     * draws a quilt up more in one place than in another, so that it won't lie flat (common practice).
     */
    public double unevenness() {
        double mean = mean();
        return mean == 0 ? 0 : Math.sqrt(within().stream().mapToDouble(d -> (d - mean) * (d - mean)).average().orElse(0)) / mean;
    }

    private List<Double> within() {
        Box b = region.bounds();
        List<Double> all = new ArrayList<>();
        for (int c = 0; c < inches.size(); c++) {
            for (int r = 0; r < inches.get(c).size(); r++) {
                if (region.contains(new Point(b.left() + (c + 0.5) * side, b.top() + (r + 0.5) * side))) {
                    all.add(inches.get(c).get(r));
                }
            }
        }
        return all;
    }

    /** Darker where denser, with its scale below. */
    public Picture picture() {
        Box b = region.bounds();
        Trim trim = Trim.within(region);
        double most = Math.max(1e-9, densest());
        List<Picture> parts = new ArrayList<>();
        for (int c = 0; c < inches.size(); c++) {
            for (int r = 0; r < inches.get(c).size(); r++) {
                Box square = new Box(b.left() + c * side, b.top() + r * side, Math.min(b.right(), b.left() + (c + 1) * side),
                        Math.min(b.bottom(), b.top() + (r + 1) * side));
                if (trim.covers(square.centre())) {
                    Colour colour = Colour.hex("#f6f1e6").mixed(Colour.hex("#24425c"), Math.min(1, inches.get(c).get(r) / most));
                    parts.add(Picture.of(Region.rectangle(square)).filled(Paint.of(colour)));
                }
            }
        }
        parts.add(Picture.of(region).outlined(Pen.SEAM));
        double size = b.width() / 34;
        for (int k = 0; k <= 4; k++) {
            Box chip = new Box(b.left() + k * b.width() / 5, b.bottom() + size, b.left() + k * b.width() / 5 + 2 * size, b.bottom() + 2 * size);
            parts.add(Picture.of(Region.rectangle(chip)).filled(Paint.of(Colour.hex("#f6f1e6").mixed(Colour.hex("#24425c"), k / 4.0))).outlined(Pen.SEAM));
            String words = String.format(java.util.Locale.ROOT, k == 4 ? "%.1f in to a sq in" : "%.1f", most * k / 4);
            parts.add(new Picture.Lettering(words, new Point(chip.left(), chip.bottom() + 1.2 * size), size, Picture.Anchor.START, Picture.Weight.REGULAR, Colour.hex("#2b2b2b")));
        }
        return Picture.group(parts);
    }
}
