/**
 * Pages set from the top down: one grid, two sizes of type, nothing smaller than can be read at arm's length.
 *
 * <p>{@link org.calicograph.book.page.PageFlow} takes headings, paragraphs, tables and pictures in turn and gives pages, each
 * exactly as large as its paper. A table is never parted so that one row stands alone, a heading never stands without
 * what follows it, and a page is turned early only where it is at least half full or nothing smaller would do.
 * {@link org.calicograph.book.page.Legible} sees to it that lettering within a drawing is at least 7 points high on paper.
 */
package org.calicograph.book.page;
