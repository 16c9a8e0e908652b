/**
 * The show at the year's end: which quilt hangs where, and everything printed for it.
 *
 * <p>An {@link org.calicograph.exhibition.Exhibition} numbers its {@link org.calicograph.exhibition.ShowEntry entries} once; wall cards, labels,
 * catalogue, voting sheet and the {@link org.calicograph.exhibition.HangingPlan} all read their numbers, names and sizes off it.
 */
package org.calicograph.exhibition;
