package org.ridewright.ringdown;

import java.util.Arrays;

/**
 * What the residuals of a fit say of the noise that made them: how large it is where, and for how long it remembers.
 *
 * <pre>
 *   σ_i²   mean of e_j²/(1 − h_j) about i, under a triangle that reaches one half cycle to either side; h_j the leverage of sample j
 *   ρ_l    autocorrelation of the autoregression, of the order with the least n ln v + 2·order, fitted to e_i/σ_i
 * </pre>
 *
 * <p>Size by place is needed because unsteady instants make noise in proportion to the slope of the motion, memory because of low passes and of
 * what the curve does not describe. An autoregression has few numbers, so that white noise stays white.
 *
 * <p>Source: leverage, MacKinnon and White (1985), their estimate of the second kind; Yule–Walker equations by Levinson's recursion; Akaike's
 * criterion (from memory).
 *
 * @param size σ_i at the samples that count, in their order (unit of the samples)
 * @param memory ρ_l, from ρ_0 = 1
 */
record ResidualNoise(double[] size, double[] memory) {
    private static final int HIGHEST_ORDER = 12;
    private static final double FORGOTTEN = 0.01;
    /** Mean square of the residuals over their size, about 1 but where the least size is greater than they are (our choice). */
    private static final double BELOW_LEAST = 0.25;

    private static final double STEADIEST = 0.98;

    /**
     * Of residuals at samples that may have gaps between them.
     *
     * @param residuals e, at the samples that count
     * @param places their numbers among all samples, rising
     * @param leverage h, as many
     * @param reach half width of the triangle (samples)
     * @param least least size, > 0 (unit of the samples)
     */
    static ResidualNoise of(double[] residuals, int[] places, double[] leverage, int reach, double least) {
        int n = residuals.length;
        double[] squares = new double[n];
        for (int i = 0; i < n; i++) {
            squares[i] = residuals[i] * residuals[i] / Math.max(0.1, 1 - leverage[i]);
        }
        double[] size = new double[n];
        int from = 0;
        for (int i = 0; i < n; i++) {
            while (places[i] - places[from] >= reach) {
                from++;
            }
            double sum = 0;
            double weights = 0;
            for (int j = from; j < n && places[j] - places[i] < reach; j++) {
                double weight = 1 - Math.abs(places[j] - places[i]) / (double) reach;
                sum += weight * squares[j];
                weights += weight;
            }
            size[i] = Math.max(least, Math.sqrt(sum / weights));
        }
        return new ResidualNoise(size, memory(residuals, places, size));
    }

    /** How many independent samples the residuals are worth. */
    double effective() {
        double sum = 1;
        for (int l = 1; l < memory.length; l++) {
            sum += 2 * memory[l];
        }
        return size.length / Math.max(1, sum);
    }

    private static double[] memory(double[] residuals, int[] places, double[] size) {
        int n = residuals.length;
        int most = Math.min(HIGHEST_ORDER, n / 10);
        double[] gamma = new double[most + 1];
        int[] pairs = new int[most + 1];
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n && places[j] - places[i] <= most; j++) {
                if (size[i] > 0 && size[j] > 0) {
                    gamma[places[j] - places[i]] += residuals[i] / size[i] * residuals[j] / size[j];
                    pairs[places[j] - places[i]]++;
                }
            }
        }
        for (int l = 0; l <= most; l++) {
            gamma[l] = pairs[l] > 0 ? gamma[l] / pairs[l] : 0;
        }
        // residuals well below the least noise are the search's, not the record's
        return gamma[0] > BELOW_LEAST ? correlations(autoregression(gamma, n), n) : new double[] {1};
    }

    /** Levinson's recursion; the coefficients a of {@code e_i = Σ a_k e_{i−k} + …} of the best order. */
    private static double[] autoregression(double[] gamma, int n) {
        double[] a = new double[0];
        double[] best = a;
        double variance = gamma[0];
        double least = n * Math.log(variance);
        for (int order = 1; order < gamma.length; order++) {
            double sum = gamma[order];
            for (int k = 1; k < order; k++) {
                sum -= a[k - 1] * gamma[order - k];
            }
            double reflection = Math.max(-STEADIEST, Math.min(STEADIEST, sum / variance));
            double[] next = Arrays.copyOf(a, order);
            next[order - 1] = reflection;
            for (int k = 1; k < order; k++) {
                next[k - 1] = a[k - 1] - reflection * a[order - k - 1];
            }
            a = next;
            variance *= 1 - reflection * reflection;
            double criterion = n * Math.log(variance) + 2 * order;
            if (criterion < least) {
                least = criterion;
                best = a;
            }
        }
        return best;
    }

    /** Autocorrelation of an autoregression, by the response to a single shock. */
    private static double[] correlations(double[] a, int n) {
        int length = Math.max(2, n);
        double[] shock = new double[length];
        shock[0] = 1;
        for (int i = 1; i < length; i++) {
            for (int k = 1; k <= Math.min(i, a.length); k++) {
                shock[i] += a[k - 1] * shock[i - k];
            }
        }
        double[] rho = new double[Math.max(1, n / 2)];
        int last = 0;
        for (int l = 0; l < rho.length; l++) {
            for (int i = 0; i + l < length; i++) {
                rho[l] += shock[i] * shock[i + l];
            }
            if (l > 0) {
                rho[l] /= rho[0];
                last = Math.abs(rho[l]) > FORGOTTEN ? l : last;
            }
            if (a.length == 0 || l - last > 2 * HIGHEST_ORDER) {
                break;
            }
        }
        rho[0] = 1;
        return Arrays.copyOf(rho, last + 1);
    }
}
