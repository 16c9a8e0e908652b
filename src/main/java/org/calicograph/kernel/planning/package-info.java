/** How what a cell came to is cut, told beside whatever else the kernel is at. */
package org.calicograph.kernel.planning;
