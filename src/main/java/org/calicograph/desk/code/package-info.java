/**
 * A code cell's text: colouring ({@link org.calicograph.desk.code.JavaLexer}), brackets
 * ({@link org.calicograph.desk.code.Brackets}), marks under what is wrong, and the editor that shows them.
 */
package org.calicograph.desk.code;
