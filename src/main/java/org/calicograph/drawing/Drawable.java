package org.calicograph.drawing;

/** A value of one's own that knows how it looks; a cell that ends in one shows it so. */
@FunctionalInterface
public interface Drawable {

    /** What hangs on the wall when a cell gives this. */
    Exhibit show();
}
