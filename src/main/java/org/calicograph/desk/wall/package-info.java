/**
 * The wall: what was drawn hangs here, large, with ruler edges ({@link org.calicograph.desk.wall.Wall}); small
 * pictures of all that can hang there stand on a rail above ({@code Rail}); under it the tray of dials
 * ({@code Tray}), at its edge the bolts, a swatch for each cloth of the picture with its share
 * ({@code Bolts}, reckoned by {@link org.calicograph.desk.wall.ClothShare}).
 */
package org.calicograph.desk.wall;
