package org.ridewright.comfort;

/**
 * Everything about one axis at one point over one window.
 *
 * @param position where
 * @param axis along or about which
 * @param metrics with the weighting of ISO 2631-1
 * @param british the same with that of BS 6841, which has Wb where ISO 2631-1 has Wk and is the same elsewhere
 * @param bands unweighted, by kind of motion
 * @param jerk rate of change of the unweighted acceleration
 * @param trusted what the sampling rate lets be seen
 * @param leadIn time from the first sample to the window (s), ≥ 0
 */
public record AxisVibration(
        Position position,
        Axis axis,
        VibrationMetrics metrics,
        VibrationMetrics british,
        MotionBands bands,
        Jerk jerk,
        TrustedBand trusted,
        double leadIn) {
    /** k a_w, r.m.s. as it enters the totals of comfort (m/s²). */
    public double effectiveRms() {
        return position.factor(axis) * metrics.rms();
    }

    /**
     * Whether the weighting had settled from an unknown start to 1 % when the window began. A run from rest needs no settling.
     */
    public boolean isSettled() {
        return leadIn >= position.weighting(axis).settlingTime();
    }
}
