package org.ridewright.yardstick;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ridewright.math.PiecewisePolynomial;

/**
 * Gravel as our own roads give it: cubic between joints, with a continuous slope. Two tracks of random heights, the rear wheels behind the
 * front ones in time. Invented, for measuring speed and memory only.
 */
final class CubicGravel {
    private static final double SPACING = 8e-3;
    /** Share of a height that is left at the next joint, and the r.m.s. of what comes to it (m): about as rough as class D at 4 m/s. */
    private static final double MEMORY = 0.985;

    private static final double ROUGHNESS = 1.2e-3;
    private static final int LAG = 50;

    private CubicGravel() {}

    /** Front left, front right, rear left, rear right; metres against seconds. */
    static List<PiecewisePolynomial> heights(double duration, long seed) {
        int pieces = (int) Math.ceil(duration / SPACING);
        List<PiecewisePolynomial> wheels = new ArrayList<>();
        double[][] tracks = {track(pieces, new Random(seed)), track(pieces, new Random(seed + 1))};
        for (int lag : new int[] {LAG, 0}) {
            for (double[] track : tracks) {
                wheels.add(smooth(track, lag, pieces));
            }
        }
        return wheels;
    }

    private static double[] track(int pieces, Random random) {
        double[] heights = new double[pieces + LAG + 4];
        for (int i = 1; i < heights.length; i++) {
            heights[i] = MEMORY * heights[i - 1] + ROUGHNESS * random.nextGaussian();
        }
        return heights;
    }

    /** Cubic through the heights from number {@code first} on, with the slope of the chord between neighbours; joins the level at 0. */
    private static PiecewisePolynomial smooth(double[] heights, int first, int pieces) {
        double[] joints = new double[pieces + 1];
        double[][] rows = new double[pieces][];
        for (int i = 0; i < pieces; i++) {
            joints[i] = i * SPACING;
            double fade0 = Math.min(1, i * SPACING);
            double fade1 = Math.min(1, (i + 1) * SPACING);
            double h0 = fade0 * heights[first + i + 1];
            double h1 = fade1 * heights[first + i + 2];
            double s0 = i == 0 ? 0 : fade0 * (heights[first + i + 2] - heights[first + i]) / (2 * SPACING);
            double s1 = fade1 * (heights[first + i + 3] - heights[first + i + 1]) / (2 * SPACING);
            double rise = (h1 - h0) / SPACING;
            rows[i] =
                    new double[] {h0, s0, (3 * rise - 2 * s0 - s1) / SPACING, (s0 + s1 - 2 * rise) / (SPACING * SPACING)
                    };
        }
        joints[pieces] = pieces * SPACING;
        return new PiecewisePolynomial(joints, rows, heights[first + pieces + 1]);
    }
}
