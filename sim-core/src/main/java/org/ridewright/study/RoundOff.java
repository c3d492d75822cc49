package org.ridewright.study;

/** What is the same but for round-off, to {@value #SHARE} of its size. */
public final class RoundOff {
    private static final double SHARE = 1e-9;

    private RoundOff() {}

    /** Whether two numbers are the same. */
    public static boolean isAlike(double a, double b) {
        return a == b || Math.abs(a - b) <= SHARE * Math.max(Math.abs(a), Math.abs(b));
    }

    /** By how much {@code b} is above {@code a}; nothing where they are the same. */
    static double difference(double a, double b) {
        return isAlike(a, b) ? 0 : b - a;
    }

    /** {@code b} over {@code a}, one where they are the same; not a number where {@code a} is not positive. */
    static double ratio(double a, double b) {
        if (!(a > 0)) {
            return Double.NaN;
        }
        return isAlike(a, b) ? 1 : b / a;
    }
}
