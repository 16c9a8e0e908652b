/**
 * The covering law, below all patchwork.
 *
 * <p>Parts cover an outline without gap or overlap wider than
 * {@link org.calicograph.covering.Cover#TOLERANCE} (0.001 in). {@link org.calicograph.covering.Cover} checks
 * it with boxes sorted into bins, so that the time grows with the number of parts;
 * {@link org.calicograph.covering.Shapes} turns regions into the geometry library's and back. A design that
 * breaks the law, or another rule of the trade, is refused with a
 * {@link org.calicograph.covering.DesignException} that names the thing, the place and the repair.
 */
package org.calicograph.covering;
