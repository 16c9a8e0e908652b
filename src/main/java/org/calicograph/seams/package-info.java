/**
 * The order in which patches are sewn together.
 *
 * <p><b>Input.</b> The patches of a block, or the parts of an assembly with their outlines.
 *
 * <p><b>Guarantee.</b> A {@link org.calicograph.seams.Unit} holds every patch once. Each
 * {@link org.calicograph.seams.Unit.Sewn} names the kind of its seams: where an order of
 * straight seams exists it is found; where none exists, set-in, partial and curved seams are named.
 *
 * <p><b>Algorithm.</b> From the top down, patches are parted along any straight line through an edge
 * that crosses no patch, all parallel lines at once: rows. Parting along one such line never spoils
 * another, so this finds a straight order wherever there is one. What no line parts is built from the
 * bottom up: units that share one straight edge first, alike before unlike, what makes a unit without bays
 * before what leaves one, then those that must be set in, the fewest corners first. Alike units that lie in
 * a row become a strip in one go. What the whole shows several times in a turn about its middle is joined the
 * same way each time, so that it can be sewn in a chain; where several joinings are as good, this finds one
 * such order, not the least number of steps. A stuck group in whose every inner crossing a seam runs straight
 * on is a ring of overlapping ends, closed by a partial seam; any other has set-in seams.
 */
package org.calicograph.seams;
