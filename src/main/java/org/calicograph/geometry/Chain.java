package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;

/** The segments of a path made to meet exactly: each begins at the very point where the one before ends. */
final class Chain {

    private Chain() { }

    /** Those of no length are left out, unless there are no others. */
    static List<Segment> of(List<Segment> segments) {
        if (exact(segments)) {
            return List.copyOf(segments);
        }
        List<Segment> chain = new ArrayList<>();
        Point first = segments.get(0).from();
        Point here = first;
        for (Segment s : segments) {
            if (!s.to().same(here)) {
                chain.add(s.withEnds(here, s.to()));
            } else if (s.length() > Point.TOLERANCE) {
                Point middle = s.middle();
                chain.add(s.between(0, 0.5).withEnds(here, middle));
                chain.add(s.between(0.5, 1).withEnds(middle, s.to()));
            } else {
                continue;
            }
            here = s.to();
        }
        if (chain.isEmpty()) {
            return List.of(segments.get(0));
        }
        int last = chain.size() - 1;
        if (here.same(first) && last > 0) {
            chain.set(last, chain.get(last).withEnds(chain.get(last).from(), first));
        }
        return List.copyOf(chain);
    }

    private static boolean exact(List<Segment> segments) {
        Segment last = segments.get(segments.size() - 1);
        Point first = segments.get(0).from();
        if (last.to().same(first) && (!last.to().equals(first) || segments.size() == 1)) {
            return false;
        }
        for (int i = 0; i < segments.size(); i++) {
            Segment s = segments.get(i);
            if (s.from().same(s.to()) || i > 0 && !s.from().equals(segments.get(i - 1).to())) {
                return false;
            }
        }
        return true;
    }
}
