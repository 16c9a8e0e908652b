package org.calicograph.desk.swatches;

import org.calicograph.geometry.Point;

/**
 * A swatch dropped on a patch.
 *
 * @param cell    the passage whose picture hangs
 * @param picture which of the passage's pictures, from 0
 * @param place   on that picture, in inches
 * @param cloth   that the patch has
 * @param swatch  the cloth that it is to have
 */
public record Dropped(String cell, int picture, Point place, String cloth, String swatch) { }
