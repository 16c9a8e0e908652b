package org.calicograph.fitting;

import java.util.Comparator;
import java.util.List;
import org.calicograph.measure.Length;

/**
 * One way to cut the four strips of a printed border so that the print mirrors at every mitre.
 *
 * <p>Matches are ranked by, in this order: the fewer looks of the corners, the less cloth, the earlier
 * place in the print.
 *
 * @param starts how far after a mirror line of the print the outer corner lies at which each strip begins,
 *               clockwise: top, right, bottom, left; each from none to below a repeat
 * @param looks  how many different corners there are: 1 where all four are alike, 2 where they are alike in pairs
 * @param centred true if the middle of every strip lies on a mirror line of the print
 * @param cloth  the length of cloth cut, first strip to last
 * @param miss   how far the print is off at the last corner; within the tolerance of the question
 */
public record StripeMatch(List<Length> starts, int looks, boolean centred, Length cloth, Length miss) {

    static final Comparator<StripeMatch> BEST_FIRST = Comparator.comparingInt(StripeMatch::looks)
            .thenComparing(StripeMatch::cloth)
            .thenComparing(m -> m.starts.get(0));

    public StripeMatch {
        starts = List.copyOf(starts);
    }

    @Override
    public String toString() {
        return (looks == 1 ? "all four corners alike" : looks + " kinds of corners") + (centred ? ", every strip with its middle on a mirror line of the print" : "")
                + "; the top begins " + shown(starts.get(0)) + " after a mirror line, the right side " + shown(starts.get(1)) + "; " + shown(cloth) + " of cloth";
    }

    /** To the nearest line of a ruler, for reading. */
    static Length shown(Length length) {
        return length.roundedTo(Length.System.ofProcess() == Length.System.METRIC ? Length.mm(1) : Length.inches(1, 16));
    }
}
