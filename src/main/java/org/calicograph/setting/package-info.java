/**
 * How blocks are set into a top.
 *
 * <p>A {@link org.calicograph.setting.Setting} puts blocks together: straight, on point, sashed, strippy, or
 * hexagons and triangles filled to a rectangle by partial blocks. Which block stands where is a
 * {@link org.calicograph.setting.BlockAt}; side and corner triangles are exact. What comes out is an
 * {@link org.calicograph.patchwork.Assembly} that keeps the covering law. All sizes are finished sizes.
 */
package org.calicograph.setting;
