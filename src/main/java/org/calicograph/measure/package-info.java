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
 * <p>Which of two lengths is finished and which is cut is said by the name of what holds it: patches and blocks hold
 * finished ones, a {@code Dimension} of a piece holds cut ones. What is written for people is written in inches or
 * in centimetres as the process that draws was told when it started; it can't change while it runs, and text that
 * is read again ({@link org.calicograph.measure.Length#text}) does not depend on it.
 *
 * <p><b>Reading and writing.</b> Lengths are read and written as the trade does: {@code 3 1/8},
 * {@code 3 1/8 in}, {@code 2.5"}, {@code 20 cm}, {@code 6 mm}. The reading and the writing of an
 * exact fraction are inverse to each other.
 *
 * <p>This package uses nothing else of the house.
 */
package org.calicograph.measure;
