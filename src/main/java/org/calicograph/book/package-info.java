/**
 * The booklet: a quilt on paper, so that a stranger can sew it.
 *
 * <p>{@link org.calicograph.book.Booklet} puts the chapters together from what {@code cutting}, {@code piecing}, {@code finishing} and {@code costing} know.
 * {@link org.calicograph.book.PageFlow} sets headings, paragraphs, tables and pictures on pages: a
 * heading never stands alone at the foot of a page, a table's head is repeated, a picture is never cut.
 * {@link org.calicograph.book.Templates} puts small templates whole on a page; every page is a
 * {@link org.calicograph.drawing.Picture} at the paper's own size. {@link org.calicograph.book.Handout} is
 * a draft on paper, a panel for each step.
 */
package org.calicograph.book;
