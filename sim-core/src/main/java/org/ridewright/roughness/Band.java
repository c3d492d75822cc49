package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;

/**
 * A band of wavenumbers.
 *
 * @param from lower end (cycle/m), &gt; 0
 * @param to upper end (cycle/m), &gt; from
 */
public record Band(double from, double to) {
    /** Lower end of what a road's class is fitted over, 2^−6.5 = 0.011 cycle/m. */
    public static final double FIT_FROM = Math.pow(2, -6.5);

    /** Upper end of what a road's class is fitted over, 2^1.5 = 2.83 cycle/m. */
    public static final double FIT_TO = Math.pow(2, 1.5);

    /** Octaves are taken up to here, thirds of an octave from here on: 2^−4.5 cycle/m. */
    private static final int OCTAVES_TO = -54;

    /** Twelfths of an octave are taken from here on: 2^(−11/6) cycle/m. */
    private static final int THIRDS_TO = -22;

    private static final int TWELFTH = 1;
    private static final int THIRD = 4;
    private static final int OCTAVE = 12;

    /** Middle, by ratio (cycle/m). */
    public double centre() {
        return Math.sqrt(from * to);
    }

    /** Width in octaves. */
    public double octaves() {
        return Math.log(to / from) / Math.log(2);
    }

    /**
     * Bands in which spectra of roads are smoothed: octaves to centres of 0.031 cycle/m, thirds of an octave to 0.25, twelfths above.
     *
     * <p>Source: ISO 8608 (from memory; the ends of the fit, 0.011 and 2.83 cycle/m, are ends of its octaves).
     */
    static List<Band> smoothing(double lowest, double highest) {
        List<Band> bands = new ArrayList<>();
        // ends are counted in twelfths of an octave from 1 cycle/m
        int first = OCTAVES_TO + OCTAVE * (int) Math.floor((12 * Math.log(lowest) / Math.log(2) - OCTAVES_TO) / OCTAVE);
        for (int end = Math.min(first, OCTAVES_TO); power(end) < highest; ) {
            int width = end < OCTAVES_TO ? OCTAVE : end < THIRDS_TO ? THIRD : TWELFTH;
            Band band = new Band(power(end), power(end + width));
            if (band.from >= lowest * (1 - 1e-9) && band.to <= highest * (1 + 1e-9)) {
                bands.add(band);
            }
            end += width;
        }
        return bands;
    }

    /** Octaves whose centres lie a third of an octave apart, so that they overlap: all that lie between two ends. */
    static List<Band> overlapping(double lowest, double highest) {
        List<Band> bands = new ArrayList<>();
        int first = (int) Math.ceil(3 * Math.log(lowest) / Math.log(2) + 1.5 - 1e-9);
        for (int k = first; Math.pow(2, (k + 1.5) / 3) <= highest * (1 + 1e-9); k++) {
            bands.add(new Band(Math.pow(2, (k - 1.5) / 3), Math.pow(2, (k + 1.5) / 3)));
        }
        return bands;
    }

    private static double power(int twelfths) {
        return Math.pow(2, twelfths / 12.0);
    }
}
