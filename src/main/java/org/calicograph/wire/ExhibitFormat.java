package org.calicograph.wire;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.calicograph.drawing.Exhibit;

/**
 * Exhibits as bytes and back, with nothing lost: the value read equals the value written.
 *
 * <p>A path writes each point once. A pen, a paint or a text that has been written before is written as
 * its number. Numbers are big-endian doubles.
 */
public final class ExhibitFormat {

    static final int NOTHING = 0, DRAWN = 1, TABLED = 2, WORDS = 3, SEVERAL = 4;
    static final int SHAPE = 0, LETTERING = 1, GROUP = 2;
    static final int LINE = 0, ARC = 1, CUBIC = 2;
    static final int MOST_DEEP = 2000;

    private ExhibitFormat() { }

    public static byte[] bytes(Exhibit exhibit) {
        ExhibitWriter writer = new ExhibitWriter();
        writer.exhibit(exhibit, 0);
        return writer.bytes();
    }

    /** @throws IOException if the bytes are not an exhibit, whole and with nothing behind it */
    public static Exhibit exhibit(byte[] bytes) throws IOException {
        try {
            ByteBuffer in = ByteBuffer.wrap(bytes);
            Exhibit exhibit = new ExhibitReader(in).exhibit(0);
            if (in.hasRemaining()) {
                throw new IOException(in.remaining() + " bytes too many behind an exhibit");
            }
            return exhibit;
        } catch (RuntimeException e) {
            throw new IOException("these " + bytes.length + " bytes are not an exhibit: " + e, e);
        }
    }

    static void shallow(int depth) {
        if (depth > MOST_DEEP) {
            throw new IllegalArgumentException("a picture of groups within groups more than " + MOST_DEEP
                    + " deep can't be shown; build it flatter, with Picture.group of a list");
        }
    }
}
