package org.ridewright.friction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.StaticState;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialRange;
import org.ridewright.math.Sinusoid;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Step;

/**
 * One place of a vehicle while every wheel stands on ground that goes up and down by {@code Y sin ωt}, all at once, as on waves far longer
 * than the vehicle; simulated until one stretch of cycles is like the one before.
 */
public final class ForcedRun {
    /** Cycles to a stretch. */
    private static final int STRETCH = 12;

    /** Cycles over which the road grows: held springs damp next to nothing, so that what a quick beginning stirs up would stay. */
    private static final int GROWTH = 8;

    private static final int MOST_STRETCHES = 14;
    /** Change from one stretch to the next at which the motion counts as steady. */
    private static final double SETTLED = 2e-3;

    private static final int SAMPLES_PER_CYCLE = 64;
    private static final int ROOM = 64;

    private final Equations equations;
    private final StaticState rest;
    private final double[] row;
    private final double amplitude;
    private final double omega;
    private final List<Integer> leaves;
    private final double[] work = new double[ROOM];

    /**
     * @param row of the place on the coordinates; not modified
     * @param amplitude Y (m), > 0
     * @param frequency (Hz), > 0
     */
    public ForcedRun(Equations equations, StaticState rest, double[] row, double amplitude, double frequency) {
        this.equations = equations;
        this.rest = rest;
        this.row = row;
        this.amplitude = amplitude;
        omega = 2 * Math.PI * frequency;
        leaves = new ArrayList<>();
        for (int e = 0; e < equations.elements().size(); e++) {
            if (Leaves.rubs(equations.elements().get(e))) {
                leaves.add(e);
            }
        }
    }

    /** What one stretch showed. */
    private static final class Seen {
        private final PolynomialRange range = new PolynomialRange(ROOM);
        private double cos;
        private double sin;
        private long samples;
        private double locked;
        private boolean off;

        double harmonic() {
            return 2 * Math.hypot(cos, sin) / samples;
        }

        double half() {
            return (range.greatest() - range.least()) / 2;
        }
    }

    /** The steady motion. */
    public ForcedPoint run() {
        double period = 2 * Math.PI / omega;
        double length = STRETCH * period;
        PiecewisePolynomial first = Sinusoid.grown(amplitude, omega, GROWTH, length);
        PiecewisePolynomial later = Sinusoid.steady(0, amplitude, omega, length);
        double[] q = rest.q();
        double[] v = new double[q.length];
        double[] s = new double[rest.friction().length];
        Seen before = null;
        Seen seen = null;
        boolean settled = false;
        for (int stretch = 0; stretch < MOST_STRETCHES && !settled; stretch++) {
            before = seen;
            seen = new Seen();
            Seen now = seen;
            Problem problem = new Problem(equations, heights(stretch == 0 ? first : later), q, v, s, length);
            var solution = RegimeSolver.solve(problem, step -> take(step, now, length));
            q = solution.q();
            v = solution.v();
            s = solution.friction();
            settled = before != null && alike(before, seen);
        }
        return new ForcedPoint(
                omega / (2 * Math.PI),
                seen.harmonic() / amplitude,
                seen.half() / amplitude,
                seen.locked / length,
                settled,
                seen.off);
    }

    private static boolean alike(Seen a, Seen b) {
        return Math.abs(a.harmonic() - b.harmonic()) < SETTLED * b.harmonic()
                && Math.abs(a.half() - b.half()) < SETTLED * b.half();
    }

    /** Wheels on the moving ground; hitches and the like stand still, a speed by which slopes are divided is 1. */
    private List<PiecewisePolynomial> heights(PiecewisePolynomial ground) {
        PiecewisePolynomial[] heights = new PiecewisePolynomial[equations.inputs()];
        Arrays.fill(heights, PiecewisePolynomial.constant(0));
        for (Element element : equations.elements()) {
            if (element.kind() == Element.Kind.CONTACT) {
                heights[element.input()] = ground;
            }
        }
        int speed = equations.pushes().speed();
        if (speed >= 0) {
            heights[speed] = PiecewisePolynomial.constant(1);
        }
        return List.of(heights);
    }

    private void take(Step step, Seen seen, double length) {
        Arrays.fill(work, 0);
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                step.addDisplacement(i, row[i], work);
            }
        }
        int degree = step.degree();
        seen.range.include(work, degree, step.end(), step.start(), step.h());
        double dt = 2 * Math.PI / omega / SAMPLES_PER_CYCLE;
        double to = step.start() + step.duration();
        long all = (long) STRETCH * SAMPLES_PER_CYCLE;
        for (double t = seen.samples * dt; seen.samples < all && (t < to || to >= length); t = seen.samples * dt) {
            double tau = Math.max(0, (t - step.start()) / step.h());
            double z = 0;
            for (int k = degree; k >= 0; k--) {
                z = z * tau + work[k];
            }
            seen.cos += z * Math.cos(omega * t);
            seen.sin += z * Math.sin(omega * t);
            seen.samples++;
        }
        boolean held = true;
        for (int e : leaves) {
            held &= step.isLocked(e);
        }
        seen.locked += held ? step.duration() : 0;
        for (int e = 0; e < equations.elements().size(); e++) {
            seen.off |= rest.compression()[e] > 0
                    && equations.elements().get(e).law().pushesOnly()
                    && step.isOff(e);
        }
    }
}
