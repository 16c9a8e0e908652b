package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.calicograph.wire.Channel;
import org.calicograph.wire.Failure;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.KernelStart;
import org.calicograph.wire.ToKernel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Doubles of a kernel that hang, die or babble; whatever they do, the cells come to a clear state. */
class KernelsThatMisbehaveTest {

    @TempDir
    static Path cache;

    /** Never calls. */
    static final class Silent {
        public static void main(String[] arguments) throws Exception {
            Thread.sleep(100_000);
        }
    }

    /** Ends before it calls. */
    static final class Stillborn {
        public static void main(String[] arguments) {
            System.err.println("no room in the loft");
            System.exit(9);
        }
    }

    /** Calls and says it is ready, then answers nothing. */
    static final class Mute {
        public static void main(String[] arguments) throws Exception {
            KernelStart orders = KernelStart.readFrom(System.in);
            Channel control = Channel.to(orders.port());
            control.send(new FromKernel.Hello(orders.token(), false, 1));
            Channel.to(orders.port()).send(new FromKernel.Hello(orders.token(), true, 1));
            control.send(new FromKernel.Ready(java.util.List.of()));
            while (true) {
                control.receive();
            }
        }
    }

    /** Answers with bytes that are no message. */
    static final class Babbling {
        public static void main(String[] arguments) throws Exception {
            KernelStart orders = KernelStart.readFrom(System.in);
            java.net.Socket socket = new java.net.Socket(java.net.InetAddress.getLoopbackAddress(), orders.port());
            new Channel(socket).send(new FromKernel.Hello(orders.token(), false, 1));
            Channel.to(orders.port()).send(new FromKernel.Hello(orders.token(), true, 1));
            socket.getOutputStream().write(new byte[] {0, 0, 0, 3, 99, 98, 97, 1, 2, 3});
            socket.getOutputStream().flush();
            Thread.sleep(100_000);
        }
    }

    /** Speaks well, and ends in the middle of a cell. */
    static final class Fainting {
        public static void main(String[] arguments) throws Exception {
            KernelStart orders = KernelStart.readFrom(System.in);
            Channel control = Channel.to(orders.port());
            control.send(new FromKernel.Hello(orders.token(), false, 1));
            Channel.to(orders.port()).send(new FromKernel.Hello(orders.token(), true, 1));
            control.send(new FromKernel.Ready(java.util.List.of()));
            while (true) {
                if (control.receive() instanceof ToKernel.Scan s) {
                    control.send(new FromKernel.Scanned(s.ticket(), s.cells().stream().map(c ->
                            new org.calicograph.wire.CellScan(c, java.util.List.of(), java.util.List.of(), java.util.List.of())).toList()));
                } else {
                    control.send(new FromKernel.Began(2, "a1"));
                    Runtime.getRuntime().halt(134);
                }
            }
        }
    }

    /** Calls with a token of its own making before the true one. */
    static final class Forging {
        public static void main(String[] arguments) throws Exception {
            KernelStart orders = KernelStart.readFrom(System.in);
            Channel forged = Channel.to(orders.port());
            forged.send(new FromKernel.Hello("0".repeat(48), false, 1));
            try {
                forged.send(new FromKernel.Ready(java.util.List.of()));
                forged.patience(20_000);
                forged.receive();
            } catch (java.net.SocketTimeoutException e) {
                System.exit(5); // let in
            } catch (java.io.IOException refused) {
                System.err.println("refused");
                System.exit(6);
            }
            System.exit(7);
        }
    }

    private static String why(Class<?> kernel, Duration patience) {
        SessionOptions options = Studio.options(cache).withKernel(kernel.getName()).withPatience(patience);
        try (Studio studio = Studio.open(options, Map.of(), "1 + 1")) {
            studio.drawAll();
            return studio.failure("a1", Failure.KernelDied.class).message();
        }
    }

    @Test
    void a_kernel_that_never_calls_is_given_up() {
        assertThat(why(Silent.class, Duration.ofMillis(500))).contains("gave no answer for 500 ms");
    }

    @Test
    void a_kernel_that_dies_at_once_is_given_up_with_its_last_words() {
        assertThat(why(Stillborn.class, Duration.ofSeconds(20))).contains("ended with code 9").contains("no room in the loft");
    }

    @Test
    void a_kernel_that_answers_nothing_is_given_up() {
        assertThat(why(Mute.class, Duration.ofSeconds(2))).contains("gave no answer");
    }

    @Test
    void a_kernel_that_babbles_is_ended() {
        assertThat(why(Babbling.class, Duration.ofSeconds(20))).contains("signal").contains("unknown");
    }

    @Test
    void a_kernel_that_ends_within_a_cell_fails_that_cell() {
        assertThat(why(Fainting.class, Duration.ofSeconds(20))).contains("signal 6");
    }

    @Test
    void a_socket_without_the_token_is_refused() {
        assertThat(why(Forging.class, Duration.ofSeconds(20))).contains("code 6").contains("refused");
    }

    /** An editor in a process of its own, with a kernel whose cell spins; it prints the kernel's process number. */
    static final class Editor {
        public static void main(String[] arguments) throws Exception {
            Studio studio = Studio.open(Path.of(arguments[0]), "while (true) { }");
            studio.session.drawAll();
            studio.await("the cell at work", () -> studio.session.state("a1") instanceof CellState.Drawing);
            System.out.println(((KernelState.Ready) studio.session.kernel()).pid());
            Thread.sleep(100_000);
        }
    }

    @Test
    void a_kernel_ends_with_its_editor_even_while_a_cell_spins() throws Exception {
        Process editor = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx200m", "-XX:+UseSerialGC",
                "-cp", System.getProperty("java.class.path"), Editor.class.getName(), cache.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try {
            long pid = Long.parseLong(editor.inputReader().readLine().strip());
            ProcessHandle kernel = ProcessHandle.of(pid).orElseThrow();
            assertThat(kernel.isAlive()).isTrue();
            editor.destroyForcibly();
            kernel.onExit().get(30, java.util.concurrent.TimeUnit.SECONDS);
            assertThat(kernel.isAlive()).isFalse();
        } finally {
            editor.destroyForcibly();
        }
    }
}
