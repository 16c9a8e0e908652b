package org.calicograph.wire;

import java.util.List;
import java.util.Optional;

/** Why a cell has no value. Every kind says in {@link #message()} what happened and what would repair it. */
public sealed interface Failure {

    /** For the reader: the thing, the value and the repair, in a sentence or two. */
    String message();

    /** Where in the failing cell, as far as it is known. */
    default Optional<Place> at() {
        return Optional.empty();
    }

    /** The compiler objects; there is at least one problem, in the order of the text. */
    record DoesNotCompile(List<Problem> problems) implements Failure {
        public DoesNotCompile {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a cell that does not compile has a problem; name at least one");
            }
        }

        @Override
        public String message() {
            String rest = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
            return problems.get(0).message() + rest;
        }

        @Override
        public Optional<Place> at() {
            return Optional.of(problems.get(0).from());
        }
    }

    /**
     * The cell's code threw.
     *
     * @param kind   the exception's class, without its package
     * @param said   its message; may be empty
     * @param place  the line of the cell that was at work, if one was
     * @param frames the way there, innermost first; cells and stdlib files only
     * @param causes what caused it, and what caused that, as {@code Kind: message}
     */
    record Threw(String kind, String said, Optional<Place> place, List<Frame> frames, List<String> causes) implements Failure {
        public Threw {
            frames = List.copyOf(frames);
            causes = List.copyOf(causes);
        }

        @Override
        public String message() {
            // The house's own refusals are sentences already; other exceptions need their name.
            boolean sentence = (kind.equals("IllegalArgumentException") || kind.equals("DesignException")) && !said.isBlank();
            return sentence ? said : said.isBlank() ? kind : kind + ": " + said;
        }

        @Override
        public Optional<Place> at() {
            return place;
        }
    }

    /** The value was computed, but could not be shown: its {@code show()} or {@code toString()} threw. */
    record ShowFailed(String type, Threw thrown) implements Failure {
        @Override
        public String message() {
            return "The value of this cell, a " + type + ", can't be shown: " + thrown.message();
        }

        @Override
        public Optional<Place> at() {
            return thrown.at();
        }
    }

    record TimedOut(long limitMillis) implements Failure {
        @Override
        public String message() {
            String limit = limitMillis % 1000 == 0 ? limitMillis / 1000 + " s" : limitMillis + " ms";
            return "This cell ran past its time limit of " + limit + " and was stopped. Let it do less, or raise the limit.";
        }
    }

    record Stopped() implements Failure {
        @Override
        public String message() {
            return "Stopped on request.";
        }
    }

    record OutOfMemory(int heapMegabytes) implements Failure {
        @Override
        public String message() {
            return "This needed more than " + heapMegabytes + " MB of memory. Let it hold less, or give it more with --heap.";
        }
    }

    record TooDeep(Optional<Place> place, List<Frame> frames) implements Failure {
        public TooDeep {
            frames = List.copyOf(frames);
        }

        @Override
        public String message() {
            return "Calls within calls went too deep. Look for a method that calls itself without an end.";
        }

        @Override
        public Optional<Place> at() {
            return place;
        }
    }

    record ExitedKernel(int code) implements Failure {
        @Override
        public String message() {
            return "This ended the drawing with System.exit(" + code + "). Take the call out; nothing else is lost.";
        }
    }

    /** @param how what is known of the end: a signal, a crash, silence */
    record KernelDied(String how) implements Failure {
        @Override
        public String message() {
            return "The drawing ended by itself while this was at work: " + how + ". Draw it again.";
        }
    }

    /** Cells that this one needs have no value. */
    record Depends(List<String> cells) implements Failure {
        public Depends {
            cells = List.copyOf(cells);
        }

        @Override
        public String message() {
            return cells.size() == 1 ? "This cell needs cell " + cells.get(0) + ", which failed. Repair that one first."
                    : "This cell needs cells " + String.join(", ", cells) + ", which failed. Repair those first.";
        }
    }

    /** Several cells, or one cell several times, declare one name. */
    record DeclaredTwice(String name, List<String> cells) implements Failure {
        public DeclaredTwice {
            cells = List.copyOf(cells);
        }

        @Override
        public String message() {
            return cells.stream().distinct().count() == 1
                    ? "'" + name + "' is declared twice in this cell. Give one of the two another name."
                    : "'" + name + "' is declared in cells " + String.join(" and ", cells) + ". Give it another name in one of them.";
        }
    }

    /** Cells that need one another in a circle. */
    record InCircle(List<String> cells, List<String> names) implements Failure {
        public InCircle {
            cells = List.copyOf(cells);
            names = List.copyOf(names);
        }

        @Override
        public String message() {
            return "Cells " + String.join(", ", cells) + " need one another in a circle through " + String.join(", ", names)
                    + ". Put what they share into one cell.";
        }
    }

    /** A dial's saved or given value is none of those it can take. */
    record DialRefused(String dial, String why) implements Failure {
        @Override
        public String message() {
            return why;
        }
    }
}
