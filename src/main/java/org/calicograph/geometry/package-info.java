/**
 * Plane geometry on the page: points, transforms, paths, regions and the arrangement of lines.
 *
 * <p><b>The page.</b> Coordinates are inches in double precision, x to the right and y downwards, as
 * a page is read; a positive angle turns clockwise. {@link org.calicograph.geometry.Point} takes and
 * gives {@link org.calicograph.measure.Length} at its edges.
 *
 * <p><b>Inputs.</b> A {@link org.calicograph.geometry.Path} is a chain of
 * {@link org.calicograph.geometry.Segment}s: straight lines, circular arcs and cubic curves. A
 * {@link org.calicograph.geometry.Region} is a closed outer path and the paths of its holes.
 *
 * <p><b>Guarantees.</b> Everything is immutable. Areas, lengths of lines and arcs, bounds and turning
 * are computed from the curves themselves, not from a polygon near them. Arcs stay arcs under turning,
 * mirroring, moving and even scaling; under any other transform they become cubics within 1e-4 of the
 * radius. What needs a polygon (containment, union, intersection, difference, offsets) takes or states
 * its accuracy; the default is {@link org.calicograph.geometry.Region#ACCURACY}.
 *
 * <p><b>The arrangement.</b> {@link org.calicograph.geometry.Arrangement} cuts drafting lines where
 * they meet and returns the faces between them, with arcs and cubics kept. Meeting points of lines and
 * arcs are found in closed form, those of cubics by bisection to 1e-9; points within 1e-6 in are one
 * point. The faces are assembled by the JTS polygonizer from fine chords, and each chord leads back to
 * the curve that it stands for. Lines that bound no face are reported, not lost.
 *
 * <p><b>From elsewhere.</b> {@link org.calicograph.geometry.SvgPathData} reads path data as SVG has it;
 * {@link org.calicograph.geometry.FittedCurve} draws a formula in cubics within a stated accuracy.
 *
 * <p>This package uses {@code measure} and the JTS library.
 */
package org.calicograph.geometry;
