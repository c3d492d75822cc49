package org.ridewright.study;

import java.util.Arrays;

/**
 * A point of the unit cube at which a search looked.
 *
 * @param at the point; not to be modified
 * @param worth what is to be least there, or to meet a target; not a number where there is none
 * @param excess by how much each limit is broken, ≤ 0 where it is kept; not to be modified
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
public record Tried(double[] at, double worth, double[] excess) {
    /** Whether there is a value and every limit is kept. */
    public boolean keeps() {
        return Double.isFinite(worth) && Arrays.stream(excess).allMatch(e -> e <= 0);
    }

    /** Sum of what is broken; infinite where there is no value. */
    public double broken() {
        double sum = Arrays.stream(excess).map(e -> Math.max(0, e)).sum();
        return Double.isFinite(worth) && !Double.isNaN(sum) ? sum : Double.POSITIVE_INFINITY;
    }

    /** What a border between kept and broken is sought by: negative where all limits are kept; 1 where there is no value. */
    double margin() {
        if (Double.isInfinite(broken())) {
            return 1;
        }
        return Arrays.stream(excess).max().orElse(-1);
    }
}
