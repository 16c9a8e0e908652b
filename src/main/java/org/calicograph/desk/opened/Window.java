package org.calicograph.desk.opened;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A window of the desk, told from others by its process: the number, which the system gives to another process
 * sooner or later, and the moment when the process began.
 *
 * @param pid   the number of the process
 * @param began in milliseconds since 1970; 0 where the system doesn't tell
 */
record Window(long pid, long began) {

    private static final Pattern FORM = Pattern.compile("(\\d{1,18})-(\\d{1,18})");

    static Window here() {
        return of(ProcessHandle.current());
    }

    private static Window of(ProcessHandle process) {
        return new Window(process.pid(), process.info().startInstant().map(Instant::toEpochMilli).orElse(0L));
    }

    /** As {@link #toString} writes it; empty for anything else. */
    static Optional<Window> read(String text) {
        Matcher m = FORM.matcher(text);
        return m.matches() ? Optional.of(new Window(Long.parseLong(m.group(1)), Long.parseLong(m.group(2)))) : Optional.empty();
    }

    /** True if its process goes on. */
    boolean isAlive() {
        return ProcessHandle.of(pid).map(p -> of(p).equals(this) || of(p).began == 0).orElse(false);
    }

    @Override
    public String toString() {
        return pid + "-" + began;
    }
}
