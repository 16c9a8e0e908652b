/**
 * Time and money for a quilt: an {@link org.calicograph.costing.Estimate} by the
 * {@link org.calicograph.costing.Rates} of whoever asks, each figure with what it rests on.
 */
package org.calicograph.costing;
