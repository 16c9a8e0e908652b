package org.calicograph.geometry;

/** The share of the way along a segment at which it comes nearest to a point. */
final class Foot {

    private Foot() { }

    static double of(Point p, Segment segment) {
        if (segment instanceof Line line) {
            Point u = line.heading(0);
            double n = u.dot(u);
            return n == 0 ? 0 : clamp(p.minus(line.from()).dot(u) / n);
        }
        if (segment instanceof Arc arc) {
            if (p.near(arc.centre(), 1e-12)) {
                return 0;
            }
            double share = arc.shareTowards(p);
            if (share >= 0 && share <= 1) {
                return share;
            }
            return p.distance(arc.from()) <= p.distance(arc.to()) ? 0 : 1;
        }
        return nearest(p, segment);
    }

    private static double nearest(Point p, Segment segment) {
        int samples = 64;
        int best = 0;
        for (int i = 1; i <= samples; i++) {
            if (p.distance(segment.at((double) i / samples)) < p.distance(segment.at((double) best / samples))) {
                best = i;
            }
        }
        double low = Math.max(0, (best - 1.0) / samples);
        double high = Math.min(1, (best + 1.0) / samples);
        for (int i = 0; i < 80; i++) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            if (p.distance(segment.at(a)) <= p.distance(segment.at(b))) {
                high = b;
            } else {
                low = a;
            }
        }
        double middle = (low + high) / 2;
        for (double end : new double[] {0, 1}) {
            if (p.distance(segment.at(end)) <= p.distance(segment.at(middle))) {
                middle = end;
            }
        }
        return middle;
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
