/**
 * The process that runs cells: JShell with an execution of our own, the stdlib, dials.
 *
 * <p><b>Way in.</b> {@link org.calicograph.kernel.KernelMain} is started by a session and does what the
 * messages of {@link org.calicograph.wire} ask. {@link org.calicograph.kernel.Dials} is what cells see.
 * {@code docs/kernel.md} says why JShell lives here and not in the editor, and what was measured.
 *
 * <p><b>Inputs.</b> A cell is Java as one would write it in a method's body, with imports, methods and
 * types among the statements, and with or without a semicolon at its end. The house's packages, the
 * words {@code inches}, {@code mm}, {@code cm}, {@code yards}, {@code degrees}, {@code radians} and
 * {@code dial}, {@code Math}, the stdlib and the usual parts of {@code java.util} are imported.
 *
 * <p><b>The value of a cell</b> is that of its last statement, if that is an expression or declares a
 * variable; a dial's own declaration shows nothing. {@link org.calicograph.show.Show} says what the
 * value looks like, here in this process.
 *
 * <p><b>Threads.</b> One reads messages, one evaluates, one answers questions (scans, completion, the
 * catalogue) also while a cell runs.
 *
 * <p><b>Guarantees.</b>
 * <ul>
 * <li>The process ends as soon as the session's socket closes, even while a cell spins.
 * <li>Whatever a cell throws becomes a {@link org.calicograph.wire.Failure} with the line of the cell.
 * <li>What a cell prints is kept up to 1 MB.
 * <li>Turning a dial compiles nothing. The pieces that declare it run again, those that read what such
 *     a piece declares, and so on; a variable that a statement among these could have changed is made
 *     anew first. A type that computes something once (static fields, enum constants) can't be run
 *     again; then the cells concerned are named, to be evaluated.
 * </ul>
 *
 * <p><b>Known failures, kept visible.</b> A cell's statements run one by one, so those before one that
 * does not compile have been run. {@code Thread.stop} is gone from Java 20 on: there only code that heeds
 * an interrupt can be stopped, and the session ends the process for the rest. Compiled classes of
 * evaluations long past stay loaded until the process ends. An object that a cell
 * changes through another object is not seen to change when a dial turns.
 */
package org.calicograph.kernel;
