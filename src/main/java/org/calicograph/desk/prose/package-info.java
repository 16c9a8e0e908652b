/** A prose cell's Markdown (CommonMark with tables) as it is read: {@link org.calicograph.desk.prose.Prose}. */
package org.calicograph.desk.prose;
