/**
 * From patches to pieces: what is cut, how often, and how.
 *
 * <p>{@link org.calicograph.cutting.pieces.Piece}s are congruent patches of one fabric counted
 * together; mirror images stay apart, and so do patches whose grain would lie differently.
 * {@link org.calicograph.cutting.pieces.Outline} tells shapes apart.
 * {@link org.calicograph.cutting.pieces.RotaryRules} knows the trade's shapes and their allowances,
 * exactly; {@link org.calicograph.cutting.pieces.Dimension} sets the exact value and the ruler's line
 * side by side. A shape that no rule covers, or a size that no ruler line comes near, becomes a
 * template, and the {@link org.calicograph.cutting.pieces.CutMethod} says why.
 *
 * <p><b>Grain.</b> A patch of a block keeps straight grain along the block's own edges, also where the
 * block stands on its point. A patch that is a block by itself, such as a setting triangle, keeps it
 * along the quilt's edges.
 */
package org.calicograph.cutting.pieces;
