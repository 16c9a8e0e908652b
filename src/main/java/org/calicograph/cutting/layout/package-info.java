/**
 * Laying blanks on cloth so that a rotary cutter can cut them.
 *
 * <p><b>Input.</b> A usable width of cloth and {@link org.calicograph.cutting.layout.Blank}s:
 * rectangles with seam allowances already on, each of which may or may not be turned a quarter.
 *
 * <p><b>Guarantees.</b> A {@link org.calicograph.cutting.layout.Layout} holds every blank once. It is
 * a tree of {@link org.calicograph.cutting.layout.Panel}s, so each cut runs from edge to edge; the
 * types refuse anything else. Lengths are exact. The same input gives the same layout on every machine:
 * effort is counted in moves, never in seconds. Beside it stands a
 * {@link org.calicograph.cutting.layout.LengthBound} that no layout can beat. Neither says that the
 * layout is the shortest, unless the two agree.
 *
 * <p><b>Algorithm.</b> {@link org.calicograph.cutting.layout.Shelves} lays blanks in rows, tallest
 * first (first fit, n log n); {@link org.calicograph.cutting.layout.Nooks} fills the room beside tall
 * blanks in the same way. {@link org.calicograph.cutting.layout.SlicingTree} anneals a binary tree
 * of blanks: for each subtree a curve holds the least length for every width, over all choices of
 * cut direction and of turning at once (after Stockmeyer, 'Optimal orientations of cells in slicing
 * floorplan designs', 1983), so that only the shape of the tree is searched, and how equal blanks are
 * shared out among its leaves. Where few blanks are alike, a second search takes each by itself, and
 * the work of both is counted so that a thorough one keeps to a few seconds.
 * {@link org.calicograph.cutting.layout.LayoutSearch} chooses between them. A layout of up to a
 * thousand blanks tries all; from there on the cost is that of the rows, n log n.
 */
package org.calicograph.cutting.layout;
