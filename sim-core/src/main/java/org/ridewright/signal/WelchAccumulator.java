package org.ridewright.signal;

import java.util.Arrays;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Welch's estimate of power and cross spectra, fed sample by sample in memory that does not grow.
 *
 * <p>Segments of N samples overlap by half; each is detrended, multiplied by Hann's window {@code w_n = ½(1 − cos 2πn/N)} and
 * transformed; with X_k and Y_k the transforms of two channels,
 *
 * <pre>
 *   G_xy(f_k) = 2/(fs Σ w²) · mean over segments of X_k* Y_k        f_k = k fs/N
 * </pre>
 *
 * <p>A power spectrum's lines sum to the mean square of the samples weighted by the windows (Parseval). What comes after the
 * last whole segment is not looked at. Bias: a peak narrower than about 4 Δf is drawn wider and lower; its area is right.
 *
 * <p>Cost: one transform of N points a channel for each N/2 samples. Memory: c channels hold {@code N (3c + c²/2)} numbers or
 * so. Accepting allocates nothing.
 *
 * <p>Source: P. D. Welch, 1967 (from memory).
 */
public final class WelchAccumulator {
    private final double sampleRate;
    private final int segment;
    private final Detrend detrend;
    private final double[] window;
    private final double[][] recent;
    private final double[] piece;
    private final double[][][] transforms;
    private final double[][] powers;
    private final double[][][] crosses;
    private int filled;
    private int averages;

    /**
     * @param sampleRate fs (Hz), &gt; 0; samples a metre give spectra over cycles a metre
     * @param segment N, a power of two ≥ 4
     * @param channels number of signals sampled together, ≥ 1
     * @param detrend what is taken off each segment
     * @throws IllegalArgumentException if a bound above is broken
     */
    public WelchAccumulator(double sampleRate, int segment, int channels, Detrend detrend) {
        if (!(sampleRate > 0) || Double.isInfinite(sampleRate)) {
            throw new IllegalArgumentException("sampling rate must be > 0 Hz and finite, got " + sampleRate + " Hz");
        }
        if (segment < 4 || Integer.bitCount(segment) != 1) {
            throw new IllegalArgumentException("segment must be a power of two ≥ 4 samples, got " + segment);
        }
        if (channels < 1) {
            throw new IllegalArgumentException("need at least 1 channel, got " + channels);
        }
        this.sampleRate = sampleRate;
        this.segment = segment;
        this.detrend = detrend;
        int lines = segment / 2 + 1;
        window = hann(segment);
        recent = new double[channels][segment];
        piece = new double[segment];
        transforms = new double[channels][2][segment];
        powers = new double[channels][lines];
        crosses = new double[channels * (channels - 1) / 2][2][lines];
    }

    /** Smallest allowed segment whose lines are no further apart than {@code resolution} (Hz). */
    public static int segmentFor(double sampleRate, double resolution) {
        double needed = Math.max(4, sampleRate / resolution * (1 - 1e-12));
        if (!(needed <= 1 << 28)) {
            throw new IllegalArgumentException(
                    "resolution must be ≥ " + sampleRate / (1 << 28) + " Hz, got " + resolution + " Hz");
        }
        int power = Integer.highestOneBit((int) Math.ceil(needed));
        return power >= needed ? power : 2 * power;
    }

    /**
     * Spectra of whole channels of one sampling rate and length.
     *
     * @throws IllegalArgumentException if those differ, or the channels are shorter than a segment
     */
    public static WelchSpectra of(int segment, Detrend detrend, Channel... channels) {
        Channel first = channels[0];
        WelchAccumulator welch = new WelchAccumulator(first.sampleRate(), segment, channels.length, detrend);
        for (Channel channel : channels) {
            if (channel.sampleRate() != first.sampleRate() || channel.size() != first.size()) {
                throw new IllegalArgumentException(
                        "channels must be sampled together, got " + first + " and " + channel);
            }
        }
        if (first.size() < segment) {
            throw new IllegalArgumentException(
                    "need at least one segment of " + segment + " samples, got " + first.size() + " (" + first + ")");
        }
        double[] sample = new double[channels.length];
        for (int i = 0; i < first.size(); i++) {
            for (int c = 0; c < channels.length; c++) {
                sample[c] = channels[c].sample(i);
            }
            welch.accept(sample);
        }
        return welch.result();
    }

    /** Takes the samples of one instant, one a channel, all finite. */
    public void accept(double... samples) {
        if (samples.length != recent.length) {
            throw new IllegalArgumentException("need " + recent.length + " samples, got " + samples.length);
        }
        for (int c = 0; c < samples.length; c++) {
            if (!Double.isFinite(samples[c])) {
                throw new IllegalArgumentException("samples must be finite, got " + samples[c] + " on channel " + c);
            }
            recent[c][filled] = samples[c];
        }
        filled++;
        if (filled == segment) {
            average();
            keepLaterHalf();
        }
    }

    /** What comes next does not follow on what came before: no segment reaches across. */
    public void interrupt() {
        filled = 0;
    }

    /** Number of whole segments so far. */
    public int averages() {
        return averages;
    }

    /**
     * Spectra of what was accepted so far; more may be accepted afterwards.
     *
     * @throws IllegalStateException if not one segment is whole
     */
    public WelchSpectra result() {
        if (averages == 0) {
            throw new IllegalStateException("need at least one segment of " + segment + " samples, got " + filled);
        }
        // Σ w² = 3N/8 for Hann's window
        double scale = 2 / (sampleRate * 0.375 * segment * averages);
        double resolution = sampleRate / segment;
        PowerSpectrum[] power = new PowerSpectrum[powers.length];
        for (int c = 0; c < power.length; c++) {
            power[c] = new PowerSpectrum(resolution, averages, scaled(powers[c], scale));
        }
        double[][][] cross = new double[crosses.length][2][];
        for (int p = 0; p < cross.length; p++) {
            cross[p][0] = scaled(crosses[p][0], scale);
            cross[p][1] = scaled(crosses[p][1], scale);
        }
        return new WelchSpectra(power, cross);
    }

    private void average() {
        int channels = recent.length;
        for (int c = 0; c < channels; c++) {
            System.arraycopy(recent[c], 0, piece, 0, segment);
            detrend.remove(piece);
            for (int n = 0; n < segment; n++) {
                transforms[c][0][n] = piece[n] * window[n];
            }
            Arrays.fill(transforms[c][1], 0);
            FastFourierTransformer.transformInPlace(transforms[c], DftNormalization.STANDARD, TransformType.FORWARD);
        }
        for (int i = 0; i < channels; i++) {
            addPower(transforms[i], powers[i]);
            for (int j = i + 1; j < channels; j++) {
                addCross(transforms[i], transforms[j], crosses[WelchSpectra.pair(i, j, channels)]);
            }
        }
        averages++;
    }

    private static void addPower(double[][] x, double[] sum) {
        for (int k = 0; k < sum.length; k++) {
            sum[k] += x[0][k] * x[0][k] + x[1][k] * x[1][k];
        }
    }

    private static void addCross(double[][] x, double[][] y, double[][] sum) {
        for (int k = 0; k < sum[0].length; k++) {
            sum[0][k] += x[0][k] * y[0][k] + x[1][k] * y[1][k];
            sum[1][k] += x[0][k] * y[1][k] - x[1][k] * y[0][k];
        }
    }

    private void keepLaterHalf() {
        int half = segment / 2;
        for (double[] channel : recent) {
            System.arraycopy(channel, half, channel, 0, half);
        }
        filled = half;
    }

    private static double[] hann(int n) {
        double[] w = new double[n];
        for (int i = 0; i < n; i++) {
            double s = Math.sin(Math.PI * i / n);
            w[i] = s * s;
        }
        return w;
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(v -> v * factor).toArray();
    }
}
