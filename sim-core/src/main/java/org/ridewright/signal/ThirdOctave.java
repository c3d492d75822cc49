package org.ridewright.signal;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A one-third-octave band: number n, exact mid-band frequency {@code 10^(n/10)} Hz (base ten), ends {@code 10^((n ± ½)/10)} Hz.
 * Neighbouring bands meet without gap or overlap.
 *
 * <p>The nominal frequency of ISO 266 (1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8 and tens of them) names the band; factors printed
 * in standards belong to nominal frequencies, which differ from the exact ones by up to 1 %.
 *
 * <p>Source: ISO 266 and IEC 61260-1 (from memory).
 *
 * @param number n; 0 is the band at 1 Hz, 10 that at 10 Hz
 */
public record ThirdOctave(int number) {
    private static final double[] NOMINAL = {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8};

    /** Gauss points over a band; exact to round-off for a density that is smooth over the band. */
    private static final int POINTS = 20;

    /** The band in which a frequency (Hz) lies; at a boundary the upper one. */
    public static ThirdOctave containing(double frequency) {
        if (!(frequency > 0) || Double.isInfinite(frequency)) {
            throw new IllegalArgumentException("frequency must be > 0 Hz and finite, got " + frequency + " Hz");
        }
        return new ThirdOctave((int) Math.floor(10 * Math.log10(frequency) + 0.5));
    }

    /** All bands from that of one frequency (Hz) to that of another. */
    public static List<ThirdOctave> between(double from, double to) {
        return IntStream.rangeClosed(containing(from).number, containing(to).number)
                .mapToObj(ThirdOctave::new)
                .toList();
    }

    /** Exact mid-band frequency (Hz). */
    public double exact() {
        return Math.pow(10, number / 10.0);
    }

    /** Frequency that names the band (Hz). */
    public double nominal() {
        int decade = Math.floorDiv(number, 10);
        double digits = NOMINAL[Math.floorMod(number, 10)];
        return decade < 0 ? digits / Math.pow(10, -decade) : digits * Math.pow(10, decade);
    }

    /** Lower end (Hz). */
    public double lower() {
        return Math.pow(10, (number - 0.5) / 10);
    }

    /** Upper end (Hz). */
    public double upper() {
        return Math.pow(10, (number + 0.5) / 10);
    }

    /** Width (Hz), 0.23 of the mid-band frequency. */
    public double width() {
        return upper() - lower();
    }

    /** Mean square in the band of a density given as a formula, {@code ∫ G df}, in unit² for G in unit²/Hz. */
    public double meanSquare(DoubleUnaryOperator density) {
        GaussIntegrator gauss = new GaussIntegratorFactory().legendre(POINTS, Math.log(lower()), Math.log(upper()));
        return gauss.integrate(x -> Math.exp(x) * density.applyAsDouble(Math.exp(x)));
    }
}
