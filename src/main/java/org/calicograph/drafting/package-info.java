/**
 * Drafting with compass and straightedge, each step recorded.
 *
 * <p>A {@link org.calicograph.drafting.Draft} begins as a blank sheet. Each step adds a point, a line, a
 * circle or an arc, found from what is already there, and remembers in words what was done and what it
 * used, so that the draft can be taught, printed as panels and stepped through. Names are the drafter's
 * own: {@code O}, {@code A}, {@code rim}.
 *
 * <p><b>Guarantees.</b> Points are found to within 1e-9 in of the algebra for lines and circles. A draft is
 * immutable: a step returns a draft of its own, so that a lesson can branch. A name that is not there, is
 * there twice or is of the wrong kind is refused with the names that would do.
 *
 * <p>Lines are construction lines until they are inked; the inked lines become patches by
 * {@link org.calicograph.geometry.Arrangement}.
 *
 * <p>Beside drafts there are shapes known by their formulas: {@link org.calicograph.drafting.RegularPolygon}
 * with its measures, and {@link org.calicograph.drafting.Spiral} with involutes and spirals as paths.
 *
 * <p>This package uses {@code geometry}.
 */
package org.calicograph.drafting;
