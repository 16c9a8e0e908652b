package org.calicograph.notebook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes files whole or not at all. */
public final class WholeFile {

    private static final int MOST_LINKS = 40;

    private WholeFile() { }

    /** The file that symbolic links lead to, whether it is there or not. */
    static Path followed(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int i = 0; Files.isSymbolicLink(target); i++) {
            if (i == MOST_LINKS) {
                throw new FileSystemException(file.toString(), null, "too many symbolic links");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    /**
     * Writes a file in one step: at every moment it is what it was or what it is to be, and on the disk when this
     * returns. A symbolic link stays one, and permissions stay as they are.
     *
     * @throws IOException if it can't be written; the file is then as it was
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        write(file, bytes, file);
    }

    /**
     * As {@link #write(Path, byte[])}; a file that is not there yet gets the permissions of another, if that is there.
     * No copy that more people may read than the file stands beside it at any moment.
     */
    public static void write(Path file, byte[] bytes, Path like) throws IOException {
        Path target = followed(file);
        Path model = Files.exists(target) ? target : followed(like);
        Path folder = target.getParent();
        removeLeftovers(folder, target.getFileName().toString());
        Path part = folder.resolve("." + target.getFileName() + "." + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + ".part");
        Files.deleteIfExists(part);
        try {
            try (FileChannel out = FileChannel.open(part, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), privacy(model))) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    out.write(buffer);
                }
                likeBefore(model, part);
                out.force(true);
            }
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
        try (FileChannel entry = FileChannel.open(folder, StandardOpenOption.READ)) {
            entry.force(true);
        } catch (IOException e) {
            // Some systems can't open a folder; there the move alone has to do.
        }
    }

    /** For a part that takes its permissions from a file: until it has them only its owner may read it. */
    private static FileAttribute<?>[] privacy(Path model) {
        boolean posix = Files.exists(model) && Files.getFileAttributeView(model, PosixFileAttributeView.class) != null;
        return posix ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))} : new FileAttribute<?>[0];
    }

    private static void likeBefore(Path target, Path part) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(target, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (old == null || !Files.exists(target)) {
            return;
        }
        PosixFileAttributes was = old.readAttributes();
        PosixFileAttributeView now = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        try {
            now.setGroup(was.group());
            now.setOwner(was.owner());
        } catch (IOException e) {
            // Only the system's keeper can give files away; ours is then the saver's.
        }
        now.setPermissions(was.permissions());
    }

    /** Takes away what a process that is no more left half-written beside the file. */
    private static void removeLeftovers(Path folder, String name) throws IOException {
        Pattern form = Pattern.compile(Pattern.quote("." + name + ".") + "(\\d{1,18})-\\d+\\.part");
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, f -> f.getFileName().toString().startsWith("." + name + "."))) {
            for (Path part : parts) {
                Matcher m = form.matcher(part.getFileName().toString());
                if (m.matches() && ProcessHandle.of(Long.parseLong(m.group(1))).isEmpty()) {
                    Files.deleteIfExists(part);
                }
            }
        }
    }
}
