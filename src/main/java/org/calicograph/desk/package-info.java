/**
 * The desk: a window in which a notebook is worked.
 *
 * <p><b>Reading order.</b> {@link org.calicograph.desk.Desk} opens the window,
 * {@code DeskWindow} keeps three things in step: the notebook as a value with its undo
 * ({@link org.calicograph.desk.opened}), the session that draws it ({@code Worktable}), and the panes that
 * show it ({@link org.calicograph.desk.cells}). {@code Papers} looks after the file, {@code MenuActions} lists
 * everything that menus and keys can do. {@code FindBar} goes from place to place across the cells,
 * {@code RoutineMaking} moves a method to a file of its own, {@code Pages} are what takes the cells' place for a
 * while: variations ({@link org.calicograph.desk.sheets}), the library ({@link org.calicograph.desk.shelf}), a
 * lesson ({@link org.calicograph.desk.lessons}).
 *
 * <p><b>Threads.</b> Panes and the notebook belong to JavaFX's thread. A session tells on a thread of its
 * own; {@code Worktable} gathers what it tells and hands on the newest of each. Pictures are painted by
 * one more thread, the newest for each frame.
 *
 * <p><b>Promises.</b> No edit is ever lost to a kernel: what was typed is in the notebook before anything
 * is drawn, and in a recovery file two seconds later. A notebook from elsewhere has no session, so nothing
 * of it can run, until the person trusts it. What has to be decided is said in a bar above the cells,
 * and nothing blocks the work.
 */
package org.calicograph.desk;
