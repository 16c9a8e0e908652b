/**
 * The column of cells. {@link org.calicograph.desk.cells.Column} keeps a
 * {@link org.calicograph.desk.cells.CellPane} for each cell, in order, and wakes editors near the
 * part that is seen. Panes ask for what they want through {@link org.calicograph.desk.cells.CellRequests}.
 */
package org.calicograph.desk.cells;
