/**
 * What is pieced: patches, blocks, and what is put together from them.
 *
 * <p>A {@link org.calicograph.patchwork.Patchwork} is anything pieced that has an outline: a
 * {@link org.calicograph.patchwork.Block}, which holds its patches itself, or an
 * {@link org.calicograph.patchwork.Assembly}, which holds other patchwork, each with the place that it
 * takes. A {@link org.calicograph.patchwork.Trimming} cuts a top to a rectangle, with partial blocks along
 * the edge. An {@link org.calicograph.patchwork.Applique} is shapes laid on a ground; the block that shows of
 * it keeps the covering law, while ground and shapes are cut whole.
 *
 * <p><b>The covering law</b> ({@link org.calicograph.covering.Cover}) is checked where a patchwork is made: a
 * block compares its patches, an assembly the outlines of its parts, each of which kept the law when it
 * was made itself.
 *
 * <p><b>Names.</b> A patch's id is unique within its patchwork: in a block a number, in an assembly the
 * part's id and the patch's own id with a slash between, as in {@code border1/top/3/2}.
 *
 * <p><b>Coordinates.</b> Inches, x to the right and y downwards; the outline of a patchwork begins at
 * the origin. All sizes here are finished sizes; cut sizes belong to {@code cutting}.
 */
package org.calicograph.patchwork;
