package org.calicograph.stdlib;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Placed;

/**
 * Bargello: a run of cloths sewn into one strip set, cut across into strips of several widths, each strip opened and moved up
 * or down by steps, so that the run rises and falls like a wave.
 *
 * <p>Drafting: narrow strips where the wave is steep, wide ones at its crest (common practice).
 */
public final class Bargello {

    private Bargello() { }

    /**
     * @param run    the cloths of the strip set from above; as many as the panel is high in steps
     * @param high   the finished height of each cloth in the set
     * @param widths the finished width of each strip, from the left
     * @param steps  how far each strip is moved up, in cloths; one for each width
     * @throws IllegalArgumentException if widths and steps are not as many, or there is no cloth
     */
    public static Assembly of(List<Fabric> run, Length high, List<Length> widths, List<Integer> steps) {
        if (run.isEmpty() || widths.isEmpty() || widths.size() != steps.size()) {
            throw new IllegalArgumentException("a bargello of " + run.size() + " cloths, " + widths.size() + " widths and " + steps.size()
                    + " steps can't be sewn; give some cloths, and a step for every width");
        }
        List<Placed> strips = new ArrayList<>();
        Length x = Length.ZERO;
        Length tall = high.times((long) run.size());
        for (int i = 0; i < widths.size(); i++) {
            List<Placed> pieces = new ArrayList<>();
            for (int k = 0; k < run.size(); k++) {
                Fabric cloth = run.get(Math.floorMod(k + steps.get(i), run.size()));
                pieces.add(Placed.at("piece" + (k + 1), Block.plain(cloth, widths.get(i), high), 0, high.times((long) k).inInches()));
            }
            Assembly strip = Assembly.of("strip " + (i + 1), Region.rectangle(Box.of(widths.get(i), tall)), pieces);
            strips.add(Placed.at("strip" + (i + 1), strip, x.inInches(), 0));
            x = x.plus(widths.get(i));
        }
        return Assembly.of("bargello", Region.rectangle(Box.of(x, tall)), strips);
    }

    /** A wave of so many strips that swings by so many cloths to either side, narrow where it is steep. */
    public static Assembly wave(List<Fabric> run, Length high, int strips, int swing, Length narrow, Length wide) {
        if (strips < 3 || swing < 1) {
            throw new IllegalArgumentException("a wave of " + strips + " strips that swings by " + swing + " is none; use 3 strips or more and a swing of 1 or more");
        }
        List<Length> widths = new ArrayList<>();
        List<Integer> steps = new ArrayList<>();
        Length least = Length.inches(1, 8);
        for (int i = 0; i < strips; i++) {
            double turn = 2 * Math.PI * i / strips;
            steps.add((int) Math.round(swing * Math.sin(turn)));
            Length width = narrow.plus(wide.minus(narrow).times(1 - Math.abs(Math.cos(turn))));
            widths.add(width.roundedTo(least));
        }
        return of(run, high, widths, steps);
    }
}
