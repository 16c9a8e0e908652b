/**
 * Colours and cloth.
 *
 * <p>A {@link org.calicograph.fabric.Colour} is a value in sRGB; {@link org.calicograph.fabric.LinearRgb},
 * {@link org.calicograph.fabric.Xyz}, {@link org.calicograph.fabric.Lab},
 * {@link org.calicograph.fabric.Oklab} and {@link org.calicograph.fabric.Oklch} are the same colour in
 * other spaces, after CSS Color Module Level 4. Differences are CIEDE2000. What a screen can't show is
 * mapped into its range at the same hue and lightness. A {@link org.calicograph.fabric.Wheel} gives true
 * colours their places, a {@link org.calicograph.fabric.Scheme} chooses by place, a
 * {@link org.calicograph.fabric.Ramp} steps evenly in value, and
 * {@link org.calicograph.fabric.ColourVision} shows what others see. A
 * {@link org.calicograph.fabric.Palette} is named colours with proportions, also taken from a
 * {@link org.calicograph.fabric.Photo}.
 *
 * <p>A {@link org.calicograph.fabric.Fabric} is a cloth: its colour, its
 * {@link org.calicograph.fabric.Print} and its picture, its usable width, how much is
 * {@link org.calicograph.fabric.InHand} and its {@link org.calicograph.fabric.Price}; a
 * {@link org.calicograph.fabric.Stash} is the shelf. A {@link org.calicograph.fabric.Role} says what a
 * patch is for in a design ('dark', 'background') before a fabric has been chosen; it brings a stand-in
 * cloth of its own, so that every block can be drawn at once.
 *
 * <p><b>Guarantees.</b> Everything is immutable, and the same input gives the same result: clusters and
 * choices at random start from a seed.
 *
 * <p>This package uses {@code measure}, and the CSV library for the stash.
 */
package org.calicograph.fabric;
