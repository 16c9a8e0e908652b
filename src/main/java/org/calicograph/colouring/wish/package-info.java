/**
 * What can be wished of colours: likes kept apart, effects such as lustre and depth, cloths that go together.
 *
 * <p><b>Contract.</b> A wish never touches a patch that was not freed for it. What is called the best says how far that is
 * proved. Measures are of the patches alone: values by CIE L*, differences by CIEDE2000, seams by their length.
 */
package org.calicograph.colouring.wish;
