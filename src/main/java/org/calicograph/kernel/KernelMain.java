package org.calicograph.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngPixels;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.kernel.planning.CutPlans;
import org.calicograph.measure.Length;
import org.calicograph.wire.Channel;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Message;
import org.calicograph.wire.KernelStart;
import org.calicograph.wire.Problem;
import org.calicograph.wire.ToKernel;

/**
 * The kernel's way in. It is started by a session, reads its orders from standard input, calls the
 * session and answers until the session's socket closes; then it ends at once, whatever a cell is at.
 */
public final class KernelMain {

    private static final long STACK = 32L << 20;

    private final KernelStart orders;
    private final Channel control;
    private final Channel exhibits;
    private final Running running = new Running();
    private final BlockingQueue<ToKernel> work = new LinkedBlockingQueue<>();
    private final BlockingQueue<ToKernel> questions = new LinkedBlockingQueue<>();
    /** How long nothing is asked, in milliseconds, before there is time to warm up. */
    private static final int IDLE = 200;

    private volatile boolean evaluating = true;
    private final Sketcher sketcher = new Sketcher();
    private final AtomicReference<ToKernel.Check> toCheck = new AtomicReference<>();
    private final Semaphore checks = new Semaphore(0);
    /** Values that wait for their cutting list, with the ticket of whoever asked. */
    private record Uncut(long ticket, Optional<Object> value) { }

    private final BlockingQueue<Uncut> uncut = new LinkedBlockingQueue<>();
    private final CompletableFuture<Cells> cells = new CompletableFuture<>();
    private final CompletableFuture<Stdlib> stdlib = new CompletableFuture<>();

    private KernelMain(KernelStart orders, Channel control, Channel exhibits) {
        this.orders = orders;
        this.control = control;
        this.exhibits = exhibits;
    }

    /** Takes no arguments; what it is to do comes on standard input. */
    public static void main(String[] arguments) {
        try {
            KernelStart orders = KernelStart.readFrom(System.in);
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
        Thread checking = new Thread(null, () -> keepOn(this::check), "checks", STACK / 4);
        checking.setDaemon(true);
        checking.start();
        Thread planning = new Thread(null, () -> keepOn(this::plan), "plans", STACK);
        planning.setDaemon(true);
        planning.start();
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
            // Processes that cells have started end with them.
            ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
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
        } else if (message instanceof ToKernel.Evaluate || message instanceof ToKernel.Turn || message instanceof ToKernel.Deliver) {
            running.forgetStop();
            work.add((ToKernel) message);
        } else if (message instanceof ToKernel.Forget || message instanceof ToKernel.Plan) {
            work.add((ToKernel) message);
        } else if (message instanceof ToKernel.Check check) {
            ToKernel.Check older = toCheck.getAndSet(check);
            if (older == null) {
                checks.release();
            } else {
                passOver(older);
            }
        } else if (message instanceof ToKernel words) {
            questions.add(words);
        }
    }

    /** A check that a newer one has overtaken is answered, so that nobody waits for it. */
    private void passOver(ToKernel.Check older) {
        try {
            control.send(new FromKernel.Checked(older.ticket(), List.of()));
        } catch (IOException e) {
            return; // The session is gone; whoever listens to it will notice.
        }
    }

    private void check() throws Exception {
        Checker checker = new Checker(stdlib.get());
        while (true) {
            checks.acquire();
            ToKernel.Check c = toCheck.getAndSet(null);
            Map<String, String> others = new LinkedHashMap<>();
            for (int i = 0; i < c.others().size(); i++) {
                others.put(c.others().get(i), c.texts().get(i));
            }
            List<Problem> problems;
            try {
                problems = checker.check(c.cell(), c.text(), others);
            } catch (RuntimeException e) {
                problems = List.of(); // The compiler stumbles over some half-written texts.
                checker = new Checker(stdlib.get());
            }
            control.send(new FromKernel.Checked(c.ticket(), problems));
        }
    }

    private void plan() throws Exception {
        while (true) {
            Uncut next = uncut.take();
            control.send(new FromKernel.Planned(next.ticket(), CutPlans.of(next.value())));
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
            evaluating = false;
            ToKernel next = work.take();
            evaluating = true;
            if (next instanceof ToKernel.Evaluate e) {
                control.send(new FromKernel.Began(e.ticket(), e.cell()));
                send(e.ticket(), e.cell(), ready.evaluate(e.cell(), e.text(), e.dials(), e.stale()));
            } else if (next instanceof ToKernel.Turn t) {
                turn(ready, t);
            } else if (next instanceof ToKernel.Deliver d) {
                for (String cell : d.cells()) {
                    Optional<Cells.Result> owed = ready.owed(cell);
                    if (owed.isPresent()) {
                        send(d.ticket(), cell, owed.get());
                    }
                }
                control.send(new FromKernel.Turned(d.ticket(), List.of(), List.of()));
            } else if (next instanceof ToKernel.Forget f) {
                f.cells().forEach(ready::forget);
            } else if (next instanceof ToKernel.Plan p) {
                uncut.add(new Uncut(p.ticket(), Optional.ofNullable(ready.held.get(p.cell())).flatMap(KernelCell::value)));
            }
        }
    }

    private void turn(Cells ready, ToKernel.Turn t) throws IOException {
        List<IOException> lost = new ArrayList<>();
        Turning.End turned = ready.turn(t.dials(), t.cells(), new Turning() {
            @Override
            public void begins(String cell) {
                try {
                    control.send(new FromKernel.Began(t.ticket(), cell));
                } catch (IOException e) {
                    lost.add(e);
                }
            }

            @Override
            public boolean sketched(String cell, Exhibit exhibit, long began, long ran) throws IOException {
                Optional<Sketcher.Sketch> sketch = sketcher.sketch(t, cell, exhibit);
                if (sketch.isPresent()) {
                    control.send(new FromKernel.Sketched(t.ticket(), cell, sketch.get().rest(), sketch.get().pictures(), began, ran, System.nanoTime()));
                }
                return sketch.isPresent();
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
        control.send(new FromKernel.Turned(t.ticket(), turned.anew(), turned.owed()));
    }

    private void send(long ticket, String cell, Cells.Result result) throws IOException {
        boolean exhibit = result.exhibit().isPresent();
        control.send(new FromKernel.Evaluated(ticket, cell, result.failure(), exhibit, result.kind(), result.output(), result.dials(), result.nanos()));
        if (exhibit) {
            exhibits.send(ticket, cell, result.exhibit().get());
        }
    }

    /** What takes long the first time, done before anybody waits for it; a step at a time, so that it holds up little. */
    private List<Runnable> warmth(Completer completer) {
        String call = "int n = 2;\ninches(n).ti";
        String open = "Picture.of(";
        return List.of(() -> completer.complete(new ToKernel.Complete(0, "", List.of(), call, call.length())),
                () -> completer.complete(new ToKernel.Complete(0, "", List.of(), "Pic", 3)),
                () -> completer.explain(new ToKernel.Explain(0, "", List.of(), open, open.length())),
                () -> PngPixels.paint(Picture.of(Region.rectangle(Length.inches(1), Length.inches(1))).filled(Colour.BLACK).outlined(Pen.SEAM),
                        Transform.scale(9), 9, 9, Colour.WHITE, false),
                () -> listen(new ToKernel.Check(0, "", "int n = 1;\nm", List.of(), List.of())));
    }

    private void answer() throws Exception {
        Cells ready = cells.get();
        Completer completer = new Completer(ready, new Sources(System.getProperty("calicograph.sources", ""), stdlib.get()));
        Deque<Runnable> warmth = new ArrayDeque<>(orders.warm() ? warmth(completer) : List.of());
        while (true) {
            ToKernel next = warmth.isEmpty() ? questions.take() : questions.poll(IDLE, TimeUnit.MILLISECONDS);
            if (next == null && !evaluating && work.isEmpty()) {
                warmth.remove().run();
            } else if (next instanceof ToKernel.Scan s) {
                control.send(new FromKernel.Scanned(s.ticket(), ready.scan(s.cells(), s.texts())));
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
