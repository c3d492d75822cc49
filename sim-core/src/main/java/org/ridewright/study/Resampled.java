package org.ridewright.study;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.ridewright.math.Quantiles;

/**
 * Sums over units that come one by one, and the same over resampled units, from which the confidence of whatever is worked out of the sums
 * follows: a bootstrap in which each resample counts each unit Poisson(1) times, so that no unit has to be kept.
 *
 * <p>Source: Hanley and MacGibbon (2006), after Efron (1979), from memory.
 */
final class Resampled {
    private static final int RESAMPLES = 400;

    private final double[] sums;
    private final double[][] resampled;
    private final long seed;

    Resampled(int terms, long seed) {
        sums = new double[terms];
        resampled = new double[RESAMPLES][terms];
        this.seed = seed;
    }

    /** @param terms of unit number {@code unit}; not modified */
    void add(long unit, double[] terms) {
        add(sums, terms, 1);
        for (int r = 0; r < RESAMPLES; r++) {
            int times = poisson(Mix.uniform(seed, unit, r, 6));
            if (times > 0) {
                add(resampled[r], terms, times);
            }
        }
    }

    private static void add(double[] sums, double[] terms, int times) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += times * terms[i];
        }
    }

    /** Number of events where one is expected, at a share of the distribution. */
    private static int poisson(double share) {
        double probability = Math.exp(-1);
        double below = probability;
        int count = 0;
        while (share > below && count < 20) {
            count++;
            probability /= count;
            below += probability;
        }
        return count;
    }

    /** A number worked out of the sums, with its 90 % interval. */
    Estimate estimate(ToDoubleFunction<double[]> of) {
        double[] all = Quantiles.sorted(Arrays.stream(resampled).mapToDouble(of).toArray());
        double value = of.applyAsDouble(sums);
        return new Estimate(value, Quantiles.low(all), Quantiles.high(all));
    }
}
