/**
 * What goes round a top.
 *
 * <p>A {@link org.calicograph.border.Round} goes round anything rectangular: a
 * {@link org.calicograph.border.Border} of strips or of units, a round that stands what is inside on its point,
 * one that makes an octagon of it, or a ring of wedges in a square ground. A round that does not fit what it
 * is laid round is refused with what would fit. All sizes are finished sizes.
 */
package org.calicograph.border;
