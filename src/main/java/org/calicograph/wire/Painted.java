package org.calicograph.wire;

import org.calicograph.geometry.Box;

/**
 * A picture that lies painted on the {@link SharedPixels}.
 *
 * @param part   as its easel has it
 * @param at     where its pixels begin on the slate
 * @param bounds of the picture, in inches
 */
public record Painted(int part, int at, int width, int height, Box bounds) { }
