package org.calicograph.drawing;

import org.calicograph.geometry.Transform;

/**
 * Whatever a picture is painted on, part by part from the bottom up; see {@link Walk}. Every renderer is
 * one of these, so that groups and labels are unfolded in one place.
 */
public interface Surface {

    /** @param onto from the shape's coordinates to the surface's; {@link Picture.Shape#onto} applies it */
    void shape(Picture.Shape shape, Transform onto);

    /** @param onto from the lettering's coordinates to the surface's; it may turn and mirror the letters */
    void lettering(Picture.Lettering text, Transform onto);

    /** What follows, up to the matching end, belongs to a labelled part. */
    default void begin(Picture.Label label) { }

    /** The end of what a label named. */
    default void end(Picture.Label label) { }

    /** What follows, up to the matching end, is such a part of a page. */
    default void begin(Tag tag) { }

    /** The end of a part of a page. */
    default void end(Tag tag) { }
}
