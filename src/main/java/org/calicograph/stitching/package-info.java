/**
 * The path that sews the lines.
 *
 * <p>A {@link org.calicograph.stitching.Route} puts lines in order: the fewest starts, and with those the
 * least length gone over again, or, where a start has its price, the least of both; exact where the lines
 * hang together. Joined along seams or echoes it is exact on small sets of lines, and else its bound is
 * stated. {@link org.calicograph.stitching.Sewing} is by hand or by machine, with the limits of each,
 * {@link org.calicograph.stitching.Lockstitch} tells how much to wind, and a
 * {@link org.calicograph.stitching.QuiltingPlan} holds it all over a quilt and shows itself: it changes the
 * thread where a region or a shadow falls, and says what goes through a machine's throat.
 *
 * <p>Lengths are inches in double precision. The same input gives the same routes.
 */
package org.calicograph.stitching;
