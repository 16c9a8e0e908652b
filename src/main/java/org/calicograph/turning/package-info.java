/**
 * A block turned and repeated until a new figure appears.
 *
 * <p>A {@link org.calicograph.turning.Turn} is one of the eight ways in which a square can lie. A
 * {@link org.calicograph.turning.Turnings} asks in how many ways a block can be laid out in columns and
 * rows under chosen turns; it counts by Burnside's lemma, exactly and without listing, and lists each
 * layout once where the list is not too long. Layouts count as one if turning (and, where asked,
 * mirroring) the whole makes them the same. A block's own symmetry is found from its patches.
 *
 * <p>{@link org.calicograph.turning.Repeat} is one layout, repeated without end: it names its plane group
 * by the international short names. {@link org.calicograph.turning.Frieze} does so for a border.
 * {@link org.calicograph.turning.Emergence} finds the figures that patches of one fabric make across the
 * edges of blocks, and ranks them.
 *
 * <p>This package uses {@code quilt} and {@code drawing}.
 */
package org.calicograph.turning;
