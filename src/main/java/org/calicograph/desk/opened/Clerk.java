package org.calicograph.desk.opened;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Reads and writes files, one thing after another, away from the window's thread, so that no disk ever holds up the hand. */
public final class Clerk implements AutoCloseable {

    private final Consumer<Runnable> back;
    private final ExecutorService desk = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "calicograph clerk");
        thread.setDaemon(true);
        return thread;
    });

    /** @param back brings what is to be told to the window's thread */
    public Clerk(Consumer<Runnable> back) {
        this.back = back;
    }

    /**
     * Does this when what came before is done.
     *
     * @param done    told on the window's thread what it gave
     * @param trouble told there what went wrong instead
     */
    public <T> void ask(Callable<T> work, Consumer<T> done, Consumer<Exception> trouble) {
        desk.execute(() -> {
            try {
                T given = work.call();
                back.accept(() -> done.accept(given));
            } catch (Exception e) {
                back.accept(() -> trouble.accept(e));
            }
        });
    }

    /** Waits until all that was asked for is done, ten seconds at most. */
    @Override
    public void close() {
        desk.shutdown();
        try {
            desk.awaitTermination(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
