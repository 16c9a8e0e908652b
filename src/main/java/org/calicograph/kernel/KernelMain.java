package org.calicograph.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.Channel;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Message;
import org.calicograph.wire.Orders;
import org.calicograph.wire.ToKernel;

/**
 * The kernel's way in. It is started by a session, reads its orders from standard input, calls the
 * session and answers until the session's socket closes; then it ends at once, whatever a cell is at.
 */
public final class KernelMain {

    private static final long STACK = 32L << 20;

    private final Orders orders;
    private final Channel control;
    private final Channel exhibits;
    private final Running running = new Running();
    private final BlockingQueue<ToKernel> work = new LinkedBlockingQueue<>();
    private final BlockingQueue<ToKernel> questions = new LinkedBlockingQueue<>();
    private final CompletableFuture<Cells> cells = new CompletableFuture<>();
    private final CompletableFuture<Stdlib> stdlib = new CompletableFuture<>();

    private KernelMain(Orders orders, Channel control, Channel exhibits) {
        this.orders = orders;
        this.control = control;
        this.exhibits = exhibits;
    }

    /** Takes no arguments; what it is to do comes on standard input. */
    public static void main(String[] arguments) {
        try {
            Orders orders = Orders.readFrom(System.in);
            Channel control = Channel.to(orders.port());
            control.send(new FromKernel.Hello(orders.token(), false, ProcessHandle.current().pid()));
            Channel exhibits = Channel.to(orders.port());
            exhibits.send(new FromKernel.Hello(orders.token(), true, ProcessHandle.current().pid()));
            new KernelMain(orders, control, exhibits).run();
        } catch (IOException e) {
            System.err.println("The kernel can't reach its session: " + e.getMessage());
            System.exit(2);
        }
    }

    private void run() {
        Thread evaluating = new Thread(null, () -> keepOn(this::evaluate), "cells", STACK);
        evaluating.setDaemon(true);
        evaluating.start();
        Thread answering = new Thread(null, () -> keepOn(this::answer), "questions", STACK / 4);
        answering.setDaemon(true);
        answering.start();
        int code = ToKernel.LOST;
        try {
            while (true) {
                listen(control.receive());
            }
        } catch (IOException e) {
            code = ToKernel.LOST;
        } catch (OutOfMemoryError e) {
            code = ToKernel.NO_MEMORY;
        } finally {
            Runtime.getRuntime().halt(code);
        }
    }

    private interface Loop {
        void run() throws Exception;
    }

    private void keepOn(Loop loop) {
        try {
            loop.run();
        } catch (OutOfMemoryError e) {
            Runtime.getRuntime().halt(ToKernel.NO_MEMORY);
        } catch (Throwable e) {
            try {
                java.io.PrintStream words = new java.io.PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.err), true);
                words.println("The kernel gave up: " + e);
                e.printStackTrace(words);
            } finally {
                Runtime.getRuntime().halt(ToKernel.LOST);
            }
        }
    }

    private void listen(Message message) {
        if (message instanceof ToKernel.Stop) {
            running.stop();
        } else if (message instanceof ToKernel.Evaluate || message instanceof ToKernel.Turn) {
            running.forgetStop();
            work.add((ToKernel) message);
        } else if (message instanceof ToKernel.Forget) {
            work.add((ToKernel) message);
        } else if (message instanceof ToKernel words) {
            questions.add(words);
        }
    }

    private void evaluate() throws Exception {
        Stdlib compiled = Stdlib.of(orders.stdlib().stream().map(Path::of).toList(), Path.of(orders.cache()));
        stdlib.complete(compiled);
        Cells ready = new Cells(running, compiled, orders.heapMegabytes());
        ready.takeOverOutput();
        cells.complete(ready);
        control.send(new FromKernel.Ready(compiled.broken()));
        while (true) {
            ToKernel next = work.take();
            if (next instanceof ToKernel.Evaluate e) {
                control.send(new FromKernel.Began(e.ticket(), e.cell()));
                send(e.ticket(), e.cell(), ready.evaluate(e.cell(), e.text(), e.dials(), e.stale()));
            } else if (next instanceof ToKernel.Turn t) {
                turn(ready, t);
            } else if (next instanceof ToKernel.Forget f) {
                f.cells().forEach(ready::forget);
            }
        }
    }

    private void turn(Cells ready, ToKernel.Turn t) throws IOException {
        List<IOException> lost = new ArrayList<>();
        List<String> anew = ready.turn(t.dials(), t.cells(), new Cells.Turning() {
            @Override
            public void begins(String cell) {
                try {
                    control.send(new FromKernel.Began(t.ticket(), cell));
                } catch (IOException e) {
                    lost.add(e);
                }
            }

            @Override
            public void ends(String cell, Cells.Result result) {
                try {
                    send(t.ticket(), cell, result);
                } catch (IOException e) {
                    lost.add(e);
                }
            }
        });
        control.send(new FromKernel.Turned(t.ticket(), anew));
    }

    private void send(long ticket, String cell, Cells.Result result) throws IOException {
        boolean exhibit = result.exhibit().isPresent();
        control.send(new FromKernel.Evaluated(ticket, cell, result.failure(), exhibit, result.kind(), result.output(), result.dials(), result.nanos()));
        if (exhibit) {
            exhibits.send(ticket, cell, result.exhibit().get());
        }
    }

    private void answer() throws Exception {
        Cells ready = cells.get();
        Completer completer = new Completer(ready, new Sources(System.getProperty("calicograph.sources", ""), stdlib.get()));
        while (true) {
            ToKernel next = questions.take();
            if (next instanceof ToKernel.Scan s) {
                List<CellScan> scans = new ArrayList<>();
                for (int i = 0; i < s.cells().size(); i++) {
                    scans.add(ready.scan(s.cells().get(i), s.texts().get(i)));
                }
                control.send(new FromKernel.Scanned(s.ticket(), scans));
            } else if (next instanceof ToKernel.Complete c) {
                control.send(completer.complete(c));
            } else if (next instanceof ToKernel.Explain e) {
                control.send(completer.explain(e));
            } else if (next instanceof ToKernel.Browse b) {
                control.send(new FromKernel.Browsed(b.ticket(), new Shelf(stdlib.get()).catalogue()));
            }
        }
    }
}
