package org.ridewright.study;

/**
 * Numbers of chance that are looked up rather than drawn one after another, so that a run's do not depend on other runs.
 *
 * <p>Source: the finalizer of SplitMix64 (Steele, Lea, Flood 2014), constants from memory.
 */
final class Mix {
    private static final double UNIT = 0x1.0p-53;

    private Mix() {}

    static long bits(long... keys) {
        long h = 0x9E3779B97F4A7C15L;
        for (long key : keys) {
            h = finish(h + 0x9E3779B97F4A7C15L * (key + 1));
        }
        return h;
    }

    private static long finish(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }

    /** Evenly from 0 to 1, both left out. */
    static double uniform(long... keys) {
        return ((bits(keys) >>> 11) + 0.5) * UNIT;
    }

    /** A whole number from 0 to {@code bound} − 1. */
    static int below(int bound, long... keys) {
        return (int) Math.floorMod(bits(keys) >>> 1, (long) bound);
    }
}
