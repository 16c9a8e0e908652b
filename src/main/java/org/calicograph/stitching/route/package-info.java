/**
 * Machinery behind a route; cells don't see it.
 *
 * <p>A {@link org.calicograph.stitching.route.Net} is lines as a graph,
 * {@link org.calicograph.stitching.route.Postman} finds how often to go over each of its edges (route inspection;
 * the rural postman where edges may be lent), and a {@link org.calicograph.stitching.route.Trail} runs over every
 * edge once, going straight on where it can.
 */
package org.calicograph.stitching.route;
