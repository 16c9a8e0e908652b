package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/**
 * A stem that swings from side to side along a spine, with a leaf in each bend.
 *
 * @param swing how far the stem strays from the spine on either side
 * @param wave  the length of one swing over and back, about: stretched until a whole number fits
 */
public record Vine(Length swing, Length wave) {

    public Vine {
        if (!swing.isPositive() || !wave.isPositive()) {
            throw new IllegalArgumentException("a vine with a swing of " + swing + " and a wave of " + wave + " has no shape; use lengths above 0");
        }
    }

    /** The vine and its leaves along a spine; refused where the spine bends tighter than the vine swings. */
    public List<Path> along(Spine spine) {
        double reach = Math.min(spine.reach(true), spine.reach(false));
        if (reach < 1.5 * swing.inInches()) {
            throw new IllegalArgumentException("the spine bends with a radius of " + Length.inches(reach).roundedTo(Length.inches(1, 16))
                    + ", too tight for a vine that swings " + swing + "; make the swing smaller or the bend wider");
        }
        int waves = Math.max(1, (int) Math.round(spine.length() / wave.inInches()));
        double half = spine.length() / waves / 2;
        double a = swing.inInches();
        List<Path> paths = new ArrayList<>();
        // Round a closed spine the stem meets itself; along an open one it begins and ends on the spine.
        double before = spine.isClosed() ? -a : 0;
        var stem = Path.from(0, before);
        for (int i = 0; i < 2 * waves; i++) {
            double y = !spine.isClosed() && i == 2 * waves - 1 ? 0 : i % 2 == 0 ? a : -a;
            double x = i * half;
            stem = stem.curveTo(Point.of(x + half * 0.4, before), Point.of(x + half * 0.6, y), Point.of(x + half, y));
            before = y;
        }
        Path bent = spine.bent(stem.open());
        paths.add(bent);
        for (int i = spine.isClosed() ? 0 : 1; i < 2 * waves; i++) {
            // A leaf from the crest of the stem across into the hollow.
            double y = i % 2 == 0 ? -a : a;
            double x = i * half;
            Point foot = Point.of(x, y);
            Point tip = Point.of(x + 0.16 * half, y - y * 1.55);
            double bulge = 0.26 * half;
            paths.add(spine.bent(Path.from(foot).curveTo(Point.of(x - bulge, y * 0.6), Point.of(x - bulge * 0.6, -y * 0.2), tip)
                    .curveTo(Point.of(x + bulge * 1.6, -y * 0.15), Point.of(x + bulge * 1.2, y * 0.6), foot).open()));
        }
        if (!spine.isClosed()) {
            // A last leaf carries the stem on.
            double end = spine.length();
            paths.add(spine.bent(Path.from(end, 0).curveTo(Point.of(end + 0.2 * half, -0.6 * a), Point.of(end + 0.5 * half, -0.5 * a), Point.of(end + 0.8 * half, 0))
                    .curveTo(Point.of(end + 0.5 * half, 0.5 * a), Point.of(end + 0.2 * half, 0.6 * a), Point.of(end, 0)).open()));
        }
        return List.copyOf(paths);
    }
}
