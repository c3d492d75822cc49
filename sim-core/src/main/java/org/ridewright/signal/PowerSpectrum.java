package org.ridewright.signal;

import java.util.function.DoubleUnaryOperator;

/**
 * A one-sided power spectral density G(f) on lines {@code f_k = k Δf}, k from 0 to N/2, N a power of two. Immutable.
 *
 * <p>G is twice the two-sided density on <em>every</em> line, 0 and fs/2 included; line k stands for the frequencies from
 * (k − ½)Δf to (k + ½)Δf as far as they lie between 0 and fs/2. The two end lines are therefore half as wide, white noise
 * has one level throughout, and the integral over all frequencies is the mean square.
 *
 * <p>Unit: that of the samples squared, per Hz (or per cycle a metre, where the samples are spaced in metres).
 */
public final class PowerSpectrum {
    private final double resolution;
    private final int averages;
    private final double[] density;

    /**
     * @param resolution Δf (Hz), &gt; 0
     * @param averages number K of half-overlapping segments averaged, ≥ 1
     * @param density G on each line, at least 2; not copied
     */
    PowerSpectrum(double resolution, int averages, double[] density) {
        this.resolution = resolution;
        this.averages = averages;
        this.density = density;
    }

    /** Δf (Hz). */
    public double resolution() {
        return resolution;
    }

    /** Number of lines. */
    public int size() {
        return density.length;
    }

    /** f_k (Hz). */
    public double frequency(int k) {
        return k * resolution;
    }

    /** Half of the sampling rate (Hz), the last line. */
    public double highestFrequency() {
        return frequency(density.length - 1);
    }

    /** G(f_k). */
    public double density(int k) {
        return density[k];
    }

    /** All densities; a copy. */
    public double[] densities() {
        return density.clone();
    }

    /** Number K of segments averaged. */
    public int averages() {
        return averages;
    }

    /** Mean square of the signal, {@code ∫ G df}. */
    public double meanSquare() {
        return meanSquare(0, highestFrequency());
    }

    /**
     * Mean square of the part between two frequencies; a line cut by an end counts in part.
     *
     * @param from lower end (Hz), ≥ 0
     * @param to upper end (Hz), ≥ from; what lies above fs/2 is nothing
     */
    public double meanSquare(double from, double to) {
        if (!(from >= 0 && to >= from)) {
            throw new IllegalArgumentException(
                    "band must run upward from ≥ 0 Hz, got " + from + " Hz to " + to + " Hz");
        }
        int first = (int) Math.min(density.length - 1.0, Math.floor(from / resolution + 0.5));
        int last = (int) Math.min(density.length - 1.0, Math.ceil(to / resolution + 0.5));
        double sum = 0;
        for (int k = first; k <= last; k++) {
            double lower = Math.max(from, Math.max(0, (k - 0.5) * resolution));
            double upper = Math.min(to, Math.min(highestFrequency(), (k + 0.5) * resolution));
            sum += density[k] * Math.max(0, upper - lower);
        }
        return sum;
    }

    /** Spectrum after a filter, {@code |H(f_k)|² G(f_k)}; {@code magnitude} gives |H| at a frequency (Hz). */
    public PowerSpectrum filtered(DoubleUnaryOperator magnitude) {
        double[] out = new double[density.length];
        for (int k = 0; k < out.length; k++) {
            double gain = magnitude.applyAsDouble(frequency(k));
            out[k] = gain * gain * density[k];
        }
        return new PowerSpectrum(resolution, averages, out);
    }

    /**
     * Degrees of freedom of one line other than the two ends (which have half as many),
     *
     * <pre>  ν = 2K/(1 + 2(1 − 1/K)/36)</pre>
     *
     * where 1/36 is the correlation of neighbouring periodograms that share half of their samples under Hann's window.
     *
     * <p>Source: P. D. Welch, "The use of fast Fourier transform for the estimation of power spectra", 1967 (from memory).
     */
    public double degreesOfFreedom() {
        return 2.0 * averages / (1 + 2 * (1 - 1.0 / averages) / 36);
    }

    /**
     * Degrees of freedom of the mean square of a band in which the density is even: for n lines, whose amplitudes correlate
     * 2/3 with the next line and 1/6 with the one after, {@code ν n²/(n + 2(n−1)·4/9 + 2(n−2)/36)}; at least ν.
     *
     * @param from lower end (Hz)
     * @param to upper end (Hz), &gt; from
     */
    public double degreesOfFreedom(double from, double to) {
        double n = Math.max(1, (to - from) / resolution);
        double spread = n + 2 * (n - 1) * 4 / 9 + 2 * Math.max(0, n - 2) / 36;
        return degreesOfFreedom() * n * n / spread;
    }

    /** Confidence factors of one line, the ends left out. */
    public Confidence confidence(double level) {
        return Confidence.of(level, degreesOfFreedom());
    }

    /** Confidence factors of the mean square of a band. */
    public Confidence confidence(double level, double from, double to) {
        return Confidence.of(level, degreesOfFreedom(from, to));
    }
}
