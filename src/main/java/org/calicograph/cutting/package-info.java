/**
 * From a quilt to what is bought and cut.
 *
 * <p>{@link org.calicograph.cutting.Cutting} holds, fabric by fabric, the pieces, how they are cut, a
 * layout on the cloth and what to buy. {@link org.calicograph.cutting.StripJoins} says how
 * borders and other long pieces are joined from strips; {@link org.calicograph.cutting.BorderCloth} and
 * {@link org.calicograph.cutting.ScrapCutting} borders and given pieces. All of them draw themselves.
 *
 * <p>Below: {@code pieces} counts and measures what is cut, {@code layout} lays it on cloth.
 *
 * <p><b>Laws.</b> The area cut is never below the area sewn. A length to buy is never below the lower
 * bound printed beside it; where it is proved least, adding a piece can't make it fall. The same quilt
 * gives the same plan in inches and in metric, but for the ruler's rounding.
 */
package org.calicograph.cutting;
