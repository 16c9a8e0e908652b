/**
 * A design made larger or smaller, and what changes with it.
 *
 * <p>{@link org.calicograph.scaling.Scaling} compares a block at two sizes: how many cover the same bed,
 * how many patches and how much sewing that is, which patches leave the ruler's lines, and how much cloth
 * it takes by area with a stated allowance. Counts and lengths are exact; the cloth is an estimate, which
 * {@code cutting.Cutting} replaces by a layout.
 *
 * <p>This package uses {@code fitting}, {@code piecing} and what lies below them.
 */
package org.calicograph.scaling;
