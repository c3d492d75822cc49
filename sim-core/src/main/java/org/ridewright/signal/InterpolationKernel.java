package org.ridewright.signal;

/**
 * Interpolation between samples by a windowed sinc, {@code φ(x) = sinc(πx) · I₀(β√(1 − (x/M)²))/I₀(β)} for |x| &lt; M.
 *
 * <p>M = 16 and β = 7.857 (Kaiser's rule for 80 dB). A sine below 0.42 of the sampling rate comes back within 2e-4 of its
 * amplitude. The weights are scaled to sum to 1, so a constant comes back exactly.
 *
 * <p>Source: J. F. Kaiser, "Nonrecursive digital filter design using the I₀-sinh window function", 1974 (from memory).
 */
final class InterpolationKernel {
    /** Samples used on each side, M. */
    static final int HALF_WIDTH = 16;

    /** Samples used in all. */
    static final int TAPS = 2 * HALF_WIDTH;

    private static final double BETA = 7.857;
    private static final double BESSEL_AT_BETA = besselI0(BETA);

    private InterpolationKernel() {}

    /**
     * Weights of the samples around an instant.
     *
     * @param fraction place of the instant between sample 0 and sample 1, from 0 to 1
     * @param weights overwritten, length {@link #TAPS}; entry k belongs to sample {@code k − M + 1}
     */
    static void weights(double fraction, double[] weights) {
        double sum = 0;
        for (int k = 0; k < TAPS; k++) {
            weights[k] = kernel(fraction - (k - HALF_WIDTH + 1));
            sum += weights[k];
        }
        for (int k = 0; k < TAPS; k++) {
            weights[k] /= sum;
        }
    }

    private static double kernel(double x) {
        double r = x / HALF_WIDTH;
        if (Math.abs(r) >= 1) {
            return 0;
        }
        double sinc = x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
        return sinc * besselI0(BETA * Math.sqrt(1 - r * r)) / BESSEL_AT_BETA;
    }

    /** I₀(x) = Σ_k ((x/2)^k/k!)², summed until a term no longer counts. */
    private static double besselI0(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-17 * sum; k++) {
            double ratio = x / (2 * k);
            term *= ratio * ratio;
            sum += term;
        }
        return sum;
    }
}
