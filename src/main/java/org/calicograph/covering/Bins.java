package org.calicograph.covering;

import java.util.List;
import java.util.function.IntConsumer;
import org.calicograph.geometry.Box;

/**
 * Boxes sorted into a grid of square bins, to find those that touch one another. There are about as many
 * bins as boxes, so that for boxes that share a sheet without much overlap the whole costs one step for each.
 */
final class Bins {

    private final List<Box> boxes;
    private final double left;
    private final double top;
    private final double size;
    private final int across;
    private final int down;
    /** Where each bin's boxes begin in {@code held}. */
    private final int[] first;
    private final int[] held;

    Bins(List<Box> boxes) {
        this.boxes = boxes;
        Box all = boxes.stream().reduce(Box::union).orElse(new Box(0, 0, 0, 0));
        left = all.left();
        top = all.top();
        double longest = Math.max(all.width(), all.height());
        double even = Math.sqrt(all.width() * all.height() / Math.max(1, boxes.size()));
        // Never more bins along a side than boxes, however thin the sheet.
        size = Math.max(Math.max(even, longest / Math.max(1, boxes.size())), Math.ulp(Math.max(1, longest)));
        across = (int) (all.width() / size) + 1;
        down = (int) (all.height() / size) + 1;
        first = new int[across * down + 1];
        for (Box box : boxes) {
            each(box, bin -> first[bin + 1]++);
        }
        for (int bin = 0; bin < across * down; bin++) {
            first[bin + 1] += first[bin];
        }
        held = new int[first[across * down]];
        int[] next = first.clone();
        for (int i = 0; i < boxes.size(); i++) {
            int box = i;
            each(boxes.get(i), bin -> held[next[bin]++] = box);
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(across - 1, (int) ((x - left) / size)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(down - 1, (int) ((y - top) / size)));
    }

    private void each(Box box, IntConsumer bins) {
        int right = column(box.right());
        int bottom = row(box.bottom());
        for (int r = row(box.top()); r <= bottom; r++) {
            for (int c = column(box.left()); c <= right; c++) {
                bins.accept(r * across + c);
            }
        }
    }

    /** Every later box that touches this one, each once. */
    void laterTouching(int i, IntConsumer found) {
        Box a = boxes.get(i);
        each(a, bin -> {
            for (int k = first[bin]; k < first[bin + 1]; k++) {
                int j = held[k];
                Box b = boxes.get(j);
                // Two boxes may share many bins; they are found in the one where their overlap begins.
                if (j > i && a.touches(b)
                        && bin == row(Math.max(a.top(), b.top())) * across + column(Math.max(a.left(), b.left()))) {
                    found.accept(j);
                }
            }
        });
    }
}
