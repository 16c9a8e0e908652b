/** The start of an evening: the wall hung with the notebooks opened last, as they were saved, and one bare nail for a new one. Nothing is drawn to hang them: only what their files hold is shown. */
package org.calicograph.desk.start;
