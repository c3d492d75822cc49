package org.ridewright.ride;

import java.util.List;

/**
 * What a vehicle without surge or sway misses at one place: accelerations as an accelerometer reads them, as they were and in a short
 * run with both.
 *
 * @param place a seat, or a named point where nobody is aboard
 * @param without by axis x, y, z, as the vehicle is described
 * @param with the same with surge and sway
 */
public record Missed(String place, List<Level> without, List<Level> with) {
    /** Share of the whole vibration from which a difference is worth a word. */
    static final double WORTH_A_WORD = 0.1;

    public Missed {
        without = List.copyOf(without);
        with = List.copyOf(with);
    }

    /**
     * Along one axis.
     *
     * @param rms unweighted (m/s²)
     * @param peak greatest size (m/s²)
     */
    public record Level(double rms, double peak) {}

    /** R.m.s. of the three axes together, the greater of both runs (m/s²). */
    public double whole() {
        return Math.max(total(without), total(with));
    }

    private static double total(List<Level> levels) {
        return Math.sqrt(levels.stream().mapToDouble(l -> l.rms() * l.rms()).sum());
    }

    /** Whether the r.m.s. along an axis changes by more than a tenth of {@link #whole}. */
    public boolean matters(int axis) {
        return Math.abs(with.get(axis).rms() - without.get(axis).rms()) > WORTH_A_WORD * whole();
    }
}
