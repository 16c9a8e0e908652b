/**
 * The notebook as a document: its cells, its dials, its saved results, and the file they live in.
 *
 * <p><b>The document.</b> A {@link org.calicograph.notebook.Notebook} is immutable; every edit returns
 * another one. It has a title, {@link org.calicograph.notebook.Cell}s of prose or code in the order in
 * which they are read, the values of dials that were moved, and for each cell that was drawn what it
 * {@link org.calicograph.notebook.Saved} came to. Saved results let a notebook from elsewhere be looked
 * at without a kernel; the key of a result tells whether it still belongs to the text.
 *
 * <p><b>The file.</b> JSON in UTF-8 without a byte order mark (one is tolerated), two spaces of indent,
 * a line feed at the end:
 * <pre>
 * {
 *   "calicograph": 1,
 *   "title": "Harbour Light",
 *   "cells": [
 *     { "id": "a1", "kind": "code", "text": ["int points = dial(\"points\", 5, 16, 12);"] }
 *   ],
 *   "dials": { "points": 12 },
 *   "results": {}
 * }
 * </pre>
 * The fields named here come first and in this order. Fields that are not known, at every level, follow
 * in the order in which they were found, digit by digit as they were.
 * {@code docs/notebook.schema.json} is the JSON Schema.
 *
 * <p><b>Guarantees.</b> Reading what was written gives an equal notebook; writing what was read and
 * written once gives the same bytes. A file that can't be read is left alone, and the reason is one line
 * that names the file, the line and the column, the thing, and the repair
 * ({@link org.calicograph.notebook.NotebookException}). Saving is atomic: after a crash at any moment
 * the file is either the old one or the new one, whole. Permissions and symbolic links stay.
 *
 * <p><b>Limits.</b> A file of at most {@link org.calicograph.notebook.NotebookReader#MOST_BYTES} bytes,
 * nested at most {@link org.calicograph.notebook.NotebookReader#DEEPEST} deep. A saved picture is kept to a
 * millionth of an inch.
 *
 * <p>Nothing here runs a cell; that is the work of {@code session}.
 */
package org.calicograph.notebook;
