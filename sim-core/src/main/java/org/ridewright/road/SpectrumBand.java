package org.ridewright.road;

/**
 * Which part of a spectrum's power one layer of a random surface carries. Layers with grids of their own spare the long waves the
 * closeness of points that the short ones need.
 *
 * <p>An end of the whole band lets half the power through at the stated wavenumber n_e; the share goes from all to nothing by a half
 * cosine over {@code n_e/n} from 1 − δ to 1 + δ, which leaves the mean square of a spectrum of waviness 2 as if the band were cut
 * sharply. Between layers, an octave around n_c is shared by sine and cosine squares.
 *
 * @param lowest wavenumber at the lower end (cycle/m)
 * @param highest wavenumber at the upper end (cycle/m)
 * @param first whether the lower end is that of the whole band
 * @param last whether the upper end is that of the whole band
 */
record SpectrumBand(double lowest, double highest, boolean first, boolean last) {
    /** Half width δ of an end of the whole band. */
    static final double EDGE = 0.1;

    /** Share of the power at wavenumber n, from 0 to 1. */
    double share(double n) {
        if (n <= 0) {
            return 0;
        }
        double fromBelow = first ? 1 - beyond(lowest, n) : octave(n / lowest);
        double fromAbove = last ? beyond(highest, n) : 1 - octave(n / highest);
        return fromBelow * fromAbove;
    }

    /** Highest wavenumber with any share (cycle/m). */
    double top() {
        return last ? highest / (1 - EDGE) : highest * Math.sqrt(2);
    }

    /** Width of the narrower of its two ends (cycle/m). */
    double narrowest() {
        double below = first ? lowest * 2 * EDGE : lowest / Math.sqrt(2);
        double above = last ? highest * 2 * EDGE : highest / Math.sqrt(2);
        return Math.min(below, above);
    }

    /** 1 where n is well below the end, 0 well above it. */
    private static double beyond(double end, double n) {
        double s = (end / n - 1) / EDGE;
        return s >= 1 ? 1 : s <= -1 ? 0 : (1 + StrictMath.sin(Math.PI / 2 * s)) / 2;
    }

    private static double octave(double ratio) {
        double s = StrictMath.log(ratio) / StrictMath.log(2) + 0.5;
        if (s <= 0 || s >= 1) {
            return s <= 0 ? 0 : 1;
        }
        double sine = StrictMath.sin(Math.PI / 2 * s);
        return sine * sine;
    }
}
