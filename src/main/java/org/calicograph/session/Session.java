package org.calicograph.session;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.CutList;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Problem;
import org.calicograph.wire.Signature;

/**
 * A notebook at work with its kernel.
 *
 * <p>Every method may be called from any thread and returns at once; what follows is told to the
 * listener, in order. The kernel starts when the session opens.
 */
public final class Session implements AutoCloseable {

    private final SessionQueue conductor;

    private Session(SessionQueue conductor) {
        this.conductor = conductor;
    }

    /**
     * @param cells the code cells, in the order of the notebook
     * @param dials values of dials as saved, by name; see {@link Dial} for how they are written
     * @throws IllegalArgumentException if two cells have one id
     */
    public static Session open(List<CellSource> cells, Map<String, String> dials, SessionOptions options, SessionListener listener) {
        return new Session(new SessionQueue(cells, dials, options, listener));
    }

    /**
     * Draws these cells anew, and first those that they need as far as those are not up to date.
     *
     * @return done when none of the cells is waiting or being drawn any more, however they ended, and the listener was told
     * @throws IllegalArgumentException if a cell isn't in the notebook
     */
    public CompletableFuture<Void> draw(Collection<String> cells) {
        return conductor.draw(cells);
    }

    public CompletableFuture<Void> draw(String... cells) {
        return draw(List.of(cells));
    }

    /** Draws every cell anew. */
    public CompletableFuture<Void> drawAll() {
        return conductor.drawAll();
    }

    /**
     * Draws what is stale or was never drawn, and leaves the rest alone.
     *
     * @return done when nothing waits or is being drawn any more, and every turned dial has come into effect
     */
    public CompletableFuture<Void> drawStale() {
        return conductor.drawStale();
    }

    /** Gives a cell another text. It and what depends on it become stale, if they had been drawn. */
    public void edit(String cell, String text) {
        conductor.edit(cell, text);
    }

    /**
     * Gives the notebook other cells, or another order. Cells that keep their id and text keep their
     * results; those that depend on what has changed become stale.
     */
    public void arrange(List<CellSource> cells) {
        conductor.arrange(cells);
    }

    /**
     * Turns a dial and draws what depends on it again, without compiling anything. While that is at
     * work only the newest value waits.
     *
     * <p>A dial that no cell has declared yet keeps the value for when one does.
     *
     * @param value as {@link Dial} writes it
     * @throws IllegalArgumentException naming the range, if the dial is known and can't take the value
     */
    public void setDial(String name, String value) {
        setDial(name, value, List.of());
    }

    /**
     * As {@link #setDial(String, String)}. Cells all of whose pictures have an easel are told to
     * {@link SessionListener#sketched} at once, as pixels, and stand as being drawn until the dial has rested
     * for a moment; then they are done, with their exhibit.
     */
    public void setDial(String name, String value, List<PixelFrame> easels) {
        conductor.setDial(name, value, easels);
    }

    public void setDial(String name, int value) {
        setDial(name, Integer.toString(value));
    }

    public void setDial(String name, double value) {
        setDial(name, Double.toString(value));
    }

    public void setDial(String name, boolean value) {
        setDial(name, Boolean.toString(value));
    }

    public void setDial(String name, Length value) {
        setDial(name, value.text());
    }

    public void setDial(String name, Angle value) {
        setDial(name, Double.toString(value.degrees()));
    }

    /** The dials that cells have declared, in the order of the cells. */
    public List<Dial> dials() {
        return conductor.board().dials();
    }

    /** Values of dials by name: those given and those set since, whether a cell declares the dial or not. */
    public Map<String, String> dialValues() {
        return conductor.board().values();
    }

    /**
     * @throws IllegalArgumentException if the cell isn't in the notebook
     */
    public CellState state(String cell) {
        conductor.board().requireKnown(List.of(cell));
        return conductor.board().states().getOrDefault(cell, new CellState.Undrawn());
    }

    /** How every cell stands, in the order of the notebook. */
    public Map<String, CellState> states() {
        return conductor.board().states();
    }

    /** For each cell those that it needs itself, as far as they are known. */
    public Map<String, List<String>> needs() {
        return conductor.board().needs();
    }

    public KernelState kernel() {
        return conductor.board().kernel();
    }

    /**
     * Stops the cell that is being drawn and lets the waiting ones be. If the cell does not stop by
     * itself, the kernel is killed within a second and another started.
     */
    public void stop() {
        conductor.stop();
    }

    /** Ends the kernel at once; another starts when it is needed. */
    public void kill() {
        conductor.kill(false);
    }

    /** Ends the kernel at once and starts another. Results stay; values are computed again when they are needed. */
    public void restart() {
        conductor.kill(true);
    }

    /** How the text of a cell, as it is being written, could go on. */
    public CompletableFuture<Completions> complete(String cell, String text, int offset) {
        return conductor.complete(cell, text, offset);
    }

    /** The methods being called, or what is named, at the offset. */
    public CompletableFuture<List<Signature>> explain(String cell, String text, int offset) {
        return conductor.explain(cell, text, offset);
    }

    /**
     * What the compiler will object to in the text of a cell as it is being written, in its order. Nothing is
     * drawn or changed, and nothing that is being drawn is held up. Where another check overtakes this one
     * there are no problems.
     */
    public CompletableFuture<List<Problem>> check(String cell, String text) {
        return conductor.check(cell, text);
    }

    /** What these texts, cells or not, say about names; nothing if the kernel can't tell. */
    public CompletableFuture<List<CellScan>> scan(List<CellSource> texts) {
        return conductor.scan(texts);
    }

    /** How what a cell came to is cut, by its one plan; why there is no plan, where there is none. Drawing goes on meanwhile. */
    public CompletableFuture<CutList> plan(String cell) {
        return conductor.plan(cell);
    }

    /** What the stdlib holds. */
    public CompletableFuture<Catalogue> browse() {
        return conductor.browse();
    }

    /** Ends the kernel and tells the listener nothing more. */
    @Override
    public void close() {
        conductor.close();
    }
}
