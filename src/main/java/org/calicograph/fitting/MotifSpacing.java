package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.measure.Length;

/**
 * One way in which motifs or swags come out whole along an appliquéd border.
 *
 * <p>Spacings are ranked by, in this order: one spacing on all sides before two, spacings nearest to the
 * one asked for, motifs that meet at the corner before one that turns it, the fewer motifs, the shorter
 * reach round the corner.
 *
 * @param across  motifs along the top, and as many along the bottom
 * @param down    motifs along each of the other sides
 * @param alongEnds  from one motif to the next along the top and bottom
 * @param alongSides the same along the left and right
 * @param corner  what happens at the corner
 * @param reach   how far a motif that turns the corner reaches along each side; none where motifs meet
 * @param asked   the spacing that was asked for
 */
public record MotifSpacing(int across, int down, Length alongEnds, Length alongSides, Corner corner, Length reach, Length asked) {

    /** How the motifs of two sides come together. */
    public enum Corner {
        /** The last motif of one side meets the first of the next at the corner. */
        MEETING,
        /** A motif of its own goes round the corner and reaches equally far along both sides. */
        TURNING
    }

    static final Comparator<MotifSpacing> BEST_FIRST = Comparator
            .comparing((MotifSpacing m) -> m.alongEnds.equals(m.alongSides) ? 0 : 1)
            .thenComparing(MotifSpacing::away)
            .thenComparing(MotifSpacing::corner)
            .thenComparing(MotifSpacing::total)
            .thenComparing(MotifSpacing::reach)
            .thenComparing(MotifSpacing::across)
            .thenComparing(MotifSpacing::alongEnds);

    private Length away() {
        return alongEnds.minus(asked).abs().plus(alongSides.minus(asked).abs());
    }

    /** All the motifs, those that turn the corners included. */
    public int total() {
        return 2 * (across + down) + (corner == Corner.TURNING ? 4 : 0);
    }

    /** Where motifs begin and end along the top, from its left corner. */
    public List<Length> marksAcross() {
        return marks(across, alongEnds);
    }

    /** Where motifs begin and end along a side, from its upper corner. */
    public List<Length> marksDown() {
        return marks(down, alongSides);
    }

    private List<Length> marks(int count, Length spacing) {
        List<Length> marks = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            marks.add(reach.plus(spacing.times((long) i)));
        }
        return List.copyOf(marks);
    }

    @Override
    public String toString() {
        String spacing = alongEnds.equals(alongSides) ? alongEnds + " apart" : alongEnds + " apart across and " + alongSides + " down";
        String sides = across == down ? across + " on each side" : across + " across and " + down + " down";
        return total() + " motifs " + spacing + ": " + sides
                + (corner == Corner.MEETING ? ", meeting at the corners" : ", and one round each corner that reaches " + reach + " along both sides");
    }
}
