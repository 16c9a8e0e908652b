/**
 * Every word that a cell can say, read from the sources that come with the product: types, what they are made of, their
 * methods, with what the comments say of shapes, units, errors and sources of rules.
 */
package org.calicograph.reference;
