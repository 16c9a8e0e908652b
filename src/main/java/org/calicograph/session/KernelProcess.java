package org.calicograph.session;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.wire.Channel;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Message;
import org.calicograph.wire.KernelStart;
import org.calicograph.wire.ToKernel;

/** A kernel's process and the two sockets to it. What it says goes to an ear, from threads of its own. */
final class KernelProcess {

    /** Where a kernel's words go. */
    interface Ear {
        void said(KernelProcess kernel, FromKernel message);

        void delivered(KernelProcess kernel, Channel.Delivery delivery);

        /** @param code the process's exit code; above 128 for a signal, -1 if it had to be killed */
        void gone(KernelProcess kernel, int code, String lastWords);
    }

    private static final String[] DESK_JARS = {"javafx", "richtextfx", "reactfx", "undofx", "flowless", "wellbehavedfx",
        "controlsfx", "testfx", "openjfx-monocle"};

    private static final Duration LAST_WORDS = Duration.ofSeconds(1);

    private final Process process;
    private final ServerSocket door;
    private final String token;
    private final Ear ear;
    private final Deque<ToKernel> early = new ArrayDeque<>();
    private final StringBuffer lastWords = new StringBuffer();
    private Channel control;
    private Channel exhibits;
    private volatile boolean killed;

    KernelProcess(SessionOptions options, Ear ear) throws IOException {
        this.ear = ear;
        this.door = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
        byte[] secret = new byte[24];
        new SecureRandom().nextBytes(secret);
        this.token = HexFormat.of().formatHex(secret);
        ProcessBuilder builder = new ProcessBuilder(command(options));
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        try {
            this.process = builder.start();
        } catch (IOException e) {
            door.close();
            throw e;
        }
        try {
            List<String> folders = options.stdlib().stream().filter(Files::isDirectory).map(Path::toString).toList();
            new KernelStart(door.getLocalPort(), token, folders, options.cache().toString(), options.heapMegabytes(), options.warm())
                    .writeTo(process.getOutputStream());
        } catch (IOException e) {
            // It has ended already; the thread that waits for it will say so.
        }
        thread("door", this::open);
        Thread words = thread("words", this::listenToErrors);
        thread("end", () -> awaitEnd(words));
    }

    private static List<String> java(SessionOptions options) {
        // A command is over in seconds, where the quick compiler alone takes half the time; a desk stays open.
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + options.heapMegabytes() + "m", "-Xss1m",
                "-XX:TieredStopAtLevel=" + (options.warm() ? 4 : 1), "-XX:+UseSerialGC", "-XX:-UsePerfData", "-Xshare:auto", "-Xlog:disable",
                "-Xlog:all=error:stderr", "-XX:+DisplayVMOutputToStderr", "-Djava.awt.headless=true",
                // What a Java that crashes leaves behind belongs into the system's folder for such things.
                "-XX:ErrorFile=" + Path.of(System.getProperty("java.io.tmpdir"), "calicograph-%p.log"));
    }

    private static List<String> command(SessionOptions options) {
        String classPath = classPath(System.getProperty("java.class.path"));
        List<String> command = new ArrayList<>(java(options));
        command.addAll(new KernelArchive(options, classPath).options());
        command.add("-Dcalicograph.sources=" + System.getProperty("calicograph.sources", sources().toString()));
        command.add("-Dcalicograph.lengths=" + options.lengths().word());
        command.add("-cp");
        command.add(classPath);
        command.addAll(options.kernel());
        return command;
    }

    /** Where Javadoc is read from: the folder of sources in the application's own, or that of the build. */
    private static Path sources() {
        Path shipped = Path.of(System.getProperty("calicograph.home", ""), "sources").toAbsolutePath();
        return Files.isDirectory(shipped) ? shipped : Path.of("src", "main", "java").toAbsolutePath();
    }

    /** Has made what later kernels start from, if it isn't there. */
    static void rehearse(SessionOptions options) {
        String classPath = classPath(System.getProperty("java.class.path"));
        new KernelArchive(options, classPath).rehearse(java(options), classPath);
    }

    /** The product's class path without what only a window needs. */
    static String classPath(String own) {
        List<String> kept = new ArrayList<>();
        for (String entry : own.split(File.pathSeparator)) {
            String name = Path.of(entry).getFileName() == null ? "" : Path.of(entry).getFileName().toString().toLowerCase(java.util.Locale.ROOT);
            boolean desk = false;
            for (String jar : DESK_JARS) {
                desk |= name.startsWith(jar);
            }
            if (!desk) {
                kept.add(entry);
            }
        }
        return String.join(File.pathSeparator, kept);
    }

    private Thread thread(String name, Runnable work) {
        Thread thread = new Thread(work, "kernel " + process.pid() + " " + name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /** Lets in the two sockets that know the token; a stranger is sent away and holds nobody up. */
    private void open() {
        try {
            while (true) {
                Socket caller = door.accept();
                thread("caller", () -> welcome(caller));
            }
        } catch (IOException e) {
            // Closed: both are in, or the process has ended.
        }
    }

    private void welcome(Socket caller) {
        try {
            Channel channel = new Channel(caller);
            channel.patience(5000);
            FromKernel.Hello hello = channel.receiveHello();
            if (!MessageDigest.isEqual(hello.token().getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8))
                    || !admit(channel, hello.exhibits())) {
                channel.close();
                return;
            }
            channel.patience(0);
            if (hello.exhibits()) {
                while (true) {
                    ear.delivered(this, channel.receiveExhibit());
                }
            }
            while (true) {
                Message message = channel.receive();
                if (!(message instanceof FromKernel words)) {
                    throw new IOException("a kernel spoke as if it were a session");
                }
                ear.said(this, words);
            }
        } catch (IOException e) {
            boolean ours;
            synchronized (this) {
                ours = control != null && control.holds(caller) || exhibits != null && exhibits.holds(caller);
            }
            try {
                caller.close();
            } catch (IOException ignored) {
                // It is gone either way.
            }
            if (ours && !killed) {
                if (!(e instanceof java.io.EOFException) && !(e instanceof java.net.SocketException)) {
                    lastWords.append(e.getMessage());
                }
                finish();
            }
        }
    }

    private synchronized boolean admit(Channel channel, boolean forExhibits) throws IOException {
        if (killed || (forExhibits ? exhibits : control) != null) {
            return false;
        }
        if (forExhibits) {
            exhibits = channel;
        } else {
            control = channel;
            while (!early.isEmpty()) {
                channel.send(early.remove());
            }
        }
        if (control != null && exhibits != null) {
            door.close();
        }
        return true;
    }

    private void listenToErrors() {
        try (InputStream errors = process.getErrorStream()) {
            byte[] buffer = new byte[4096];
            int n;
            while ((n = errors.read(buffer)) >= 0) {
                if (lastWords.length() < 4000) {
                    lastWords.append(new String(buffer, 0, n, StandardCharsets.UTF_8));
                }
            }
        } catch (IOException e) {
            // The process has ended.
        }
    }

    private void awaitEnd(Thread words) {
        int code = -1;
        try {
            code = process.waitFor();
            // Its last words may still be on their way; what it started may keep their stream open, so not for long.
            words.join(LAST_WORDS.toMillis());
        } catch (InterruptedException e) {
            process.destroyForcibly();
        }
        close();
        ear.gone(this, code, lastWords.toString().strip());
    }

    /** A kernel whose socket has closed ends by itself; one that doesn't is ended. */
    private void finish() {
        try {
            if (!process.waitFor(2, TimeUnit.SECONDS)) {
                end();
            }
        } catch (InterruptedException e) {
            end();
        }
    }

    /** Ends the process, and first those that cells have started. */
    private void end() {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }

    long pid() {
        return process.pid();
    }

    /** Sends, or keeps until the kernel has called. A kernel that is gone hears nothing; its end is told apart. */
    synchronized void send(ToKernel message) {
        if (control == null) {
            early.add(message);
            return;
        }
        try {
            control.send(message);
        } catch (IOException e) {
            // The thread that waits for the process's end will tell.
        }
    }

    void kill() {
        killed = true;
        end();
        close();
    }

    private synchronized void close() {
        try {
            door.close();
        } catch (IOException e) {
            // Nobody can knock any more.
        }
        if (control != null) {
            control.close();
        }
        if (exhibits != null) {
            exhibits.close();
        }
    }
}
