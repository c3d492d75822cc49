package org.ridewright.friction;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.StaticState;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialRange;
import org.ridewright.math.Sinusoid;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
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

    private static final int MOST_STRETCHES = 30;
    /** Change that is still to come at which the motion counts as steady, over the motion. */
    private static final double SETTLED = 2e-3;

    /** Changes this small come from the solver and the ends of stretches alone. */
    private static final double STEADY = 1e-5;

    /** Motion over the road's beyond which there is nothing to be read from it. */
    private static final double ENDLESS = 1000;

    private static final int SAMPLES_PER_CYCLE = 64;
    private static final int ROOM = 64;

    private final Equations equations;
    private final StaticState rest;
    private final double[] row;
    private final double ground;
    private int contact = -1;
    private final double amplitude;
    private final double omega;
    private final List<Integer> leaves;
    /** Which stops and helpers of each element touch in the first instant, at rest. */
    private final List<boolean[]> stages = new ArrayList<>();

    private boolean begun;
    private final double[] work = new double[ROOM];

    /**
     * @param row of the place on the coordinates; not modified
     * @param ground part of the ground's own motion that is added: 0 for the place's motion, −1 for that against the ground
     * @param amplitude Y (m), > 0
     * @param frequency (Hz), > 0
     */
    public ForcedRun(
            Equations equations, StaticState rest, double[] row, double ground, double amplitude, double frequency) {
        this.equations = equations;
        this.rest = rest;
        this.row = row;
        this.ground = ground;
        this.amplitude = amplitude;
        omega = 2 * Math.PI * frequency;
        leaves = new ArrayList<>();
        for (int e = 0; e < equations.elements().size(); e++) {
            Element element = equations.elements().get(e);
            stages.add(new boolean[element.law().allStages().count()]);
            if (Leaves.rubs(element)) {
                leaves.add(e);
            }
            if (element.kind() == Element.Kind.CONTACT) {
                contact = element.input();
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

    /** The steady motion; none where the solver gives up. */
    public ForcedPoint run() {
        try {
            return steady();
        } catch (RideException gaveUp) {
            return ForcedPoint.none(omega / (2 * Math.PI), String.valueOf(gaveUp.getMessage()));
        }
    }

    private ForcedPoint steady() {
        double period = 2 * Math.PI / omega;
        double length = STRETCH * period;
        PiecewisePolynomial first = Sinusoid.grown(amplitude, omega, GROWTH, length);
        PiecewisePolynomial later = Sinusoid.steady(0, amplitude, omega, length);
        double[] q = rest.q();
        double[] v = new double[q.length];
        double[] s = new double[rest.friction().length];
        Deque<Seen> last = new ArrayDeque<>();
        boolean settled = false;
        for (int stretch = 0; stretch < MOST_STRETCHES && !settled; stretch++) {
            Seen now = new Seen();
            last.addFirst(now);
            Problem problem = new Problem(equations, heights(stretch == 0 ? first : later), q, v, s, length);
            Solution solution = RegimeSolver.solve(problem, step -> take(step, now, length));
            q = solution.q();
            v = solution.v();
            s = solution.friction();
            settled = isSettled(last);
            if (!(now.half() < ENDLESS * amplitude)) {
                return ForcedPoint.none(omega / (2 * Math.PI), "the motion grows without end");
            }
        }
        Seen seen = last.getFirst();
        return new ForcedPoint(
                omega / (2 * Math.PI),
                seen.harmonic() / amplitude,
                seen.half() / amplitude,
                seen.locked / length,
                settled,
                seen.off,
                "");
    }

    /** By the last three stretches. */
    private static boolean isSettled(Deque<Seen> last) {
        if (last.size() < 4) {
            return false;
        }
        Seen[] s = last.stream().limit(3).toArray(Seen[]::new);
        return isNear(s[2].harmonic(), s[1].harmonic(), s[0].harmonic())
                && isNear(s[2].half(), s[1].half(), s[0].half());
    }

    /**
     * Whether a sequence is near its end, changes shrinking by the same ratio each time: {@code d_2 ρ/(1 − ρ)} with {@code ρ = d_2/d_1} is still to come.
     */
    private static boolean isNear(double a, double b, double c) {
        double first = Math.abs(b - a);
        double second = Math.abs(c - b);
        if (Math.max(first, second) < STEADY * c) {
            return true;
        }
        return second < first && second * second / (first - second) < SETTLED * c && second < SETTLED * c;
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
        if (ground != 0) {
            step.addHeight(contact, ground, work);
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
            boolean[] atRest = stages.get(e);
            for (int p = 0; p < atRest.length; p++) {
                if (!begun) {
                    atRest[p] = step.isStageOn(e, p);
                }
                seen.off |= step.isStageOn(e, p) != atRest[p];
            }
            seen.off |= rest.compression()[e] > 0
                    && equations.elements().get(e).law().pushesOnly()
                    && step.isOff(e);
        }
        begun = true;
    }
}
