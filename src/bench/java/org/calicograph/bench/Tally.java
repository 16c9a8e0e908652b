package org.calicograph.bench;

/** Time for each thing done, printed once an iteration: a ratio that can be compared within one run. */
final class Tally {

    private final String thing;
    private long began;
    private long done;

    Tally(String thing) {
        this.thing = thing;
    }

    void begin() {
        began = System.nanoTime();
        done = 0;
    }

    void add(long more) {
        done += more;
    }

    void print() {
        System.out.printf("%.3f microseconds a %s; ", (System.nanoTime() - began) / 1e3 / Math.max(1, done), thing);
    }
}
