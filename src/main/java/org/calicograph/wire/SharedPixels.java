package org.calicograph.wire;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Memory that an editor and its kernel share, for pixels on their way to the screen: a picture of a
 * thousand pixels square goes through a socket in milliseconds, and through here in the time of two
 * copies. The editor makes it, the kernel writes on it, and a message says when there is something to
 * read; the editor has read it before it asks for more.
 *
 * <p>It is a file in memory where the system has such a folder, else in the one for temporary files. The
 * kernel takes away its name as soon as it has opened it, so that nothing is left however the two end;
 * what an editor leaves that is killed before that, the next one takes away.
 */
public final class SharedPixels {

    private static final Path MEMORY = Path.of("/dev/shm");
    private static final String NAME = "calicograph-";
    private static final String END = ".slate";
    private static final Pattern MAKER = Pattern.compile(NAME + "(\\d{1,18})-");

    private final Path path;
    private final IntBuffer pixels;

    private SharedPixels(Path path, IntBuffer pixels) {
        this.path = path;
        this.pixels = pixels;
    }

    /** A new one with room for all these frames, each at its {@link #at place}. */
    public static SharedPixels with(List<PixelFrame> easels) throws IOException {
        boolean inMemory = Files.isDirectory(MEMORY) && Files.isWritable(MEMORY);
        return in(inMemory ? MEMORY : Path.of(System.getProperty("java.io.tmpdir")), easels);
    }

    static SharedPixels in(Path folder, List<PixelFrame> easels) throws IOException {
        sweep(folder);
        Path file = Files.createTempFile(folder, NAME + ProcessHandle.current().pid() + "-", END);
        file.toFile().deleteOnExit();
        long room = 0;
        for (PixelFrame easel : easels) {
            room += easel.pixels();
        }
        try {
            take(file, 4 * Math.max(1, room));
            return mapped(file, 4 * Math.max(1, room));
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    /** Takes away what editors left that were killed before their kernel had opened it. */
    private static void sweep(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, NAME + "*" + END)) {
            for (Path file : left) {
                Matcher maker = MAKER.matcher(file.getFileName().toString());
                if (maker.lookingAt() && ProcessHandle.of(Long.parseLong(maker.group(1))).isEmpty()) {
                    file.toFile().delete(); // Somebody else's can't be, and stays.
                }
            }
        }
    }

    /** Fills the file, so that a lack of room shows now and not as a crash when somebody writes. */
    private static void take(Path file, long bytes) throws IOException {
        byte[] some = new byte[1 << 16];
        try (OutputStream out = Files.newOutputStream(file)) {
            for (long left = bytes; left > 0; left -= some.length) {
                out.write(some, 0, (int) Math.min(left, some.length));
            }
        }
    }

    /** One that the other side has made. */
    public static SharedPixels at(Path file) throws IOException {
        SharedPixels slate = mapped(file, Files.size(file));
        try {
            Files.delete(file);
        } catch (IOException e) {
            return slate; // Some systems keep the name as long as it is open; the editor deletes it as it ends.
        }
        return slate;
    }

    private static SharedPixels mapped(Path file, long bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            return new SharedPixels(file, channel.map(FileChannel.MapMode.READ_WRITE, 0, bytes).order(ByteOrder.nativeOrder()).asIntBuffer());
        }
    }

    public Path path() {
        return path;
    }

    /** True if the frames fit. */
    public boolean holds(List<PixelFrame> easels) {
        return easels.isEmpty() || at(easels, easels.size()) <= pixels.capacity();
    }

    /** True if it has such pixels. */
    public boolean holds(Painted painted) {
        return painted.at() >= 0 && painted.width() > 0 && painted.height() > 0
                && painted.at() + (long) painted.width() * painted.height() <= pixels.capacity();
    }

    /** Where the pixels of one of these frames begin. */
    public static int at(List<PixelFrame> easels, int which) {
        long at = 0;
        for (PixelFrame easel : easels.subList(0, which)) {
            at += easel.pixels();
        }
        return Math.toIntExact(at);
    }

    public void write(int at, int[] from) {
        pixels.put(at, from);
    }

    /** @param painted what it {@link #holds} */
    public int[] read(Painted painted) {
        int[] all = new int[painted.width() * painted.height()];
        pixels.get(painted.at(), all);
        return all;
    }
}
