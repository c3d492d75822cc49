package org.ridewright.study;

/**
 * A part of a study's runs: every {@code of}-th, beginning with number {@code number} − 1.
 *
 * @param number from 1
 * @param of how many parts there are
 */
public record Part(int number, int of) {
    /** All runs. */
    public static final Part WHOLE = new Part(1, 1);

    public Part {
        if (number < 1 || of < 1 || number > of) {
            throw new IllegalArgumentException("a part is 1/n to n/n, got " + number + "/" + of);
        }
    }

    /** Whether it is all of it. */
    public boolean isWhole() {
        return of == 1;
    }

    /** How many of {@code runs} belong to it. */
    long size(long runs) {
        return Math.max(0, (runs - number) / of + 1);
    }

    /** Number of its {@code i}-th run, from 0. */
    long run(long i) {
        return number - 1 + i * of;
    }
}
