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
    private static final double LOW = 0.05;

    /** A number of every draw: 5 %, 50 % and 95 % quantile. */
    public record Spread(double low, double median, double high) {
        static Spread of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Spread(quantile(sorted, LOW), quantile(sorted, 0.5), quantile(sorted, 1 - LOW));
        }

        /** Hyndman and Fan 1996, definition 7. */
        private static double quantile(double[] sorted, double p) {
            double place = p * (sorted.length - 1);
            int below = (int) place;
            int above = Math.min(below + 1, sorted.length - 1);
            return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
        }

        /** Whether no draw of the middle nine tenths is elsewhere. */
        public boolean isSharp() {
            return low == high;
        }
    }

    /** Values at a factor over all draws. */
    public Spread at(int factor) {
        return Spread.of(Arrays.stream(values).mapToDouble(row -> row[factor]).toArray());
    }

    /** The same over the value with the friction as written, draw by draw. */
    public Spread relative(int factor) {
        int written = written();
        return Spread.of(Arrays.stream(values)
                .mapToDouble(row -> row[factor] / row[written])
                .toArray());
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
