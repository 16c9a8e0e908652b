/**
 * The open notebook without a window: the notebook as it is being worked on, its undo and redo, its file,
 * whether it may be drawn, what would be lost if the machine stopped now.
 *
 * <p><b>Reading order.</b> {@link org.calicograph.desk.opened.OpenNotebook} holds the present notebook and the
 * way back ({@link org.calicograph.desk.opened.History}); what a step changed is a
 * {@link org.calicograph.desk.opened.Change}. {@link org.calicograph.desk.opened.OpenFile}
 * ties it to a file on disk, {@link org.calicograph.desk.opened.Recovery} keeps unsaved work beside it,
 * {@link org.calicograph.desk.opened.Trust} knows whose code may run, and
 * {@link org.calicograph.desk.opened.Variations} keeps dial values under names.
 *
 * <p>Nothing here knows JavaFX or starts a kernel.
 */
package org.calicograph.desk.opened;
