/**
 * The writers of a picture: SVG, PDF and PNG.
 *
 * <p>{@link org.calicograph.drawing.writing.SvgWriter}, {@link org.calicograph.drawing.writing.PdfWriter}
 * and {@link org.calicograph.drawing.writing.PngWriter} are deterministic: the same picture gives the same
 * bytes, in stable order, with fixed decimals and no clock. SVG and PDF are true to scale. Only the PNG
 * writer knows AWT.
 *
 * <p>A PDF is tagged (ISO 32000-1, 14.7 and 14.8): everything painted belongs to one part of its structure or is an artifact,
 * and parts are read in the order of painting. {@link org.calicograph.drawing.writing.PdfStructure} holds the tree,
 * {@link org.calicograph.drawing.writing.PdfMarks} marks what is painted. No file claims to conform to PDF/UA: that is for
 * whoever has heard it read. Points are written to two decimals.
 */
package org.calicograph.drawing.writing;
