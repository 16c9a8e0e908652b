package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import jdk.jshell.spi.SPIResolutionException;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Frame;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** What went wrong, in the words of {@link Failure}, with lines of the cell. */
final class Faults {

    private static final int MOST_FRAMES = 40;
    private static final int MOST_CAUSES = 8;

    private final Origins origins;
    private final Function<String, String> texts;
    private final int heapMegabytes;

    /** @param texts the text of a cell by its id */
    Faults(Origins origins, Function<String, String> texts, int heapMegabytes) {
        this.origins = origins;
        this.texts = texts;
        this.heapMegabytes = heapMegabytes;
    }

    /** What was thrown while the cell was at work. */
    Failure of(String cell, Throwable thrown) {
        Throwable t = thrown;
        Optional<String> loading = Optional.empty();
        while (t instanceof ExceptionInInitializerError && t.getCause() != null) {
            t = t.getCause();
            loading = loading.or(() -> routine(thrown));
        }
        if (t instanceof OutOfMemoryError) {
            return new Failure.OutOfMemory(heapMegabytes);
        }
        if (t instanceof Running.StoppedBefore || t instanceof ThreadDeath) {
            return new Failure.Stopped();
        }
        if (t instanceof StackOverflowError) {
            List<Frame> frames = frames(t);
            return new Failure.TooDeep(place(cell, t), frames.subList(0, Math.min(8, frames.size())));
        }
        if (t instanceof DialBoard.Refused refused) {
            return new Failure.DialRefused(refused.dial, refused.getMessage());
        }
        if (t instanceof SPIResolutionException) {
            return new Failure.DoesNotCompile(List.of(new Problem(new Place(1, 1), new Place(1, 1),
                    "This cell calls something that uses a name which is declared nowhere.")));
        }
        if (loading.isPresent()) {
            return new Failure.Threw(kind(t), loading.get() + " can't be used, since it throws as it is loaded: " + said(t), place(cell, thrown), frames(t), List.of());
        }
        return threw(cell, t);
    }

    /** The file of the routine whose class could not be loaded, if it is one of the stdlib. */
    private static Optional<String> routine(Throwable thrown) {
        for (Throwable t = thrown; t != null; t = t.getCause()) {
            for (StackTraceElement e : t.getStackTrace()) {
                if (e.getClassName().startsWith(Stdlib.PACKAGE + ".") && e.getMethodName().equals("<clinit>") && e.getFileName() != null) {
                    return Optional.of(e.getFileName());
                }
            }
        }
        return Optional.empty();
    }

    Failure.Threw threw(String cell, Throwable t) {
        List<String> causes = new ArrayList<>();
        Set<Throwable> seen = new LinkedHashSet<>(List.of(t));
        for (Throwable c = cause(t); c != null && causes.size() < MOST_CAUSES && seen.add(c); c = cause(c)) {
            String said = said(c);
            causes.add(said.isBlank() ? kind(c) : kind(c) + ": " + said);
        }
        return new Failure.Threw(kind(t), said(t), place(cell, t), frames(t), causes);
    }

    private static Throwable cause(Throwable t) {
        try {
            return t.getCause();
        } catch (RuntimeException e) {
            return null;
        }
    }

    private static String kind(Throwable t) {
        String name = t.getClass().getSimpleName();
        return name.isEmpty() ? "An exception without a name" : name;
    }

    /** An exception of a cell's own may throw from its getMessage too. */
    private static String said(Throwable t) {
        try {
            String message = t.getMessage();
            String text = message == null ? "" : message;
            // Letters that steer a terminal are no words.
            String plain = text.replaceAll("[[\\p{Cntrl}\\u061c\\u200e\\u200f\\u2028-\\u202e\\u2066-\\u2069]&&[^\n\t]]", "\uFFFD");
            return plain.length() > 4000 ? plain.substring(0, 4000) + "…" : plain;
        } catch (Throwable e) {
            return "its message can't be read (" + kind(e) + ")";
        }
    }

    private List<Frame> frames(Throwable t) {
        List<Frame> frames = new ArrayList<>();
        for (StackTraceElement e : t.getStackTrace()) {
            if (frames.size() == MOST_FRAMES) {
                break;
            }
            Optional<Piece> piece = origins.piece(e.getClassName());
            if (piece.isPresent() && e.getLineNumber() > 0) {
                String cell = piece.get().cell();
                String method = e.getMethodName().equals("do_it$") || e.getMethodName().startsWith("lambda$") ? "" : e.getMethodName();
                origins.place(e.getClassName(), e.getLineNumber(), texts.apply(cell))
                        .ifPresent(p -> frames.add(new Frame(cell, true, p.line(), method)));
            } else if (e.getClassName().startsWith(Stdlib.PACKAGE + ".") && e.getFileName() != null && e.getLineNumber() > 0) {
                frames.add(new Frame(e.getFileName(), false, e.getLineNumber(), e.getMethodName()));
            }
        }
        return frames;
    }

    /** The innermost place in the cell itself; a place in another cell's method does not count. */
    private Optional<Place> place(String cell, Throwable t) {
        for (StackTraceElement e : t.getStackTrace()) {
            if (e.getLineNumber() > 0 && origins.piece(e.getClassName()).filter(p -> p.cell().equals(cell)).isPresent()) {
                return origins.place(e.getClassName(), e.getLineNumber(), texts.apply(cell));
            }
        }
        return Optional.empty();
    }
}
