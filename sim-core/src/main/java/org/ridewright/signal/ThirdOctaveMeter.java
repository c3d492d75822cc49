package org.ridewright.signal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * R.m.s. values in one-third-octave bands of all samples that are given, an event's or a steady road's, fed one by one in memory that does not grow.
 *
 * <p>The samples x_0 … x_{n−1}, none of them weighted by a window, followed by noughts up to N, a power of two, are transformed; the density
 *
 * <pre>  G(f_k) = 2 |X_k|² / (fs n)        f_k = k fs/N</pre>
 *
 * is integrated from end to end of each band. The squares of all bands therefore add up to the mean square of the samples between the outermost ends
 * (Parseval). More than {@value #LONGEST} samples are taken in pieces, whose energies are added.
 *
 * <p>A steady tone of a band narrower than {@value #NEEDED_LINES} fs/n leaks into the neighbours, wherefore such bands are left out. What is cut
 * off at an end with a height of a leaks a mean square of about {@code a²/(2π² f n/fs)} into all above f.
 *
 * <p>Source: Parseval's theorem; bands of ISO 266; the leak from the spectrum {@code a/(2π f)} of a step of a (all from memory).
 *
 * <p>Compare {@link ThirdOctaveSpectrum}: the same bands of Welch's estimate, which looks least at the ends of the window and therefore not at events.
 */
public final class ThirdOctaveMeter {
    /** Longest piece (samples). */
    private static final int LONGEST = 1 << 17;

    private static final int NEEDED_LINES = 3;

    private final double sampleRate;
    private final List<ThirdOctave> bands;
    private final double[] energies;
    private final double[] piece;
    private final long expected;
    private int filled;
    private long taken;

    /**
     * @param sampleRate fs (Hz), &gt; 0
     * @param expected how many samples will come, &gt; 0; tells which bands are resolved
     * @param from frequency (Hz) in the lowest band, &gt; 0
     * @param to frequency (Hz) in the highest band, which must end below fs/2
     */
    public ThirdOctaveMeter(double sampleRate, long expected, double from, double to) {
        this.sampleRate = sampleRate;
        this.expected = expected;
        int size = (int) Math.min(LONGEST, Long.highestOneBit(Math.max(2, expected - 1)) * 2);
        piece = new double[size];
        double lines = sampleRate / Math.min(size, expected);
        bands = ThirdOctave.between(from, to).stream()
                .filter(band -> band.width() >= NEEDED_LINES * lines)
                .toList();
        if (!bands.isEmpty() && bands.get(bands.size() - 1).upper() > sampleRate / 2) {
            throw new IllegalArgumentException(
                    "band of " + to + " Hz must end ≤ " + sampleRate / 2 + " Hz, half of the sampling rate");
        }
        energies = new double[bands.size()];
    }

    /** Takes the next sample; what comes beyond the expected number is left out. */
    public void accept(double sample) {
        if (taken == expected) {
            return;
        }
        piece[filled++] = sample;
        taken++;
        if (filled == piece.length) {
            addPiece();
        }
    }

    /**
     * R.m.s. in each band that is resolved, lowest first, in the unit of the samples.
     *
     * @param over how many samples make up the time over which the mean is taken: as many as were taken, or less where the last ones only tell how
     *     an event dies away
     */
    public Map<ThirdOctave, Double> levels(long over) {
        if (filled > 0) {
            addPiece();
        }
        Map<ThirdOctave, Double> levels = new LinkedHashMap<>();
        for (int b = 0; b < energies.length; b++) {
            levels.put(bands.get(b), Math.sqrt(energies[b] / over));
        }
        return levels;
    }

    /** Adds the mean square of each band times the number of samples. */
    private void addPiece() {
        double[][] transform = {new double[piece.length], new double[piece.length]};
        System.arraycopy(piece, 0, transform[0], 0, filled);
        FastFourierTransformer.transformInPlace(transform, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] density = new double[piece.length / 2 + 1];
        for (int k = 0; k < density.length; k++) {
            double square = transform[0][k] * transform[0][k] + transform[1][k] * transform[1][k];
            density[k] = 2 * square / sampleRate;
        }
        PowerSpectrum spectrum = new PowerSpectrum(sampleRate / piece.length, 1, density);
        for (int b = 0; b < energies.length; b++) {
            energies[b] +=
                    spectrum.meanSquare(bands.get(b).lower(), bands.get(b).upper());
        }
        filled = 0;
    }
}
