/**
 * Quilting: the lines that hold the layers together, and how to sew them.
 *
 * <p><b>Lines.</b> {@link org.calicograph.quilting.Offset} and {@link org.calicograph.quilting.Echo}
 * follow the edge of a region, {@link org.calicograph.quilting.Lines} lays grids, fans, clamshells and
 * rays over it, {@link org.calicograph.quilting.Meander} fills it with one wandering line,
 * {@link org.calicograph.quilting.Feather} grows along a curve, and a
 * {@link org.calicograph.quilting.Motif} is a drawing of one's own that can be spread along a border.
 * Every one gives plain {@link org.calicograph.geometry.Path}s.
 *
 * <p><b>Sewing.</b> A {@link org.calicograph.quilting.Route} puts lines in order: the fewest starts,
 * and with those the least length gone over again, or, where a start has its price, the least of both; exact
 * where the lines hang together. Joined along seams or echoes it is exact on small sets of lines, and else
 * its bound is stated. {@link org.calicograph.quilting.Sewing} is by hand or by machine, with the limits of each. {@link org.calicograph.quilting.Gap} finds the largest place left unquilted,
 * {@link org.calicograph.quilting.Lockstitch} tells how much to wind, and a
 * {@link org.calicograph.quilting.QuiltingPlan} holds it all over a quilt and shows itself: it changes the
 * thread where a region or a shadow falls, and says what goes through a machine's throat.
 *
 * <p><b>Guarantees.</b> Lengths are inches in double precision. Lines never leave the region they were
 * asked for. The same input gives the same lines; what looks random starts from a seed.
 */
package org.calicograph.quilting;
