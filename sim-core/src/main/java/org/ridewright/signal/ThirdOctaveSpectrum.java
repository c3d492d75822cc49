package org.ridewright.signal;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * R.m.s. values in one-third-octave bands, by integrating a power spectrum from end to end of each. Immutable.
 *
 * <p>The bands have straight sides: unlike those of a bank of filters they neither overlap nor ring, and their squares add up to the mean
 * square between the outermost ends.
 */
public final class ThirdOctaveSpectrum {
    /** A band with fewer lines than this cannot hold a single tone, which Hann's window spreads over three. */
    private static final double NEEDED_LINES = 3;

    private final List<ThirdOctave> bands;
    private final double[] rms;
    private final double resolution;
    private final PowerSpectrum spectrum;

    private ThirdOctaveSpectrum(List<ThirdOctave> bands, double[] rms, PowerSpectrum spectrum) {
        this.bands = bands;
        this.rms = rms;
        this.resolution = spectrum.resolution();
        this.spectrum = spectrum;
    }

    /**
     * From the band of one frequency (Hz) to that of another.
     *
     * @throws IllegalArgumentException if the last band reaches beyond half of the sampling rate
     */
    public static ThirdOctaveSpectrum of(PowerSpectrum spectrum, double from, double to) {
        List<ThirdOctave> bands = ThirdOctave.between(from, to);
        ThirdOctave last = bands.get(bands.size() - 1);
        if (last.upper() > spectrum.highestFrequency()) {
            throw new IllegalArgumentException("band of " + last.nominal() + " Hz ends at " + last.upper()
                    + " Hz and must end ≤ " + spectrum.highestFrequency() + " Hz, half of the sampling rate");
        }
        double[] rms = bands.stream()
                .mapToDouble(band -> Math.sqrt(spectrum.meanSquare(band.lower(), band.upper())))
                .toArray();
        return new ThirdOctaveSpectrum(bands, rms, spectrum);
    }

    /**
     * From the first resolved band at or above one frequency (Hz) to that of another: a single band that the lines do not resolve tells of its
     * neighbours as much as of itself.
     *
     * @return empty where none is resolved
     * @throws IllegalArgumentException if the last band reaches beyond half of the sampling rate
     */
    public static Optional<ThirdOctaveSpectrum> resolved(PowerSpectrum spectrum, double from, double to) {
        return ThirdOctave.between(from, to).stream()
                .filter(band -> band.width() >= NEEDED_LINES * spectrum.resolution())
                .findFirst()
                .map(lowest -> of(spectrum, lowest.exact(), to));
    }

    /** Bands, lowest first. */
    public List<ThirdOctave> bands() {
        return bands;
    }

    /** R.m.s. in band i, in the unit of the samples. */
    public double rms(int i) {
        return rms[i];
    }

    /** Whether band i is wide enough for the spectrum's lines, three or more; a narrower one leaks into its neighbours. */
    public boolean isResolved(int i) {
        return bands.get(i).width() >= NEEDED_LINES * resolution;
    }

    /** Within which factors of the square of {@code rms(i)} the true mean square lies. */
    public Confidence confidence(double level, int i) {
        return spectrum.confidence(level, bands.get(i).lower(), bands.get(i).upper());
    }

    /** Each band times a factor at its nominal frequency (Hz): how ISO 2631-1 weights one-third octaves. */
    public ThirdOctaveSpectrum times(DoubleUnaryOperator factor) {
        double[] out = new double[rms.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = factor.applyAsDouble(bands.get(i).nominal()) * rms[i];
        }
        return new ThirdOctaveSpectrum(bands, out, spectrum);
    }

    /** {@code {Σ a_i²}^½} over all bands; of weighted bands, a_w (ISO 2631-1:1997, 6.4.2). */
    public double total() {
        return Math.sqrt(Arrays.stream(rms).map(a -> a * a).sum());
    }
}
