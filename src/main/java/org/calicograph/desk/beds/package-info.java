/** What a quilt that hangs would do on a bed, in one sentence: its size in, words out, by the table of mattresses and the usual take-up. A bed that was measured is for the book to say. */
package org.calicograph.desk.beds;
