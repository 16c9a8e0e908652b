/**
 * The quilt: a top with its binding, and the medallion, a centre with its rounds.
 *
 * <p>A {@link org.calicograph.quilt.Medallion} is a centre and its {@link org.calicograph.border.Round}s:
 * borders, squares on point, octagons, rings; a {@link org.calicograph.quilt.Quilt} is a top with its binding.
 */
package org.calicograph.quilt;
