package org.ridewright.why;

import java.util.stream.IntStream;

/** Which choices of k swaps are ridden. */
public final class Choices {
    /** Most swaps of which every choice is ridden. */
    public static final int MOST_WHOLE = 7;
    /** Most swaps at all. */
    public static final int MOST = 12;

    private Choices() {}

    /** Every choice, 2^k of them. */
    static int[] all(int k) {
        return IntStream.range(0, 1 << k).toArray();
    }

    /** None, each alone, each pair, and all together. */
    static int[] pairs(int k) {
        return IntStream.range(0, 1 << k)
                .filter(s -> Integer.bitCount(s) <= 2 || Integer.bitCount(s) == k)
                .toArray();
    }
}
