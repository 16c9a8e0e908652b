/** The standard library at hand: search it, read its sources, put a routine into the notebook, make it one's own. */
package org.calicograph.desk.shelf;
