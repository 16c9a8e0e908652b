/**
 * What colour does to a quilt: choosing fabrics for the patches that were drafted, and seeing what
 * comes of it.
 *
 * <p>A {@link org.calicograph.colouring.Colouring} gives each patch its fabric: by role, at random from
 * a seed, along a {@link org.calicograph.colouring.Gradient}, or one fabric spread over several blocks.
 * {@link org.calicograph.colouring.Lighting} and {@link org.calicograph.colouring.Transparency} lay
 * shapes over the patches. A {@link org.calicograph.colouring.ValueStudy} looks at light and dark, a
 * {@link org.calicograph.colouring.Contrast} at neighbours, with any colour vision.
 * {@link org.calicograph.colouring.RunningOut} finds what to use where a fabric is short.
 *
 * <p><b>Guarantees.</b> Nothing changes a patchwork; each step gives another one with the same outline.
 * Roles, and ids of patches that are not split, stay. The same input and seed give the same result.
 *
 * <p>This package uses {@code quilt}, {@code drawing} and what lies below them, and the libraries JTS
 * (neighbours, overlays) and ojAlgo (exact assignment).
 */
package org.calicograph.colouring;
