package org.calicograph.kernel;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What cells print, kept up to a limit; what comes when no cell is at work goes nowhere. */
final class Printing {

    /** Bytes kept of what one cell prints. */
    static final int MOST = 1 << 20;

    private ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private boolean open;
    private int room;
    private long lost;
    /** What cells print to; a cell may have put another in its place. */
    private final PrintStream stream = new PrintStream(new OutputStream() {
        @Override
        public void write(int b) {
            take(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            take(bytes, from, length);
        }
        }, true, StandardCharsets.UTF_8);
    private boolean taken;

    void takeOver() {
        taken = true;
        restore();
    }

    private void restore() {
        System.setOut(stream);
        System.setErr(stream);
        System.setIn(InputStream.nullInputStream());
    }

    private synchronized void take(byte[] bytes, int from, int length) {
        if (open) {
            int fits = Math.min(length, room);
            kept.write(bytes, from, fits);
            room -= fits;
            lost += length - fits;
        }
    }

    /** @param already bytes that the cell has printed before */
    synchronized void begin(int already) {
        kept = new ByteArrayOutputStream();
        room = Math.max(0, MOST - already);
        lost = 0;
        open = true;
        keep();
    }

    /** A cell may have taken the streams away, and the compiler can't do without them. */
    void keep() {
        if (taken && (System.out != stream || System.err != stream || System.in == null)) {
            restore();
        }
    }

    synchronized String end() {
        open = false;
        keep();
        String text = kept.toString(StandardCharsets.UTF_8);
        kept = new ByteArrayOutputStream();
        if (lost == 0) {
            return text;
        }
        return (text.isEmpty() || text.endsWith("\n") ? text : text + "\n") + "… cut here: " + lost + " bytes more were printed.\n";
    }
}
