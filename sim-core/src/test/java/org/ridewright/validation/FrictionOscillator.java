package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Friction;

/**
 * {@code m ẍ + k x + s = F₀ cos ωt} with m = 1 kg, k = 1 N/m and F₀ = 1 N, so that ω is the ratio r; s is a slider of limit F and
 * locked rate k_p between mass and ground. The force comes through the spring, whose far end moves by {@code cos ωt}.
 *
 * @param r forcing over natural frequency
 * @param friction F (N)
 * @param lockedRate k_p (N/m)
 */
record FrictionOscillator(double r, double friction, double lockedRate) {
    private static final int CYCLES_AT_FIRST = 6;
    private static final int MOST_PASSES = 15;
    private static final double PERIODIC = 1e-11;
    private static final double NUDGE = 1e-6;

    /** Locked rate of a description that asks for rigid friction, over the elastic rate. */
    static double rigidMultiple() {
        Friction rigid = new Friction(
                Measure.of(0, QuantityKind.RATIO),
                Measure.of(1, QuantityKind.FORCE),
                new Friction.LockedRate.Rigid(),
                List.of(),
                Optional.empty());
        return SpringLaws.withFriction(ForceLaw.spring(1), 1, rigid).friction().lockedRate();
    }

    private double cycle() {
        return 2 * Math.PI / r;
    }

    /**
     * Half of greatest less least position in the motion that repeats from cycle to cycle. Near resonance a start from rest takes
     * thousands of cycles to settle, so the state that one cycle carries into itself is looked for by Newton's method on position
     * and speed, the slider's force following; it is the motion from rest that comes nearer until it repeats to 1e-11.
     */
    double steadyAmplitude() {
        Solution start = run(new double[3], CYCLES_AT_FIRST * cycle(), new Extremes(Reading.displacement(0), 0));
        double[] z = state(start);
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] after = afterOneCycle(z);
            double e0 = after[0] - z[0];
            double e1 = after[1] - z[1];
            if (Math.hypot(e0, e1) < PERIODIC) {
                break;
            }
            double[] byPosition = afterOneCycle(new double[] {z[0] + NUDGE, z[1], z[2]});
            double[] bySpeed = afterOneCycle(new double[] {z[0], z[1] + NUDGE, z[2]});
            double a = (byPosition[0] - after[0]) / NUDGE - 1;
            double b = (bySpeed[0] - after[0]) / NUDGE;
            double c = (byPosition[1] - after[1]) / NUDGE;
            double d = (bySpeed[1] - after[1]) / NUDGE - 1;
            double determinant = a * d - b * c;
            z = new double[] {z[0] - (d * e0 - b * e1) / determinant, z[1] - (a * e1 - c * e0) / determinant, after[2]};
        }
        Extremes extremes = new Extremes(Reading.displacement(0), 0);
        run(z, cycle(), extremes);
        return extremes.amplitude();
    }

    private double[] afterOneCycle(double[] state) {
        return state(run(state, cycle(), new Extremes(Reading.displacement(0), 0)));
    }

    private static double[] state(Solution solution) {
        return new double[] {solution.q()[0], solution.v()[0], solution.friction()[0]};
    }

    /** From position, speed and slider's force at the top of the forcing. */
    private Solution run(double[] state, double duration, Extremes extremes) {
        FrictionLaw slider = FrictionLaw.single(0, friction, lockedRate);
        List<Element> elements = List.of(
                new Element("spring", Element.Kind.SPRING, new double[] {-1}, 0, ForceLaw.spring(1)),
                new Element(
                        "slider",
                        Element.Kind.SPRING,
                        new double[] {-1},
                        -1,
                        ForceLaw.spring(0).withFriction(slider)));
        Equations equations = new Equations(new double[] {1}, new double[1], new double[1], elements, 1);
        List<PiecewisePolynomial> forcing = List.of(Drives.cosine(1, r, 0, duration));
        Problem problem = new Problem(
                equations,
                forcing,
                new double[] {state[0]},
                new double[] {state[1]},
                new double[] {state[2]},
                duration);
        return RegimeSolver.solve(problem, extremes);
    }
}
