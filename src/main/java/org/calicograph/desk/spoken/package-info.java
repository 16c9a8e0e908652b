/** What is told to whoever listens instead of looking. Screen readers ask a control for its name and for what stands in it; the two are kept apart here. */
package org.calicograph.desk.spoken;
