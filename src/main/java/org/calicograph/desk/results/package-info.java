/**
 * What cells came to, on the screen: pictures that zoom, pan and name the part under the pointer
 * ({@link org.calicograph.desk.results.PictureView}), tables that sort and copy
 * ({@link org.calicograph.desk.results.TableGrid}), words, and failures with what to do next
 * ({@link org.calicograph.desk.results.FailureNote}).
 */
package org.calicograph.desk.results;
