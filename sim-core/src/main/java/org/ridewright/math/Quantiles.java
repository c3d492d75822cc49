package org.ridewright.math;

import java.util.Arrays;

/**
 * Quantiles of a sample, and the interval that one further number of the same kind falls into with a probability of nine tenths.
 *
 * <p>The k-th of n numbers by size stands at the share {@code k/(n + 1)} of the distribution from which all come, since that is the mean of {@code F(x₍ₖ₎)}
 * whatever the distribution; between neighbours in proportion. An interval from 5 to 95 % so holds a further number 90 times in a hundred from n = 19 on;
 * of fewer there is no such interval, and the range of all of them, {@code (n − 1)/(n + 1)}, stands in its place.
 *
 * <p>Source: Hyndman and Fan (1996), definition 6.
 */
public final class Quantiles {
    /** Share of the distribution beyond each end of an interval. */
    public static final double TAIL = 0.05;

    /** Fewest numbers whose interval holds nine tenths. */
    public static final int FEWEST = 19;

    private Quantiles() {}

    /**
     * The value below which a share of the distribution lies.
     *
     * @param sorted ascending; the last may be infinite; not modified
     * @param share from 0 to 1
     * @return NaN if there are no numbers
     */
    public static double of(double[] sorted, double share) {
        int n = sorted.length;
        if (n == 0) {
            return Double.NaN;
        }
        double place = share * (n + 1);
        int below = (int) Math.floor(place);
        if (below < 1 || below >= n) {
            return sorted[below < 1 ? 0 : n - 1];
        }
        double from = sorted[below - 1];
        double to = sorted[below];
        double part = place - below;
        return part == 0 || from == to ? from : from + part * (to - from);
    }

    /** Lower end of the interval. */
    public static double low(double[] sorted) {
        return of(sorted, TAIL);
    }

    /** Middle of the sample. */
    public static double median(double[] sorted) {
        return of(sorted, 0.5);
    }

    /** Upper end of the interval. */
    public static double high(double[] sorted) {
        return of(sorted, 1 - TAIL);
    }

    /** Those that are finite, ascending. */
    public static double[] sorted(double[] values) {
        return Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    }

    /** Probability that a further number lies in the interval of n of them. */
    public static double coverage(long n) {
        return n < 1 ? 0 : Math.min(1 - 2 * TAIL, (n - 1.0) / (n + 1.0));
    }
}
