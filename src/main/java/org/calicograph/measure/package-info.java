/**
 * Lengths, angles and areas: the ground floor.
 *
 * <p><b>Contract.</b> A {@link org.calicograph.measure.Length} is exact: a whole number of units of
 * 1/24 micrometre, so that 1/64 inch (9525 units), 1/3 inch (203&nbsp;200 units) and 1 micrometre
 * (24 units) are all whole. Sums, differences and whole multiples are exact; products with a real
 * number and quotients round once, to the nearest unit. {@link org.calicograph.measure.Angle} and
 * {@link org.calicograph.measure.Area} are double precision, since roots and circles leave the
 * rationals anyway.
 *
 * <p>A finished size and a cut size are different types,
 * {@link org.calicograph.measure.Finished} and {@link org.calicograph.measure.Cut}: a seam allowance
 * is what leads from one to the other, and nothing else does.
 *
 * <p><b>Reading and writing.</b> Lengths are read and written as the trade does: {@code 3 1/8},
 * {@code 3 1/8 in}, {@code 2.5"}, {@code 20 cm}, {@code 6 mm}. The reading and the writing of an
 * exact fraction are inverse to each other.
 *
 * <p>This package uses nothing else of the house.
 */
package org.calicograph.measure;
