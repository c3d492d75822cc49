package org.ridewright.uncertainty;

import java.util.Arrays;

/**
 * Where nine tenths of the drawn values lie: 5 %, 50 % and 95 % quantile.
 *
 * <p>Source: Hyndman and Fan 1996, definition 7 of sample quantiles.
 */
public record Interval(double low, double median, double high) {
    private static final double TAIL = 0.05;

    /** Of values in any order, at least one; sorted in place. */
    public static Interval of(double[] values) {
        Arrays.sort(values);
        return new Interval(quantile(values, TAIL), quantile(values, 0.5), quantile(values, 1 - TAIL));
    }

    private static double quantile(double[] sorted, double p) {
        double place = p * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
