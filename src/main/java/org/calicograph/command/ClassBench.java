package org.calicograph.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import org.calicograph.notebook.NotebookException;

/** Draws many notebooks of one folder side by side, each with a kernel of its own or in one that an earlier notebook has left clean. */
final class ClassBench implements AutoCloseable {

    private final DrawingOptions options;
    private final Deque<Drawing> idle = new ArrayDeque<>();
    private boolean closed;

    ClassBench(DrawingOptions options) {
        this.options = options;
    }

    /** @throws NotebookException if the file can't be read */
    <T> T draw(Path file, Function<Drawing, T> work) throws NotebookException {
        Drawing drawing = taken(file);
        try {
            return work.apply(drawing);
        } finally {
            leave(drawing);
        }
    }

    private Drawing taken(Path file) throws NotebookException {
        Drawing last;
        synchronized (this) {
            last = idle.poll();
        }
        if (last != null) {
            Optional<Drawing> next = last.next(file);
            if (next.isPresent()) {
                return next.get();
            }
            last.close();
        }
        return Drawing.open(file, options, new PrintWriter(new StringWriter()));
    }

    private synchronized void leave(Drawing drawing) {
        if (closed) {
            drawing.close();
        } else {
            idle.push(drawing);
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        idle.forEach(Drawing::close);
        idle.clear();
    }
}
