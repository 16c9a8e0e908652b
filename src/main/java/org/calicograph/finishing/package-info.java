/**
 * What a top still needs to become a quilt: backing, batting, binding and sleeve, with what each rests on.
 *
 * <p>All sizes are those that are cut; amounts to buy are rounded up by the cutter's buying step.
 */
package org.calicograph.finishing;
