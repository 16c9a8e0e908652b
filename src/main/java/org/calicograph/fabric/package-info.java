/**
 * Colours and cloth.
 *
 * <p>A {@link org.calicograph.fabric.Colour} is a value in sRGB. A
 * {@link org.calicograph.fabric.Fabric} is a cloth with a name and a colour. A
 * {@link org.calicograph.fabric.Role} says what a patch is for in a design ('dark', 'background')
 * before a fabric has been chosen; it brings a stand-in cloth of its own, so that every block can be
 * drawn at once.
 *
 * <p>This package uses {@code measure} only.
 */
package org.calicograph.fabric;
