package org.ridewright.roughness;

import java.util.Optional;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.WelchAccumulator;

/** Takes heights in and keeps the spectrum of their slope, in memory that does not grow with the road. */
public final class HeightSpectrumAccumulator {
    /** Heights without which there is no spectrum. */
    static final int FEWEST = 8;

    /** Distance of lines that resolves the lowest band of a road's class, 0.011 to 0.022 cycle/m (cycle/m). */
    private static final double RESOLUTION = 0.0025;

    /** A stretch is at most this share of the road, so that there are at least two. */
    private static final double LONGEST_STRETCH = 2 / 3.0;

    private final double spacing;
    private final WelchAccumulator welch;
    private final double[] slope = new double[1];
    private double last = Double.NaN;

    /**
     * @param spacing of the heights (m), &gt; 0
     * @param heights how many there will be, ≥ 8
     * @throws IllegalArgumentException if there are fewer
     */
    public HeightSpectrumAccumulator(double spacing, long heights) {
        if (heights < FEWEST) {
            throw new IllegalArgumentException("a spectrum needs ≥ " + FEWEST + " heights, got " + heights);
        }
        this.spacing = spacing;
        long longest = Long.highestOneBit((long) (LONGEST_STRETCH * (heights - 1)));
        int segment = (int) Math.min(longest, WelchAccumulator.segmentFor(1 / spacing, RESOLUTION));
        welch = new WelchAccumulator(1 / spacing, segment, 1, Detrend.MEAN);
    }

    /**
     * The next heights.
     *
     * @param window heights (m), finite; not modified
     * @param from first one taken
     * @param to one past the last
     */
    public void accept(double[] window, int from, int to) {
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(last)) {
                slope[0] = (window[i] - last) / spacing;
                welch.accept(slope);
            }
            last = window[i];
        }
    }

    /** The spectrum; none before the first stretch is whole. */
    public Optional<HeightSpectrum> result() {
        return welch.averages() == 0
                ? Optional.empty()
                : Optional.of(new HeightSpectrum(welch.result().power(0), spacing));
    }
}
