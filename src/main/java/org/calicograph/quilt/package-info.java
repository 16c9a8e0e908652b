/**
 * The quilt as it is drafted: patches, blocks, settings, borders, medallions and the quilt itself.
 *
 * <p>A {@link org.calicograph.quilt.Patchwork} is anything pieced that has an outline: a
 * {@link org.calicograph.quilt.Block}, which holds its patches itself, or an
 * {@link org.calicograph.quilt.Assembly}, which holds other patchwork, each with the place that it
 * takes. A {@link org.calicograph.quilt.Setting} puts blocks together into a top: straight, on point,
 * sashed, strippy, or hexagons and triangles filled to a rectangle. A
 * {@link org.calicograph.quilt.Trimming} cuts a top to a rectangle, with partial blocks along the edge. A
 * {@link org.calicograph.quilt.Border} goes around a top; a {@link org.calicograph.quilt.Medallion} is a
 * centre and its {@link org.calicograph.quilt.Round}s: borders, squares on point, octagons, rings; a {@link org.calicograph.quilt.Quilt} is a top with its binding.
 *
 * <p><b>The covering law.</b> The patches of every patchwork cover its outline without gap or overlap
 * wider than {@link org.calicograph.quilt.Cover#TOLERANCE} (0.001 in). The law is checked where a
 * patchwork is made: a block compares its patches, an assembly the outlines of its parts, each of which
 * kept the law when it was made itself. A design that breaks it is refused with a
 * {@link org.calicograph.quilt.DesignException} that names the patches, the place and the repair.
 *
 * <p>An {@link org.calicograph.quilt.Applique} is shapes laid on a ground; the block that shows of it
 * keeps the covering law, while ground and shapes are cut whole.
 *
 * <p><b>Names.</b> A patch's id is unique within its patchwork: in a block a number, in an assembly the
 * part's id and the patch's own id with a slash between, as in {@code border1/top/3/2}.
 *
 * <p><b>Coordinates.</b> Inches, x to the right and y downwards; the outline of a patchwork begins at
 * the origin. All sizes here are finished sizes; cut sizes are the workshop's.
 *
 * <p>This package uses {@code fabric}, {@code drafting} and what lies below them.
 */
package org.calicograph.quilt;
