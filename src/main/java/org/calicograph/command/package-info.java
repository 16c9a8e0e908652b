/**
 * The command line: one class per command, and {@link org.calicograph.command.Main}, which
 * chooses among them.
 *
 * <p>Commands print what was asked for on standard output and everything else on standard error.
 * They end with 0 when all went well, 1 when the work itself failed, and 2 when the request could
 * not be understood or a file could not be read.
 */
package org.calicograph.command;
