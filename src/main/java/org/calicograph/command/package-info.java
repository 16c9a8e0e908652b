/**
 * The command line.
 *
 * <p>Commands: {@code draw} (every cell, to files), {@code check} (does every cell draw?), {@code sheet}
 * (a page of variations over one or two dials), {@code page} (one HTML file) and {@code open} (the desk).
 * Without a screen everything but {@code open} works.
 *
 * <p><b>Exit codes.</b> 0: all went well. 1: a cell failed. 2: a file can't be read or written, or the
 * command was not understood. Everything that is not as it should be is told in one line on the error
 * stream, with the thing, the value and the repair; stack traces only with {@code --trace}.
 *
 * <p><b>Guarantees.</b> A notebook is only read, never written. Files are written whole or not at all.
 * The desk is looked up by name, so that no other command pays for it.
 */
package org.calicograph.command;
