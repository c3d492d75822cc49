package org.ridewright.signal;

/**
 * Uniform samples from uneven ones: the samples u_k at one rate whose band-limited curve passes closest to what was measured,
 *
 * <pre>
 *   Σ_i (Σ_k φ(t_i f − k) u_k − y_i)² + λ Σ_k (Δ⁴u)_k² + ε Σ_k (u_k − ȳ)²  →  least
 * </pre>
 *
 * with φ the interpolation kernel (windowed sinc, M = 16), f the rate, Δ⁴ the fourth difference, ȳ the mean of y, λ = 1e-6 and ε = 1e-9.
 *
 * <p>Since f is about the mean rate of the measured samples, nothing is thinned out, and nothing can fold. Straight lines or splines
 * through uneven samples would bend the upper half of the band; this does not: where the instants are even the result is the samples
 * themselves but for λ (2e-4 at most), and a sine below 0.42 f comes back within 0.1 % from instants that are off by up to a third of an
 * interval. λ decides where the samples leave the curve open. Where one of even samples is missing it takes the cubic through
 * the neighbours, in the sense of least squares: {@code (2 sin πν)⁸/70} of a sine's amplitude is missing there, ν = frequency/f, 0.03 % at f/10
 * and 5 % at f/5.
 *
 * <p>Solved in blocks, by Cholesky's method on the banded normal equations; blocks overlap by 64 samples, beyond which a sample no longer
 * feels another. Cost: O(n), memory of one block.
 *
 * <p>Source: the sampling theorem for uneven instants as a least-squares problem, H. G. Feichtinger and K. Gröchenig, "Theory and practice
 * of irregular sampling", 1994 (from memory).
 */
public final class BandLimitedFit {
    private static final int TAPS = InterpolationKernel.TAPS;
    private static final int BEFORE = InterpolationKernel.HALF_WIDTH - 1;
    private static final double PULL = 1e-9;
    private static final double STIFFNESS = 1e-6;
    private static final double[] FOURTH_DIFFERENCE = {1, -4, 6, -4, 1};
    private static final int BLOCK = 4096;
    private static final int OVERLAP = 64;

    private final double[] places;
    private final double[] values;
    private final double mean;
    private final int count;

    /** @param places t_i f, the instants counted in output samples from the first, which is at 0 */
    private BandLimitedFit(double[] places, double[] values, int count) {
        this.places = places;
        this.values = values;
        this.count = count;
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        mean = sum / values.length;
    }

    /**
     * The uniform samples, from the first instant on, as many as the measured ones reach.
     *
     * @param times instants (s), each later than the one before, at least 2
     * @param values measured, as many, finite
     * @param sampleRate f (Hz), about the mean rate of the instants
     * @return samples at {@code times[0] + k/f}
     * @throws IllegalArgumentException if a bound above is broken
     */
    public static double[] uniform(double[] times, double[] values, double sampleRate) {
        if (times.length != values.length || times.length < 2) {
            throw new IllegalArgumentException(
                    "need ≥ 2 instants and as many values, got " + times.length + " and " + values.length);
        }
        double[] places = new double[times.length];
        for (int i = 0; i < places.length; i++) {
            places[i] = (times[i] - times[0]) * sampleRate;
            if (i > 0 && !(places[i] > places[i - 1])) {
                throw new IllegalArgumentException(
                        "instants must rise, got " + times[i] + " s after " + times[i - 1] + " s");
            }
        }
        int count = 1 + (int) Math.floor(places[places.length - 1] + 1e-6);
        return new BandLimitedFit(places, values.clone(), count).solve();
    }

    private double[] solve() {
        double[] uniform = new double[count];
        for (int from = 0; from < count; from += BLOCK) {
            int to = Math.min(count, from + BLOCK);
            int first = Math.max(-BEFORE, from - OVERLAP);
            int end = Math.min(count + BEFORE + 1, to + OVERLAP);
            double[] block = solve(first, end);
            System.arraycopy(block, from - first, uniform, from, to - from);
        }
        return uniform;
    }

    /** Unknowns {@code first} to {@code end − 1}, from the measured samples whose neighbours all lie among them. */
    private double[] solve(int first, int end) {
        int n = end - first;
        double[][] band = new double[n][TAPS];
        double[] right = new double[n];
        double[] weights = new double[TAPS];
        for (int i = lowest(first + BEFORE); i < places.length; i++) {
            int floor = (int) Math.floor(places[i]);
            int row = floor - BEFORE - first;
            if (row + TAPS > n) {
                break;
            }
            if (row < 0) {
                continue;
            }
            InterpolationKernel.weights(places[i] - floor, weights);
            double y = values[i] - mean;
            for (int a = 0; a < TAPS; a++) {
                right[row + a] += weights[a] * y;
                // entry (row, back) of the band is the element (row, row − back)
                for (int b = 0; b <= a; b++) {
                    band[row + a][a - b] += weights[a] * weights[b];
                }
            }
        }
        stiffen(band);
        factorise(band);
        substitute(band, right);
        for (int k = 0; k < n; k++) {
            right[k] += mean;
        }
        return right;
    }

    private static void stiffen(double[][] band) {
        for (int k = 0; k < band.length; k++) {
            band[k][0] += PULL;
            for (int a = 0; k + FOURTH_DIFFERENCE.length <= band.length && a < FOURTH_DIFFERENCE.length; a++) {
                for (int b = 0; b <= a; b++) {
                    band[k + a][a - b] += STIFFNESS * FOURTH_DIFFERENCE[a] * FOURTH_DIFFERENCE[b];
                }
            }
        }
    }

    private int lowest(int place) {
        int low = 0;
        int high = places.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (places[middle] < place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** L with L Lᵀ = N in place; positive definite thanks to λ. */
    private static void factorise(double[][] band) {
        for (int i = 0; i < band.length; i++) {
            for (int j = Math.max(0, i - TAPS + 1); j <= i; j++) {
                double sum = band[i][i - j];
                for (int k = Math.max(0, i - TAPS + 1); k < j; k++) {
                    sum -= band[i][i - k] * band[j][j - k];
                }
                band[i][i - j] = i == j ? Math.sqrt(sum) : sum / band[j][0];
            }
        }
    }

    private static void substitute(double[][] band, double[] x) {
        for (int i = 0; i < x.length; i++) {
            for (int j = Math.max(0, i - TAPS + 1); j < i; j++) {
                x[i] -= band[i][i - j] * x[j];
            }
            x[i] /= band[i][0];
        }
        for (int i = x.length - 1; i >= 0; i--) {
            for (int j = i + 1; j < Math.min(x.length, i + TAPS); j++) {
                x[i] -= band[j][j - i] * x[j];
            }
            x[i] /= band[i][0];
        }
    }
}
