package org.ridewright.friction;

import java.util.Arrays;
import org.ridewright.math.Quantiles;

/**
 * One criterion on one road at one speed, against friction.
 *
 * @param road name
 * @param speed (m/s)
 * @param factors of friction, rising from 0
 * @param values by draw, then by factor; not to be modified
 */
public record TradeLine(Criterion criterion, String road, double speed, double[] factors, double[][] values) {
    /**
     * A number of every draw: its median and an interval in which one further draw would lie with a probability of nine tenths ({@link Quantiles}); of fewer
     * than 19 draws, whose extremes hold less, the range of all.
     */
    public record Spread(double low, double median, double high) {
        static Spread of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Spread(Quantiles.low(sorted), Quantiles.median(sorted), Quantiles.high(sorted));
        }

        /** Probability that one further draw lies within. */
        public static double coverage(int draws) {
            return Quantiles.coverage(draws);
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
