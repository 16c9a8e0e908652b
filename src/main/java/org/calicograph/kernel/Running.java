package org.calicograph.kernel;

import java.lang.reflect.Method;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * The stretch in which a cell's own code runs, and the way to stop it from another thread: by
 * interrupting, and where Java still has it (before 20) by {@code Thread.stop}, again and again.
 * Outside that stretch a stop waits for the next one to begin.
 */
final class Running {

    /** Thrown in place of running code that has been stopped beforehand. */
    static final class StoppedBefore extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private static final Optional<Method> STOP = stopMethod();

    private final Object lock = new Object();
    private Optional<Thread> inside = Optional.empty();
    private boolean stopping;

    private static Optional<Method> stopMethod() {
        if (Runtime.version().feature() >= 20) {
            return Optional.empty();
        }
        try {
            return Optional.of(Thread.class.getMethod("stop"));
        } catch (NoSuchMethodException e) {
            return Optional.empty();
        }
    }

    /** A new task has arrived: an older stop no longer counts. */
    void forgetStop() {
        synchronized (lock) {
            stopping = false;
        }
    }

    boolean isStopping() {
        synchronized (lock) {
            return stopping;
        }
    }

    <T> T run(Callable<T> code) throws Exception {
        synchronized (lock) {
            if (stopping) {
                throw new StoppedBefore();
            }
            inside = Optional.of(Thread.currentThread());
        }
        try {
            return code.call();
        } finally {
            leave();
        }
    }

    private void leave() {
        while (true) {
            try {
                synchronized (lock) {
                    inside = Optional.empty();
                }
                Thread.interrupted();
                return;
            } catch (Throwable late) {
                // A stop that came on the way out; the loop leaves all the same.
            }
        }
    }

    /** Begins to stop what runs. Returns at once. */
    void stop() {
        synchronized (lock) {
            stopping = true;
            inside.ifPresent(Thread::interrupt);
        }
        Thread insisting = new Thread(this::insist, "stop");
        insisting.setDaemon(true);
        insisting.start();
    }

    private void insist() {
        for (int i = 0; i < 60; i++) {
            try {
                Thread.sleep(i == 0 ? 100 : 25);
            } catch (InterruptedException e) {
                return;
            }
            synchronized (lock) {
                if (!stopping || inside.isEmpty()) {
                    return;
                }
                try {
                    inside.get().interrupt();
                    if (STOP.isPresent()) {
                        STOP.get().invoke(inside.get());
                    }
                } catch (ReflectiveOperationException e) {
                    return; // The session ends the process before long.
                }
            }
        }
    }
}
