package org.ridewright.calibration;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Where a datum that was kept back may lie: predictions of vehicles drawn from what is known after the fit, each blurred by the datum's own
 * uncertainty. Unlike a straight line through the estimate it holds where frequencies change places or a bounce gains a cycle.
 *
 * @param predictions of the vehicles drawn (unit of the datum)
 * @param uncertainty of the datum
 */
record Predictive(double[] predictions, double uncertainty) {
    /** Vehicles drawn: the ends of a 90 % interval are then uncertain by a tenth of its width. */
    static final int DRAWS = 96;

    private static final double FURTHEST_CHANCE = 1e-9;
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Residuals (f − y)/σ of vehicles drawn from the posterior, evenly by Sobol's sequence; those that cannot be are left out. */
    static double[][] draws(FitProblem problem, Posterior posterior) {
        int n = posterior.size();
        RealMatrix root = new CholeskyDecomposition(posterior.matrix(), 1e-8, 1e-16).getL();
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(n);
        sobol.skipTo(1);
        double[][] points = new double[DRAWS][];
        for (int k = 0; k < DRAWS; k++) {
            double[] u = Arrays.stream(sobol.nextVector())
                    .map(NORMAL::inverseCumulativeProbability)
                    .toArray();
            double[] z = root.operate(u);
            for (int j = 0; j < n; j++) {
                z[j] += posterior.z(j);
            }
            points[k] = z;
        }
        return IntStream.range(0, DRAWS)
                .parallel()
                .mapToObj(k -> problem.residuals(points[k]))
                .filter(Objects::nonNull)
                .toArray(double[][]::new);
    }

    /** @param wider factor on the datum's uncertainty, for what else is uncertain */
    static Predictive of(double[][] draws, int datum, Datum what, double wider) {
        return new Predictive(
                Arrays.stream(draws)
                        .mapToDouble(r -> what.observed() + what.uncertainty() * r[datum])
                        .filter(Double::isFinite)
                        .toArray(),
                wider * what.uncertainty());
    }

    /** Chance that the measurement is less. */
    double chanceBelow(double value) {
        return Arrays.stream(predictions)
                .map(f -> NORMAL.cumulativeProbability((value - f) / uncertainty))
                .average()
                .orElse(Double.NaN);
    }

    /** Value below which the measurement lies with a chance. */
    double quantile(double chance) {
        double low = Arrays.stream(predictions).min().orElse(Double.NaN) - 8 * uncertainty;
        double high = Arrays.stream(predictions).max().orElse(Double.NaN) + 8 * uncertainty;
        while (high - low > 1e-9 * (Math.abs(high) + Math.abs(low)) + 1e-6 * uncertainty) {
            double middle = (low + high) / 2;
            if (chanceBelow(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** By how many standard deviations of a normal value a measurement as far out would lie off. */
    double normalised(double observed) {
        double chance = Math.max(FURTHEST_CHANCE, Math.min(1 - FURTHEST_CHANCE, chanceBelow(observed)));
        return NORMAL.inverseCumulativeProbability(chance);
    }

    /** Standard deviation of the predictions. */
    double deviation() {
        double mean = Arrays.stream(predictions).average().orElse(Double.NaN);
        return Math.sqrt(Arrays.stream(predictions)
                .map(f -> (f - mean) * (f - mean))
                .average()
                .orElse(Double.NaN));
    }
}
