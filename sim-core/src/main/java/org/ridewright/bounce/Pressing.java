package org.ridewright.bounce;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.solver.StepListener;

/**
 * The part of a bounce test before the letting go: the force grows as {@code F (35 τ⁴ − 84 τ⁵ + 70 τ⁶ − 20 τ⁷)}, whose first three derivatives
 * vanish at both ends, so that it stirs next to nothing, and is held.
 */
final class Pressing {
    /** First guess of the force that a depth takes (N). */
    private static final double FIRST = 300;
    /** A force grows by at most this from one trial to the next. */
    private static final double GROWTH = 3;

    /** Nothing presses a vehicle down harder than with this many times its weight. */
    private static final double MOST_WEIGHTS = 3;

    private static final int MOST_TRIALS = 60;
    /** To which a depth is met (of the depth). */
    private static final double DEPTH_ERROR = 1e-7;

    private final VehicleModel model;
    private final List<PiecewisePolynomial> heights;
    private final double tolerance;
    private final double[] row;
    private final Equations pressed;

    /** @param force that was needed (N), depth that it reached (m), and the state in which the body is let go */
    record Outcome(double force, double depth, RingDown.State state, double residual) {}

    /** @param row by how much the pressed place moves the way it is pressed */
    Pressing(VehicleModel model, List<PiecewisePolynomial> heights, double tolerance, double[] row) {
        this.model = model;
        this.heights = heights;
        this.tolerance = tolerance;
        this.row = row.clone();
        pressed = model.equations().withForce("push", row);
    }

    /** Presses with the force that gives the depth, or with the most that there is. */
    Outcome run(Handling handling, Optional<TraceSampler> sampler) {
        double force = Double.isInfinite(handling.depth()) ? handling.mostForce() : forceFor(handling);
        return press(force, sampler);
    }

    /** By false position (Illinois) once the depth lies between two trials. */
    private double forceFor(Handling handling) {
        double weight = model.totalMass() * VehicleModel.GRAVITY;
        double most = Math.min(handling.mostForce(), handling.lifts() ? weight : MOST_WEIGHTS * weight);
        double low = 0;
        double missLow = -handling.depth();
        double high = Double.NaN;
        double missHigh = Double.NaN;
        double force = Math.min(FIRST, most);
        for (int i = 0; i < MOST_TRIALS; i++) {
            double miss = press(force, Optional.empty()).depth() - handling.depth();
            if (Math.abs(miss) <= DEPTH_ERROR * handling.depth()) {
                return force;
            }
            if (miss < 0) {
                if (force >= most) {
                    return tooLittle(handling, most, miss + handling.depth());
                }
                if (low > 0 && !Double.isNaN(high)) {
                    missHigh /= 2;
                }
                double slope = (miss - missLow) / (force - low);
                low = force;
                missLow = miss;
                if (Double.isNaN(high)) {
                    force = Math.min(most, Math.min(GROWTH * force, force - 1.05 * miss / slope));
                    continue;
                }
            } else {
                if (!Double.isNaN(high)) {
                    missLow /= 2;
                }
                high = force;
                missHigh = miss;
            }
            force = (low * missHigh - high * missLow) / (missHigh - missLow);
        }
        throw new RideException("'" + model.vehicle().name() + "': no force was found that moves the body by "
                + millimetres(handling.depth()));
    }

    private double tooLittle(Handling handling, double most, double reached) {
        if (most < handling.mostForce()) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "'%s', load case '%s': not even %s its weight moves the body by %s there (%s); ask for less",
                    model.vehicle().name(),
                    model.loadCase().name(),
                    handling.lifts() ? "all" : "three times",
                    millimetres(handling.depth()),
                    millimetres(reached)));
        }
        return most;
    }

    private static String millimetres(double length) {
        return new BigDecimal(1000 * length).round(new MathContext(3)).toPlainString() + " mm";
    }

    private Outcome press(double force, Optional<TraceSampler> sampler) {
        List<PiecewisePolynomial> inputs = new ArrayList<>(heights);
        double t = Handling.RAMP;
        inputs.add(new PiecewisePolynomial(
                new double[] {0, t},
                new double[][] {
                    {
                        0,
                        0,
                        0,
                        0,
                        35 * force / Math.pow(t, 4),
                        -84 * force / Math.pow(t, 5),
                        70 * force / Math.pow(t, 6),
                        -20 * force / Math.pow(t, 7)
                    }
                },
                force));
        double[] q = model.rest().q();
        double[] v = new double[q.length];
        Problem problem = new Problem(pressed, inputs, q, v, model.rest().friction(), Handling.RAMP + Handling.HOLD);
        StepListener listener = sampler.<StepListener>map(s -> s).orElse(step -> {});
        Solution solution = RegimeSolver.solve(problem, tolerance, listener);
        double depth = BodyReading.dot(row, solution.q()) - BodyReading.dot(row, q);
        return new Outcome(
                force,
                depth,
                new RingDown.State(solution.q(), solution.v(), solution.friction()),
                solution.energy().relativeResidual());
    }
}
