/**
 * Cloth.
 *
 * <p>A {@link org.calicograph.fabric.Fabric} is a cloth: its colour, its
 * {@link org.calicograph.fabric.Print} and its picture, its usable width, how much is
 * {@link org.calicograph.fabric.InHand} and its {@link org.calicograph.fabric.Price}; a
 * {@link org.calicograph.fabric.Stash} is the shelf. A {@link org.calicograph.fabric.Role} says what a
 * patch is for in a design ('dark', 'background') before a fabric has been chosen for it; it brings a stand-in
 * cloth of its own, so that every block can be drawn at once. A
 * {@link org.calicograph.fabric.Palette} is named colours with proportions, a
 * {@link org.calicograph.fabric.Scheme} chooses them by their places on the wheel, a
 * {@link org.calicograph.fabric.Ramp} steps evenly in value.
 *
 * <p>Everything is immutable, and the same input gives the same result.
 */
package org.calicograph.fabric;
