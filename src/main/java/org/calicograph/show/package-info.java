/**
 * How each value of the domain looks.
 *
 * <p>{@link org.calicograph.show.Show#of} turns the value that a cell ends in into an
 * {@link org.calicograph.drawing.Exhibit}. A value that is a
 * {@link org.calicograph.drawing.Drawable} shows itself; patchwork, quilts, paths, regions and fabrics
 * have a look given here; a list shows its elements one beneath another; anything else is shown as its
 * own words.
 *
 * <p><b>Guarantees.</b> The same value always gives the same exhibit. In a picture of patchwork every
 * patch is a part of its own, with the patch's id and a title of its fabric and finished size. Failures
 * of a value's own code are passed on as they are.
 *
 * <p>This package may use every package of the domain below it.
 */
package org.calicograph.show;
