/**
 * Where a command writes, what it tells, and what it refuses: nothing that is somebody's own is ever replaced, and a file is
 * written whole or not at all.
 */
package org.calicograph.command.output;
