/**
 * The writers of a picture: SVG, PDF and PNG.
 *
 * <p>{@link org.calicograph.drawing.writing.SvgWriter}, {@link org.calicograph.drawing.writing.PdfWriter}
 * and {@link org.calicograph.drawing.writing.PngWriter} are deterministic: the same picture gives the same
 * bytes, in stable order, with fixed decimals and no clock. SVG and PDF are true to scale. Only the PNG
 * writer knows AWT.
 */
package org.calicograph.drawing.writing;
