/**
 * A swatch dropped on a patch, written into the book: which word of the working lines laid that patch is found by trying.
 * In: the book, the patch's place on its picture, the cloth it has and the one it is to have. Out: the passage with one word
 * changed for which the patch does come out in the other cloth, or a sentence why there is none. Each word that names
 * the patch's cloth is tried by itself, in a kernel of its own, nearest passage first; then all of them in one passage; then all.
 */
package org.calicograph.desk.swatches;
