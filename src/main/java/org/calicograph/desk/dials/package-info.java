/** Dials as they stand beside their cells: {@link org.calicograph.desk.dials.DialControl}, over {@link org.calicograph.desk.dials.Notches}. */
package org.calicograph.desk.dials;
