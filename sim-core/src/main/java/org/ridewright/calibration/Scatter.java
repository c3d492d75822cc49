package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How samples of a record scatter about a model: with a standard deviation, each like the one before to some degree (an autoregressive
 * process of first order, {@code r_i = φ r_{i−1} + e_i}). Samples that are alike count for fewer: {@code n (1 − φ)/(1 + φ)} independent ones.
 *
 * <p>Source: Box, Jenkins and Reinsel, Time Series Analysis, 3.2 (from memory).
 *
 * @param deviation s of r (unit of the record), > 0
 * @param likeness φ, 0 to 1
 */
record Scatter(double deviation, double likeness) {
    private static final double MOST_LIKE = 0.95;

    /** Of residuals. */
    static Scatter of(double[] residuals, double least) {
        double sum = 0;
        double lagged = 0;
        for (int i = 0; i < residuals.length; i++) {
            sum += residuals[i] * residuals[i];
            lagged += i > 0 ? residuals[i] * residuals[i - 1] : 0;
        }
        double deviation = Math.sqrt(sum / residuals.length);
        double likeness = sum > 0 ? lagged / sum : 0;
        return new Scatter(Math.max(least, deviation), Math.max(0, Math.min(MOST_LIKE, likeness)));
    }

    /** Independent samples that as many as these are worth. */
    double worth(int samples) {
        return samples * (1 - likeness) / (1 + likeness);
    }

    /** Residuals as independent ones of standard deviation 1. */
    double[] whitened(double[] residuals) {
        double innovation = Math.sqrt(1 - likeness * likeness);
        double[] white = new double[residuals.length];
        for (int i = 0; i < white.length; i++) {
            white[i] = i == 0
                    ? residuals[0] / deviation
                    : (residuals[i] - likeness * residuals[i - 1]) / (deviation * innovation);
        }
        return white;
    }

    /** Whitened residuals without what shapes can explain: the rest after their least-squares fit. */
    double[] whitenedWithout(double[] residuals, List<double[]> shapes) {
        double[] rest = whitened(residuals);
        List<double[]> basis = new ArrayList<>();
        for (double[] shape : shapes) {
            double[] direction = whitened(shape);
            double before = norm(direction);
            basis.forEach(b -> subtract(direction, b));
            double length = norm(direction);
            // a shape that the others make up already adds nothing
            if (length > 1e-8 * before) {
                basis.add(Arrays.stream(direction).map(v -> v / length).toArray());
            }
        }
        basis.forEach(b -> subtract(rest, b));
        return rest;
    }

    private static void subtract(double[] vector, double[] unit) {
        double along = 0;
        for (int i = 0; i < vector.length; i++) {
            along += vector[i] * unit[i];
        }
        for (int i = 0; i < vector.length; i++) {
            vector[i] -= along * unit[i];
        }
    }

    private static double norm(double[] vector) {
        return Math.sqrt(Arrays.stream(vector).map(v -> v * v).sum());
    }
}
