/**
 * Sizes that cover a bed, and borders whose units come out whole.
 *
 * <p><b>Sizes.</b> {@link org.calicograph.fitting.Mattress} holds the usual mattresses;
 * {@link org.calicograph.fitting.BedCover} adds drop and tuck, allows for what the quilting takes up, and
 * says how large the top has to be and whether a quilt covers its bed.
 *
 * <p><b>Borders.</b> A {@link org.calicograph.fitting.Fit} asks how many equal units go round a rectangle.
 * Its search is exact and complete: with units in whole steps of a chosen fraction and spacer borders in
 * a chosen range, every solution is found, since for every unit size and every count along a side there is
 * just one spacer. Solutions are ranked by the criteria stated in
 * {@link org.calicograph.fitting.Fitting}. Where there is none, the fit says why in one sentence and
 * offers the nearest that can.
 *
 * <p><b>Appliquéd borders.</b> A {@link org.calicograph.fitting.MotifFit} spaces motifs and swags along a
 * line: every spacing in whole steps, every count, and what is left for a motif that turns the corner.
 * <b>Printed borders.</b> A {@link org.calicograph.fitting.StripeFit} says where to cut strips so that the
 * print mirrors at every mitre, which sizes let it, and what cloth it takes. Both are complete, ranked by
 * the criteria stated in their solutions, and where there is none give the reason and the nearest
 * {@link org.calicograph.fitting.Change}s. {@link org.calicograph.fitting.BorderStrips} gives the lengths
 * to cut for plain borders.
 *
 * <p>The cost of a fit is one step for each unit size and each count along a side, and one for each pair of counts
 * that go with the same unit size.
 */
package org.calicograph.fitting;
