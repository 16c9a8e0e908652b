/**
 * A picture as a value, and what is written from it.
 *
 * <p>A {@link org.calicograph.drawing.Picture} is immutable and knows nothing of where it will be
 * shown; SVG, PDF, PNG and the screen are derived from the same value. Coordinates are inches at full
 * size, x to the right and y downwards.
 *
 * <p><b>Laws.</b> Moving by nothing and turning by nothing change nothing; transforms compose;
 * {@code over} is associative; the bounds of a group are the union of its parts' bounds.
 *
 * <p>A {@link org.calicograph.drawing.Table} is rows under named columns, with numbers that sort as
 * numbers. An {@link org.calicograph.drawing.Exhibit} is what a value looks like in a notebook: a
 * picture, a table, words, or several of these.
 *
 * <p><b>Painting.</b> {@link org.calicograph.drawing.Walk} takes any {@link org.calicograph.drawing.Surface}
 * through a picture, part by part from the bottom up, with every transform worked out; the writers below
 * and the screen are surfaces. {@link org.calicograph.drawing.Outline} gives a path in lines and cubics.
 * Joins are round; so are the ends of unbroken lines.
 *
 * <p><b>Writers.</b> {@link org.calicograph.drawing.writing.SvgWriter}, {@link org.calicograph.drawing.writing.PdfWriter}
 * and {@link org.calicograph.drawing.writing.PngWriter} are deterministic: the same picture gives the same
 * bytes, in stable order, with fixed decimals and no clock. SVG and PDF are true to scale. Only the PNG
 * writer and the {@link org.calicograph.drawing.PhotoReader} know AWT.
 */
package org.calicograph.drawing;
