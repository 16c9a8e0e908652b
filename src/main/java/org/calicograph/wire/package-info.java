/**
 * What a session and its kernel say to each other, and how it travels.
 *
 * <p><b>Messages.</b> {@link org.calicograph.wire.ToKernel} and {@link org.calicograph.wire.FromKernel}
 * are sealed families of records. Every question carries a ticket, which comes back with the answer;
 * answers may overtake one another. The values within them are the words of the house:
 * {@link org.calicograph.wire.Failure} (why a cell has no value), {@link org.calicograph.wire.Dial},
 * {@link org.calicograph.wire.CellScan} (what a cell declares and reads),
 * {@link org.calicograph.wire.Catalogue} (what the stdlib holds).
 *
 * <p><b>Two sockets.</b> Both are on the loopback address and begin with the token that the kernel was
 * given on its standard input ({@link org.calicograph.wire.KernelStart}). Messages travel on the control
 * socket, exhibits on the other one ({@link org.calicograph.wire.ExhibitFormat}), so that a large
 * picture delays no message. A {@link org.calicograph.wire.FromKernel.Evaluated} that announces an
 * exhibit and the exhibit itself may arrive in either order.
 *
 * <p><b>Guarantees.</b> What is read equals what was written. Reading makes nothing but the records of
 * these families; bytes that are none of them are an {@code IOException}, never a wrong value.
 *
 * <p><b>Known limits.</b> Both sides must be of one version: the format carries no description of
 * itself. A frame holds at most 1 GB. Pictures of groups more than 2000 deep are refused.
 */
package org.calicograph.wire;
