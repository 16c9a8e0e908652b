package org.calicograph.desk;

import java.nio.file.Path;

/** A desk in a process of its own, which types a line, waits until it is kept safe, says so, and stays open until it is killed. */
final class DoomedDesk {

    static final String TYPED = "Typed just before the end.";

    private DoomedDesk() { }

    public static void main(String[] arguments) throws Exception {
        Path file = Path.of(arguments[1]);
        Evening evening = Evening.with(Path.of(arguments[0]), file);
        Evening.onFx(() -> {
            evening.window.opened().setText("p1", TYPED);
            return null;
        });
        evening.until("it is kept safe", () -> !Evening.kept(file).isEmpty());
        System.out.println("kept");
        Thread.currentThread().join();
    }
}
