/**
 * Pages on their way to a printer: a preview of every page, and the printing itself, at full size. In: pictures that are pages
 * of one paper. A page is never fitted to what a printer can reach: an inch on the page is an inch on the paper, and what lies
 * in a printer's own margins is left white. Which printers there are is the toolkit's to say.
 */
package org.calicograph.desk.press;
