package org.ridewright.solver;

import java.util.List;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PolynomialBlocks;

/**
 * What a solver is given: equations, heights against time and the state at time 0. The problem never names its method.
 *
 * @param equations of motion
 * @param heights of each input against time (m against s)
 * @param q coordinates at time 0, from the free state
 * @param v their speeds
 * @param friction force of each friction state at time 0 (N)
 * @param duration (s), > 0
 */
public record Problem(
        Equations equations,
        List<? extends PolynomialBlocks> heights,
        double[] q,
        double[] v,
        double[] friction,
        double duration) {
    public Problem {
        heights = List.copyOf(heights);
        if (heights.size() != equations.inputs()) {
            throw new IllegalArgumentException("need " + equations.inputs() + " heights, got " + heights.size());
        }
        if (q.length != equations.size() || v.length != equations.size()) {
            throw new IllegalArgumentException("need " + equations.size() + " coordinates and speeds");
        }
        if (!(duration > 0)) {
            throw new IllegalArgumentException("duration must be > 0 s, got " + duration);
        }
    }
}
