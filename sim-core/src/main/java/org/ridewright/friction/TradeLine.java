package org.ridewright.friction;

import java.util.Arrays;

/**
 * One criterion on one road at one speed, against friction.
 *
 * @param road name
 * @param speed (m/s)
 * @param factors of friction, rising from 0
 * @param values by draw, then by factor; not to be modified
 */
public record TradeLine(Criterion criterion, String road, double speed, double[] factors, double[][] values) {
    /** Share of further draws that may lie beyond each end of a spread. */
    private static final double BEYOND = 0.05;

    /**
     * A number of every draw: its median and an interval in which one further draw would lie with a probability of nine tenths, whatever the
     * distribution. Of n draws in order one more lies between the k-th from below and the k-th from above with a probability of {@code (n + 1 − 2k)/(n + 1)}; k is
     * the greatest for which that is 0.9 or more, and 1 of fewer than 19 draws, whose extremes hold less.
     *
     * <p>Source: order statistics of exchangeable draws, as in distribution-free prediction intervals (S. S. Wilks, 1941; from memory).
     */
    public record Spread(double low, double median, double high) {
        static Spread of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int n = sorted.length;
            int k = leftOut(n);
            return new Spread(sorted[k], (sorted[(n - 1) / 2] + sorted[n / 2]) / 2, sorted[n - 1 - k]);
        }

        /** How many draws at each end lie beyond. */
        private static int leftOut(int draws) {
            return Math.max(1, (int) Math.floor(BEYOND * (draws + 1) + 1e-9)) - 1;
        }

        /** Probability that one further draw lies within. */
        public static double coverage(int draws) {
            return (draws - 1.0 - 2 * leftOut(draws)) / (draws + 1);
        }
    }

    /** Values at a factor over all draws. */
    public Spread at(int factor) {
        return Spread.of(Arrays.stream(values).mapToDouble(row -> row[factor]).toArray());
    }

    /** Place of the friction as written among the factors. */
    public int written() {
        return Arrays.binarySearch(factors, 1.0);
    }

    /** Whether every value is a number. */
    public boolean isWhole() {
        return Arrays.stream(values).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite);
    }
}
