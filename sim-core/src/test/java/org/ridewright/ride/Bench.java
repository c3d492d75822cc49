package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.solver.ReferenceSolver;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;

/** One or two masses one above the other, under gravity, on a bench that may move. */
final class Bench {
    static final double G = VehicleModel.GRAVITY;
    static final PiecewisePolynomial LEVEL = PiecewisePolynomial.constant(0);

    private Bench() {}

    /** A mass at height z that the bench pushes, {@code c = u − z}. */
    static Problem one(double mass, ForceLaw contact, PiecewisePolynomial bench, double z, double v, double duration) {
        Element element = new Element("contact", Element.Kind.CONTACT, new double[] {-1}, 0, contact);
        return problem(new double[] {mass}, List.of(element), bench, new double[] {z}, new double[] {v}, 0, duration);
    }

    /**
     * A body on a spring on an axle on the bench; coordinates body, axle.
     *
     * @param friction of the spring's slider at the start (N)
     */
    static Problem two(
            double body,
            double axle,
            ForceLaw spring,
            ForceLaw contact,
            PiecewisePolynomial bench,
            double[] z,
            double[] v,
            double friction,
            double duration) {
        List<Element> elements = List.of(
                new Element("spring", Element.Kind.SPRING, new double[] {-1, 1}, -1, spring),
                new Element("contact", Element.Kind.CONTACT, new double[] {0, -1}, 0, contact));
        return problem(new double[] {body, axle}, elements, bench, z, v, friction, duration);
    }

    private static Problem problem(
            double[] masses,
            List<Element> elements,
            PiecewisePolynomial bench,
            double[] z,
            double[] v,
            double friction,
            double duration) {
        int n = masses.length;
        double[] matrix = new double[n * n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++) {
            matrix[i * n + i] = masses[i];
            weights[i] = masses[i] * G;
        }
        double[] s = new double[elements.get(0).law().friction().states()];
        if (s.length > 0) {
            s[0] = friction;
        }
        Equations equations = new Equations(matrix, new double[n * n], weights, elements, 1);
        return new Problem(equations, List.of(bench), z, v, s, duration);
    }

    /** Solves a problem and looks at every force of every step; the energy books must close. */
    static Solution right(Problem problem) {
        LawScan scan = new LawScan(problem, 40);
        Solution solution = RegimeSolver.solve(problem, scan);
        scan.assertNothingMissed();
        assertThat(solution.energy().relativeResidual()).isLessThan(1e-8);
        return solution;
    }

    /** Greatest difference of a coordinate from the reference solver at a thousand samples a second. */
    static double apartFromReference(Problem problem) {
        double[][] own = new double[problem.q().length][(int) (problem.duration() * 1000) + 2];
        int[] next = {0};
        RegimeSolver.solve(problem, step -> {
            while (next[0] / 1000.0 < step.start() + step.duration() && next[0] < own[0].length) {
                for (int i = 0; i < own.length; i++) {
                    double[] q = new double[SampleRecorder.ROOM];
                    step.addDisplacement(i, 1, q);
                    own[i][next[0]] = LawScan.value(q, (next[0] / 1000.0 - step.start()) / step.h());
                }
                next[0]++;
            }
        });
        double[] worst = {0};
        ReferenceSolver.solve(problem, 1e-12, 1000, (t, q, v, a) -> {
            for (int i = 0; i < own.length; i++) {
                worst[0] = Math.max(worst[0], Math.abs(q[i] - own[i][(int) Math.round(1000 * t)]));
            }
        });
        return worst[0];
    }
}
