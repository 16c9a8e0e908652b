/**
 * From a quilt to what is bought, cut and sewn.
 *
 * <p>{@link org.calicograph.workshop.Cutting} holds, fabric by fabric, the pieces, how they are cut, a
 * layout on the cloth and what to buy. {@link org.calicograph.workshop.Finishing} holds backing,
 * batting, binding and sleeve with their assumptions; {@link org.calicograph.workshop.StripJoins} says how
 * borders and other long pieces are joined from strips; {@link org.calicograph.workshop.BorderCloth} and
 * {@link org.calicograph.workshop.ScrapCutting} borders and given pieces. {@link org.calicograph.workshop.SewingPlan} holds
 * the order of sewing of every different block and of the top. All of them draw themselves.
 *
 * <p>Below: {@code pieces} counts and measures what is cut, {@code layout} lays it on cloth,
 * {@code piecing} finds the order of sewing.
 *
 * <p><b>Laws.</b> The area cut is never below the area sewn. A length to buy is never below the lower
 * bound printed beside it; where it is proved least, adding a piece can't make it fall. The same quilt
 * gives the same plan in inches and in metric, but for the ruler's rounding.
 */
package org.calicograph.workshop;
