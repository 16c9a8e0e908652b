/**
 * From a quilt to the order in which it is sewn, step by step.
 *
 * <p>A {@link org.calicograph.piecing.SewingPlan} holds every different block once, with how often it is made, and
 * then what the top is put together from, in {@link org.calicograph.piecing.Stage}s whose steps are drawn.
 * {@link org.calicograph.piecing.Foundation}s are patterns to sew on paper,
 * {@link org.calicograph.piecing.StripSets} strips that are sewn together first and cut across, and a
 * {@link org.calicograph.piecing.Laying} is the order in which the shapes of an appliqué are laid.
 *
 * <p>Which patches share a seam, and in which order they can be joined, is found in {@code seams}.
 */
package org.calicograph.piecing;
