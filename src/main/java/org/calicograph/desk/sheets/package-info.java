/**
 * Variations: a sheet over one or two dials, dial values kept under names, two of them side by side
 * ({@link org.calicograph.desk.sheets.SheetPage}). Variations are drawn by a kernel of their own, so that
 * the notebook stays as it is until one is taken.
 */
package org.calicograph.desk.sheets;
