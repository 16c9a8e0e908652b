/**
 * Machinery behind the lines that fill a region; cells don't see it.
 *
 * <p>A {@link org.calicograph.quilting.filling.Raster} is a fine square grid over a region, a
 * {@link org.calicograph.quilting.filling.Flood} tells for each of its points the nearest source,
 * {@link org.calicograph.quilting.filling.Rooms} share its cells out into rooms with doors between them, and a
 * {@link org.calicograph.quilting.filling.Contour} is the line half way between the ways through the rooms and
 * their walls, smoothed. Lengths are inches in double precision.
 */
package org.calicograph.quilting.filling;
