package org.calicograph.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A notebook's file: read whole, saved whole. */
public final class NotebookFile {

    private static final int MOST_LINKS = 40;

    private NotebookFile() { }

    /** @throws NotebookException if there is no such file, it can't be read, or it is not a notebook */
    public static Notebook read(Path file) throws NotebookException {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw new NotebookException(name, "this is a folder; name a notebook in it");
            }
            if (!Files.exists(file)) {
                throw new NoSuchFileException(name);
            }
            if (!Files.isRegularFile(file)) {
                throw new NotebookException(name, "this is not an ordinary file; name a notebook");
            }
            if (Files.size(file) > NotebookReader.MOST_BYTES) {
                throw new NotebookException(name, NotebookReader.tooBig(Files.size(file)));
            }
            try (InputStream in = Files.newInputStream(file)) {
                return NotebookReader.read(in.readNBytes((int) NotebookReader.MOST_BYTES + 1), name);
            }
        } catch (NotebookException e) {
            throw e;
        } catch (IOException e) {
            throw new NotebookException(name, reason(e, "read"));
        }
    }

    /**
     * Saves a notebook in one step: the file is the old one or the new one at every moment, and on the disk when
     * this returns. A symbolic link stays one, and its file's permissions stay as they are.
     *
     * @throws NotebookException if it can't be saved; the file is then as it was
     */
    public static void save(Notebook notebook, Path file) throws NotebookException {
        String name = file.toString();
        try {
            Path target = followed(file);
            if (Files.isDirectory(target)) {
                throw new NotebookException(name, "this is a folder; give the notebook a name in it");
            }
            if (Files.exists(target) && !Files.isWritable(target)) {
                throw new NotebookException(name, "the file is write-protected; save under another name, or allow writing to it");
            }
            byte[] bytes = NotebookWriter.write(notebook).getBytes(StandardCharsets.UTF_8);
            if (bytes.length > NotebookReader.MOST_BYTES) {
                throw new NotebookException(name, "with its saved results the notebook has " + bytes.length + " bytes, and a file can have "
                        + NotebookReader.MOST_BYTES + " at most; save it without some results");
            }
            replace(target, bytes);
        } catch (NotebookException e) {
            throw e;
        } catch (IOException e) {
            throw new NotebookException(name, reason(e, "saved"));
        }
    }

    private static Path followed(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int i = 0; Files.isSymbolicLink(target); i++) {
            if (i == MOST_LINKS) {
                throw new FileSystemException(file.toString(), null, "too many symbolic links");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static void replace(Path target, byte[] bytes) throws IOException {
        Path folder = target.getParent();
        removeLeftovers(folder, target.getFileName().toString());
        Path part = folder.resolve("." + target.getFileName() + "." + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + ".part");
        Files.deleteIfExists(part);
        try {
            try (FileChannel out = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    out.write(buffer);
                }
                likeBefore(target, part);
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

    private static String reason(IOException e, String done) {
        if (e instanceof NoSuchFileException) {
            return done.equals("read") ? "there is no such file; check the name" : "there is no such folder; make it first";
        }
        if (e instanceof AccessDeniedException) {
            return "access is denied; check the permissions of the file and its folder";
        }
        String why = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return "it can't be " + done + ": " + Excerpt.of(String.valueOf(why), 200) + "; check the disk and the permissions";
    }
}
