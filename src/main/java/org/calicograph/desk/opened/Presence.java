package org.calicograph.desk.opened;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.CRC32;

/** Which notebooks are open in which windows: a mark for each in the desk's own folder, taken away when it is closed. */
public final class Presence {

    private final Path folder;
    private final Window window;
    private Optional<Path> mark = Optional.empty();

    public Presence(Path own) {
        this(own, Window.here());
    }

    Presence(Path own, Window window) {
        this.folder = own.resolve("open");
        this.window = window;
    }

    /** This window has the file open now, and no other. */
    public void open(Path file) {
        close();
        Path mine = folder.resolve(name(file) + "." + window);
        try {
            Files.createDirectories(folder);
            Files.writeString(mine, file.toString(), StandardCharsets.UTF_8);
            mark = Optional.of(mine);
        } catch (IOException e) {
            // Then the others can't be told; what they write is still noticed.
        }
    }

    public void close() {
        try {
            for (Path each : mark.stream().toList()) {
                Files.deleteIfExists(each);
            }
        } catch (IOException e) {
            // A mark of a window that is gone counts for nothing.
        }
        mark = Optional.empty();
    }

    /** True if another window that goes on has the file open. */
    public boolean isOpenElsewhere(Path file) {
        String start = name(file) + ".";
        boolean elsewhere = false;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, f -> f.getFileName().toString().startsWith(start))) {
            for (Path each : all) {
                Optional<Window> other = Window.read(each.getFileName().toString().substring(start.length()));
                if (other.isPresent() && !other.get().equals(window)) {
                    elsewhere |= other.get().isAlive();
                    if (!other.get().isAlive()) {
                        Files.deleteIfExists(each);
                    }
                }
            }
        } catch (IOException e) {
            return elsewhere;
        }
        return elsewhere;
    }

    private static String name(Path file) {
        CRC32 sum = new CRC32();
        sum.update(file.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8));
        return file.getFileName().toString().replaceAll("[^A-Za-z0-9]", "_") + "-" + Long.toHexString(sum.getValue());
    }
}
