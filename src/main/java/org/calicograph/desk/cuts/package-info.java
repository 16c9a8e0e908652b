/** How what hangs is cut: the list of it in the book, and what is said of a patch. */
package org.calicograph.desk.cuts;
