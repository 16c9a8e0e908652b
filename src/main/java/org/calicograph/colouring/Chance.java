package org.calicograph.colouring;

/** Numbers that look random and depend on a seed and a name alone (the finalizer of SplitMix64). */
final class Chance {

    private Chance() { }

    /** From 0 up to but not including 1. */
    static double of(long seed, String name) {
        long z = seed;
        for (int i = 0; i < name.length(); i++) {
            z = mixed(z * 31 + name.charAt(i));
        }
        return (mixed(z) >>> 11) * 0x1.0p-53;
    }

    private static long mixed(long seed) {
        long z = seed + 0x9E3779B97F4A7C15L;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}
