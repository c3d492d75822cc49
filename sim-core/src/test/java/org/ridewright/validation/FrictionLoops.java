package org.ridewright.validation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * Steady loops of a spring with sliders between ±X, each slider with limit S_j behind k_j.
 *
 * <pre>
 *   one slider (Jenkins)       loop area 4 S (X − S/k_p), 0 while X ≤ S/k_p; secant rate k + S/X
 *   several in parallel        backbone F_b(x) = Σ min(k_j x, S_j); by Masing's rule the area is 8 ∫₀^X F_b dx − 4 X F_b(X)
 *   limits spread evenly       sum of the rates k, of the limits S: F_b = k x − k² x²/(4S), area k² X³/(3S) while X ≤ 2S/k
 * </pre>
 *
 * <p>The element follows a triangular path and no mass hangs on it; areas are differences of what two runs that end a cycle apart have
 * dissipated. Source: Jenkins and Masing (from memory); the last line derived from them.
 */
final class FrictionLoops implements ReferenceProblem {
    private static final double QUARTER = 0.25;
    private static final double RATE = 40_000;
    private static final Source JENKINS = Source.closedForm("Jenkins element");
    private static final Source MASING = Source.closedForm("Masing's rule");
    private static final Source SPREAD = Source.closedForm("limits spread evenly");

    @Override
    public String title() {
        return "Friction loops of one and of many sliders";
    }

    @Override
    public String statement() {
        return "Energy lost in a steady cycle of ±X, k = 40 N/mm; one slider of 200 N behind 80 N/mm, five unlike ones, "
                + "and 200 whose limits are spread evenly.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        double limit = 200;
        double kp = 80_000;
        FrictionLaw one = FrictionLaw.single(0, limit, kp);
        for (double x : new double[] {0.003, 0.02}) {
            rows.relative(
                    JENKINS,
                    "one slider, X = " + Numbers.mm(x),
                    "J",
                    4 * limit * (x - limit / kp),
                    loop(one, x),
                    1e-10);
        }
        rows.absolute(JENKINS, "one slider held, X = " + Numbers.mm(0.0024), "J", 0, loop(one, 0.0024), 1e-10);
        rows.relative(
                JENKINS,
                "secant rate of one slider, X = " + Numbers.mm(0.02),
                "N/m",
                RATE + limit / 0.02,
                secant(one, 0.02),
                1e-10);
        double[] shares = {0.1, 0.15, 0.2, 0.25, 0.3};
        double[] rates = {50_000, 40_000, 30_000, 20_000, 10_000};
        FrictionLaw five = new FrictionLaw(0, limit, shares, rates, 0);
        for (double x : new double[] {0.001, 0.003, 0.02}) {
            rows.relative(
                    MASING,
                    "five sliders, X = " + Numbers.mm(x),
                    "J",
                    masing(limit, shares, rates, x),
                    loop(five, x),
                    1e-10);
        }
        FrictionLaw many = spread(limit, kp, 200);
        for (double share : new double[] {0.5, 1, 2}) {
            double x = share * limit / kp;
            rows.relative(
                    SPREAD,
                    "200 sliders, X = " + Numbers.mm(x),
                    "J",
                    kp * kp * x * x * x / (3 * limit),
                    loop(many, x),
                    share < 1 ? 5e-4 : 1e-4);
        }
        return rows.list();
    }

    /** Each with the same rate, yielding at the middles of equal parts of 0 to 2S/k. */
    private static FrictionLaw spread(double limit, double rate, int number) {
        double[] rates = new double[number];
        Arrays.fill(rates, rate / number);
        double[] shares = IntStream.range(0, number)
                .mapToDouble(j -> 2 * (j + 0.5) / number / number)
                .toArray();
        return new FrictionLaw(0, limit, shares, rates, 0);
    }

    /** {@code 8 ∫ F_b dx − 4 X F_b(X)}. */
    private static double masing(double limit, double[] shares, double[] rates, double x) {
        double integral = 0;
        double backbone = 0;
        for (int j = 0; j < shares.length; j++) {
            double yield = shares[j] * limit / rates[j];
            double elastic = Math.min(x, yield);
            integral += rates[j] * elastic * elastic / 2 + rates[j] * yield * (x - elastic);
            backbone += rates[j] * elastic;
        }
        return 8 * integral - 4 * x * backbone;
    }

    private static double loop(FrictionLaw friction, double amplitude) {
        return lost(friction, amplitude, 9) - lost(friction, amplitude, 5);
    }

    /** Energy lost after a number of quarter cycles (J). */
    private static double lost(FrictionLaw friction, double amplitude, int quarters) {
        return run(friction, amplitude, quarters, new Extremes(Reading.force(0), 0))
                .energy()
                .dissipatedByElement()[0];
    }

    /** Greatest less least force over the travel between them. */
    private static double secant(FrictionLaw friction, double amplitude) {
        Extremes force = new Extremes(Reading.force(0), 5 * QUARTER);
        run(friction, amplitude, 9, force);
        return force.amplitude() / amplitude;
    }

    private static Solution run(FrictionLaw friction, double amplitude, int quarters, Extremes force) {
        ForceLaw law = ForceLaw.spring(RATE).withFriction(friction);
        PiecewisePolynomial path = Drives.triangle(amplitude, QUARTER, 6);
        Element spring = new Element("spring", Element.Kind.SPRING, new double[] {0}, 0, law);
        return RegimeSolver.solve(
                Oscillator.problem(1, 0, List.of(spring), List.of(path), 0, 0, quarters * QUARTER), force);
    }
}
