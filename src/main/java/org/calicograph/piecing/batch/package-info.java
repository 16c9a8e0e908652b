/**
 * Units that are sewn several at a time from squares and then cut apart, beside the ways of cutting each piece singly.
 *
 * <p>A {@link org.calicograph.piecing.batch.BatchUnit} is what is made; each of its {@link org.calicograph.piecing.batch.Batch}es
 * says what is cut, how many one batch gives, and what they are trimmed to.
 * {@link org.calicograph.piecing.batch.BatchUnits} finds such units in a quilt.
 */
package org.calicograph.piecing.batch;
