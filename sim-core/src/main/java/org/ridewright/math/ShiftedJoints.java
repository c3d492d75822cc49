package org.ridewright.math;

import java.util.Arrays;

/** Where the ends of a moving window pass the joints of what it moves along. */
public final class ShiftedJoints {
    private ShiftedJoints() {}

    /**
     * Joints shifted by a both ways, sorted; those nearer to each other than round-off are one.
     *
     * @param joints increasing; not modified
     * @param a half the window's length, > 0
     */
    public static double[] of(double[] joints, double a) {
        int n = joints.length;
        double[] all = new double[2 * n];
        for (int i = 0; i < n; i++) {
            all[i] = joints[i] - a;
            all[n + i] = joints[i] + a;
        }
        Arrays.sort(all);
        int kept = Math.min(1, all.length);
        for (int i = 1; i < all.length; i++) {
            if (all[i] - all[kept - 1] > PieceCollector.SHORTEST * Math.max(1, Math.abs(all[i]))) {
                all[kept++] = all[i];
            }
        }
        return Arrays.copyOf(all, kept);
    }
}
