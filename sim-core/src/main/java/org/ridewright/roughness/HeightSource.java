package org.ridewright.roughness;

/** Heights of one track at equal spacing, read window by window, so that a long road need not be held. */
public interface HeightSource {
    /** Δ (m), &gt; 0. */
    double spacing();

    /** Station of the first height (m). */
    double start();

    /** How many heights the track has. */
    long size();

    /**
     * Heights from one on.
     *
     * @param first may lie before the first or beyond the last height: the road is level there, at the height of its end
     * @param into overwritten with as many heights as it is long (m)
     */
    void read(long first, double[] into);

    /** Heights that are at hand; before the first and beyond the last the road is level. Not copied. */
    static HeightSource of(double start, double spacing, double[] heights) {
        if (!(spacing > 0) || Double.isInfinite(spacing)) {
            throw new IllegalArgumentException("spacing of heights must be > 0 m, got " + spacing + " m");
        }
        if (heights.length == 0) {
            throw new IllegalArgumentException("a track needs ≥ 1 height, got 0");
        }
        return new HeldHeights(start, spacing, heights);
    }
}
