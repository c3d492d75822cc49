package org.ridewright.signal;

import org.hipparchus.complex.Complex;

/**
 * From one measured signal x to another y: {@code H1(f) = G_xy/G_xx} and the ordinary coherence
 * {@code γ²(f) = |G_xy|²/(G_xx G_yy)}, G averaged over segments. Immutable.
 *
 * <p>H1 is the gain of a linear system when all noise is in y; where γ² is low it is not to be believed. One segment alone
 * has γ² = 1 whatever the signals. A delay of a share δ of the segment between x and y lowers |H1|, by the part of Hann's
 * window that no longer meets itself, {@code 1 − (2π²/3) δ²} for a small δ (0.93 at a tenth) and γ² by its square: segments should be
 * ten times as long as any delay, a wheelbase's for instance. A vehicle whose friction locks and slides is not linear; its H1 is the best
 * linear gain for that road and speed.
 *
 * <p>Source: Bendat and Piersol, Random Data, chapters 6 and 9 (from memory).
 */
public final class TransferFunction {
    private final PowerSpectrum input;
    private final PowerSpectrum output;
    private final double[] real;
    private final double[] imaginary;

    /** Cross density G_xy as real and imaginary parts, scaled as the two spectra are; not copied. */
    TransferFunction(PowerSpectrum input, PowerSpectrum output, double[] real, double[] imaginary) {
        this.input = input;
        this.output = output;
        this.real = real;
        this.imaginary = imaginary;
    }

    /** Number of lines. */
    public int size() {
        return input.size();
    }

    /** f_k (Hz). */
    public double frequency(int k) {
        return input.frequency(k);
    }

    /** G_xx. */
    public PowerSpectrum input() {
        return input;
    }

    /** G_yy. */
    public PowerSpectrum output() {
        return output;
    }

    /** One-sided cross spectral density G_xy(f_k), the mean of X* Y. */
    public Complex crossDensity(int k) {
        return new Complex(real[k], imaginary[k]);
    }

    /** H1(f_k); not a number where the input has nothing. */
    public Complex gain(int k) {
        return crossDensity(k).divide(input.density(k));
    }

    /** |H1(f_k)|. */
    public double magnitude(int k) {
        return Math.hypot(real[k], imaginary[k]) / input.density(k);
    }

    /** γ²(f_k), 0 to 1; not a number where a signal has nothing. */
    public double coherence(int k) {
        double square = real[k] * real[k] + imaginary[k] * imaginary[k];
        return Math.min(1, square / input.density(k) / output.density(k));
    }

    /** Number K of segments averaged. */
    public int averages() {
        return input.averages();
    }

    /**
     * Coherence that two unrelated signals exceed with probability {@code 1 − level}: {@code 1 − (1 − level)^(1/(n − 1))}, n =
     * ν/2 averages that count as independent; 1 where n ≤ 1.
     */
    public double coherenceThreshold(double level) {
        double n = input.degreesOfFreedom() / 2;
        return n <= 1 ? 1 : 1 - Math.pow(1 - level, 1 / (n - 1));
    }

    /** Standard error of |H1(f_k)|, relative to it: {@code √((1 − γ²)/(2 n γ²))}, n = ν/2. */
    public double relativeError(int k) {
        double c = coherence(k);
        return Math.sqrt((1 - c) / (c * input.degreesOfFreedom()));
    }
}
