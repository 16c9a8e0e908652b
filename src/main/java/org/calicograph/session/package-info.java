/**
 * A notebook at work with its kernel: what is drawn, what is stale, what depends on what.
 *
 * <p><b>Way in.</b> {@link org.calicograph.session.Session#open} takes the code cells
 * ({@link org.calicograph.session.CellSource}), saved dial values and
 * {@link org.calicograph.session.SessionOptions}, and starts a kernel at once. All methods may be called
 * from any thread. A {@link org.calicograph.session.SessionListener} is told everything on one thread,
 * in order.
 *
 * <p><b>States of a cell</b> ({@link org.calicograph.session.CellState}):
 * <pre>
 * Undrawn --draw--&gt; Waiting --&gt; Drawing --&gt; Done | Failed --edit, or a need changed--&gt; Stale --draw--&gt; Waiting
 * </pre>
 * A stop takes a waiting cell back to where it stood before.
 *
 * <p><b>What depends on what.</b> A cell needs those that declare a name it uses, wherever they stand.
 * A cell that uses a name which a higher cell assigns to comes behind that one. Drawing a cell first
 * draws what it needs, as far as that is not up to date. A cell that fails stops only those that need
 * it: they fail with {@code Depends}. The second declaration of a name and cells in a circle fail
 * before anything of them is run.
 *
 * <p><b>Guarantees.</b> However a cell ends (it throws, exits, runs for ever, fills the memory, crashes
 * its process), it comes to a clear state within its time limit and a second, and the others keep
 * theirs. After the loss of a kernel another is started; results stay shown, and values are computed
 * again when a cell that is drawn needs them. After two kernels in a row that end or keep silent before
 * doing any work, waiting cells fail with {@code KernelDied}, and the next draw tries again.
 *
 * <p><b>Dials.</b> A turned dial runs compiled code again, in the kernel, for the cells that depend on
 * it. Only the newest value waits. Cells that can't be run again as they are are evaluated. A caller that
 * says how large its pictures stand on the screen ({@link org.calicograph.wire.PixelFrame}) is sent their pixels
 * while the dial moves, painted by the kernel, and the exhibit once it rests.
 *
 * <p><b>Known limits.</b> Names are found by parsing alone, so a local variable that has the name of
 * another cell's declaration may count as a use of it (the cell is drawn again once too often, never
 * once too rarely). Changing an object through its methods from another cell is not seen as an
 * assignment to its variable.
 */
package org.calicograph.session;
