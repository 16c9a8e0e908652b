package org.calicograph.fitting;

import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.drawing.Drawable;

/**
 * A question about what goes round a rectangle: what fits as asked, what comes nearest, and why.
 *
 * @param <S> what answers it
 */
public sealed interface FitQuestion<S> extends Drawable permits Fit, MotifFit, StripeFit {

    /** All that fits as asked, the best first; empty if nothing does. */
    List<S> solutions();

    /** What comes nearest, each with what it gives up. */
    List<Change<S>> others();

    /** One sentence: that it fits, or why it can't. */
    String why();

    /**
     * The best that fits as asked.
     *
     * @throws DesignException with the reason, if there is none
     */
    default S best() {
        return solutions().stream().findFirst().orElseThrow(() -> new DesignException(why()));
    }

    /**
     * The best that fits; where nothing does as asked, what comes nearest.
     *
     * @throws DesignException with the reason, if nothing near fits either
     */
    default S nearest() {
        return solutions().stream().findFirst().or(() -> others().stream().map(Change::solution).findFirst())
                .orElseThrow(() -> new DesignException(why()));
    }
}
