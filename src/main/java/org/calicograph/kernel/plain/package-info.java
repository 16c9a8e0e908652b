/** The compiler's objections in plain words, each with its repair: {@link org.calicograph.kernel.plain.CompilerWords}. */
package org.calicograph.kernel.plain;
