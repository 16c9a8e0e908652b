/**
 * Colours as values.
 *
 * <p>A {@link org.calicograph.colour.Colour} is a value in sRGB; {@link org.calicograph.colour.LinearRgb},
 * {@link org.calicograph.colour.Xyz}, {@link org.calicograph.colour.Lab},
 * {@link org.calicograph.colour.Oklab} and {@link org.calicograph.colour.Oklch} are the same colour in
 * other spaces, after CSS Color Module Level 4. Differences are CIEDE2000. What a screen can't show is
 * mapped into its range at the same hue and lightness. A {@link org.calicograph.colour.Wheel} gives true
 * colours their places, {@link org.calicograph.colour.ColourVision} shows what others see, and a
 * {@link org.calicograph.colour.Photo} is a grid of colours whose clusters can be found.
 *
 * <p>Everything is immutable, and the same input gives the same result: clusters start from a seed.
 */
package org.calicograph.colour;
