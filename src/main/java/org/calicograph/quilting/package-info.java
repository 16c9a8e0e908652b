/**
 * Quilting lines that hold the layers together; how they are sewn is told by {@code stitching}.
 *
 * <p>{@link org.calicograph.quilting.Offset} and {@link org.calicograph.quilting.Echo}
 * follow the edge of a region, {@link org.calicograph.quilting.Lines} lays grids, fans, clamshells and
 * rays over it, {@link org.calicograph.quilting.Meander} fills it with one wandering line,
 * {@link org.calicograph.quilting.Feather} grows along a curve, and a
 * {@link org.calicograph.quilting.Motif} is a drawing of one's own that can be spread along a border.
 * Every one gives plain {@link org.calicograph.geometry.Path}s. {@link org.calicograph.quilting.Gap} finds the
 * largest place left unquilted.
 *
 * <p><b>Guarantees.</b> Lengths are inches in double precision. Lines never leave the region they were
 * asked for. The same input gives the same lines; what looks random starts from a seed.
 */
package org.calicograph.quilting;
