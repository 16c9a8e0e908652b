/**
 * Where a cell divides whole numbers although a number with a fraction is wanted.
 *
 * <p>{@link org.calicograph.kernel.numbers.WholeDivision} asks the compiler for the types in a piece of a cell
 * and follows each division of two whole numbers to where its quotient goes. It runs nothing, and says nothing
 * of pieces that don't compile.
 */
package org.calicograph.kernel.numbers;
