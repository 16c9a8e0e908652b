package org.calicograph.session;

import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import org.calicograph.wire.Channel;
import org.calicograph.wire.Failure;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.ToKernel;

/** The coming and going of kernels: the one at work, the spare one, and questions that wait for an answer. */
final class Kernels implements KernelProcess.Ear {

    private static final int MOST_STARTS = 2;
    private static final Duration SPARE_DELAY = Duration.ofMillis(500);

    /** Told on the conductor's thread. */
    interface Watch {
        void heard(FromKernel message);

        /** Told on the kernel's thread, since a picture on its way to the screen should wait for nobody. */
        void sketched(FromKernel.Sketched message);

        void delivered(Channel.Delivery delivery);

        /** The kernel is gone, with everything that it held. */
        void lost(Failure failure, String why);

        /** True if the kernel had begun on a cell, so that its end is the cell's doing. */
        boolean atWork();

        /** No kernel can be had. */
        void givenUp(String why);
    }

    private final SessionOptions options;
    private final SessionQueue conductor;
    private final CellStandings board;
    private final Watch watch;
    private final Map<KernelProcess, FromKernel.Ready> ready = new LinkedHashMap<>();
    private final Map<Long, Consumer<Optional<FromKernel>>> questions = new LinkedHashMap<>();
    private volatile Optional<KernelProcess> current = Optional.empty();
    private Optional<KernelProcess> spare = Optional.empty();
    private int failedStarts;
    private long tickets;

    Kernels(SessionOptions options, SessionQueue conductor, CellStandings board, Watch watch) {
        this.options = options;
        this.conductor = conductor;
        this.board = board;
        this.watch = watch;
    }

    boolean isThere() {
        return current.isPresent();
    }

    /** The kernel has done some work: later failures to start count from the beginning. */
    void proven() {
        failedStarts = 0;
    }

    long ticket() {
        return ++tickets;
    }

    void send(ToKernel message) {
        current.ifPresent(k -> k.send(message));
    }

    /** Asks, and passes on the answer; nothing if the kernel is lost before it comes. */
    long ask(LongFunction<ToKernel> question, Consumer<Optional<FromKernel>> answer) {
        long ticket = ticket();
        if (current.isEmpty()) {
            answer.accept(Optional.empty());
        } else {
            questions.put(ticket, answer);
            send(question.apply(ticket));
        }
        return ticket;
    }

    /** As {@link #ask}; a kernel that gives no answer within the patience is ended. */
    void demand(LongFunction<ToKernel> question, Consumer<Optional<FromKernel>> answer) {
        long ticket = ask(question, answer);
        unless(() -> !questions.containsKey(ticket));
    }

    /** Ends the kernel of now if, after the patience, it has not done what it should. */
    void unless(java.util.function.BooleanSupplier done) {
        Optional<KernelProcess> asked = current;
        conductor.later(options.patience(), () -> {
            if (current.isPresent() && current.equals(asked) && !done.getAsBoolean()) {
                failedStarts++;
                String why = "it gave no answer for " + options.patience().toMillis() + " ms";
                lose(why + " and was ended", new Failure.KernelDied(why));
                start();
            }
        });
    }

    void start() {
        if (current.isPresent() || conductor.isClosed()) {
            return;
        }
        if (failedStarts >= MOST_STARTS) {
            giveUp();
            return;
        }
        if (spare.isPresent()) {
            current = spare;
            spare = Optional.empty();
            FromKernel.Ready said = ready.get(current.get());
            if (said != null) {
                nowReady(current.get(), said);
            } else {
                board.kernelStands(new KernelState.Starting());
            }
            return;
        }
        board.kernelStands(new KernelState.Starting());
        try {
            current = Optional.of(new KernelProcess(options, this));
        } catch (IOException e) {
            failedStarts = MOST_STARTS;
            board.kernelStands(new KernelState.Gone("it can't be started: " + e.getMessage(), false));
            giveUp();
        }
    }

    private void nowReady(KernelProcess kernel, FromKernel.Ready said) {
        board.kernelStands(new KernelState.Ready(kernel.pid(), said.broken()));
        if (options.spare()) {
            conductor.later(SPARE_DELAY, this::startSpare);
        }
    }

    private void startSpare() {
        if (spare.isEmpty() && current.isPresent() && failedStarts == 0) {
            try {
                spare = Optional.of(new KernelProcess(options, this));
            } catch (IOException e) {
                spare = Optional.empty(); // A stop takes longer then, and that is all.
            }
        }
    }

    private void giveUp() {
        forgetQuestions();
        watch.givenUp(board.kernel() instanceof KernelState.Gone gone ? gone.why() : "it could not be started");
    }

    private void forgetQuestions() {
        List<Consumer<Optional<FromKernel>>> open = List.copyOf(questions.values());
        questions.clear();
        open.forEach(a -> a.accept(Optional.empty()));
    }

    /** Ends the kernel, if one runs. */
    void lose(String why, Failure failure) {
        if (current.isPresent()) {
            KernelProcess old = current.get();
            current = Optional.empty();
            ready.remove(old);
            old.kill();
            afterLoss(failure, why);
        }
    }

    private void afterLoss(Failure failure, String why) {
        board.kernelStands(new KernelState.Gone(why, failure instanceof Failure.Stopped));
        watch.lost(failure, why);
        forgetQuestions();
    }

    void close() {
        if (!ready.isEmpty()) {
            KernelProcess.rehearse(options);
        }
        current.ifPresent(KernelProcess::kill);
        spare.ifPresent(KernelProcess::kill);
        current = Optional.empty();
        spare = Optional.empty();
        forgetQuestions();
    }

    // --- What kernels say, on threads of theirs ---

    @Override
    public void said(KernelProcess from, FromKernel message) {
        if (message instanceof FromKernel.Sketched sketched) {
            if (current.equals(Optional.of(from)) && !conductor.isClosed()) {
                watch.sketched(sketched);
            }
            return;
        }
        conductor.act(() -> {
            if (message instanceof FromKernel.Ready said) {
                ready.put(from, said);
            }
            if (current.equals(Optional.of(from))) {
                if (message instanceof FromKernel.Ready said) {
                    nowReady(from, said);
                } else {
                    watch.heard(message);
                }
            }
        });
    }

    @Override
    public void delivered(KernelProcess from, Channel.Delivery delivery) {
        conductor.act(() -> {
            if (current.equals(Optional.of(from))) {
                watch.delivered(delivery);
            }
        });
    }

    void answer(long ticket, FromKernel message) {
        Consumer<Optional<FromKernel>> waiting = questions.remove(ticket);
        if (waiting != null) {
            waiting.accept(Optional.of(message));
        }
    }

    @Override
    public void gone(KernelProcess from, int code, String lastWords) {
        conductor.act(() -> {
            ready.remove(from);
            if (spare.equals(Optional.of(from))) {
                spare = Optional.empty();
            }
            if (!current.equals(Optional.of(from))) {
                return;
            }
            current = Optional.empty();
            boolean atWork = watch.atWork();
            failedStarts += atWork ? 0 : 1;
            String how = how(code, lastWords);
            boolean exited = atWork && code >= 0 && code < 128 && code != ToKernel.LOST && code != ToKernel.NO_MEMORY;
            Failure failure = exited ? new Failure.ExitedKernel(code)
                    : code == ToKernel.NO_MEMORY ? new Failure.OutOfMemory(options.heapMegabytes()) : new Failure.KernelDied(how);
            afterLoss(failure, exited ? "a cell ended it with System.exit(" + code + ")" : how);
            start();
        });
    }

    /** True while a kernel that ends before doing any work is to be replaced. */
    boolean mayStartAgain() {
        return failedStarts < MOST_STARTS;
    }

    private static String how(int code, String lastWords) {
        String end = code > 128 ? "it was ended by signal " + (code - 128) : "it ended with code " + code;
        return lastWords.isBlank() ? end : end + " (" + String.join(": ", lastWords.lines().limit(2).toList()) + ")";
    }
}
