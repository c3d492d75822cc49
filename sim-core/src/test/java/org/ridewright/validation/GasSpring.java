package org.ridewright.validation;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.ridewright.dynamics.Element;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.SpringKind;

/**
 * A mass on enclosed gas, {@code p Vⁿ} constant, piston area A; it rests where the gas carries its weight W at the volume V₀, at
 * the pressure {@code p₀ = p_a + W/A}. With x up from there and {@code f(x) = p₀ A (1 + Ax/V₀)^(−n) − p_a A},
 *
 * <pre>
 *   m ẍ = f(x) − W                            rate at rest  n p₀ A²/V₀,  frequency of small swings its root over m
 *   ½ m ẋ² = ∫ (f − W) dx from the turn       lower turn x_b:  the integral from x_t to x_b vanishes
 *   T = 2 ∫ dx/ẋ                              with x = (x_t + x_b)/2 + (x_t − x_b)/2 · sin φ a smooth integrand, by Gauss's rule
 * </pre>
 *
 * The standard atmosphere p_a = 101 325 Pa is exact by definition.
 */
final class GasSpring implements ReferenceProblem {
    private static final double AMBIENT = 101_325;
    private static final double AREA = 0.015;
    private static final double VOLUME = 0.0049;
    private static final double WEIGHT = 4000;
    private static final double MASS = 400;
    private static final double TOP = 0.06;
    private static final double PRESSURE = AMBIENT + WEIGHT / AREA;
    private static final Source CLOSED = Source.closedForm("p Vⁿ constant");
    private static final Source ENERGY = Source.closedForm("energy integral");

    @Override
    public String title() {
        return "Gas spring";
    }

    @Override
    public String statement() {
        return "400 kg and a load of 4 kN on 4.9 l of gas under 150 cm², n = 1.3 and 1; small swings, and let go 60 mm up.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double n : new double[] {1.3, 1}) {
            ForceLaw law = law(n);
            double rest = law.gas().orElseThrow().length() - VOLUME / AREA;
            String of = ", n = " + (n == 1 ? "1" : String.valueOf(n));
            double rate = n * PRESSURE * AREA * AREA / VOLUME;
            rows.relative(CLOSED, "rate at rest" + of, "N/m", rate, law.elasticRate(rest), 1e-12);
            double small = 1e-6;
            rows.relative(
                    CLOSED,
                    "ω of small swings" + of,
                    "rad/s",
                    Math.sqrt(rate / MASS),
                    2 * Math.PI / swing(law, rest, small)[1],
                    1e-7);
            double bottom = bottom(n);
            double[] found = swing(law, rest, TOP);
            rows.relative(ENERGY, "lower turn" + of, "mm", 1000 * bottom, 1000 * found[0], 1e-9);
            rows.relative(ENERGY, "period" + of, "s", period(n, bottom), found[1], 1e-9);
        }
        return rows.list();
    }

    /** Lower turn (m) and period (s), mean of five, of a swing let go this far up. */
    private static double[] swing(ForceLaw law, double rest, double up) {
        Element gas = new Element("gas", Element.Kind.SPRING, new double[] {-1}, -1, law);
        Crossings turns = new Crossings(Reading.velocity(0), Reading.displacement(0), 1e-9 * up);
        RegimeSolver.solve(Oscillator.problem(MASS, WEIGHT, List.of(gas), List.of(), up - rest, 0, 7), turns);
        List<Crossings.Event> events = turns.events();
        return new double[] {
            events.get(0).value() + rest, (events.get(10).time() - events.get(0).time()) / 5
        };
    }

    private static ForceLaw law(double n) {
        return SpringLaws.elastic(
                SpringKind.AIR,
                new Elasticity.GasColumn(
                        Measure.of(AREA, QuantityKind.AREA),
                        Measure.of(VOLUME, QuantityKind.VOLUME),
                        Measure.of(WEIGHT, QuantityKind.FORCE),
                        n));
    }

    /** {@code ∫ (f − W) dx} from 0 to x (J). */
    private static double work(double n, double x) {
        double length = VOLUME / AREA;
        double ratio = 1 + x / length;
        double gas = n == 1 ? Math.log(ratio) : (1 - Math.pow(ratio, 1 - n)) / (n - 1);
        return PRESSURE * AREA * (length * gas - x);
    }

    private static double bottom(double n) {
        double goal = work(n, TOP);
        return new BrentSolver(1e-15, 1e-16, 1e-16).solve(200, x -> work(n, x) - goal, -0.2, -1e-3);
    }

    private static double period(double n, double bottom) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(120, -Math.PI / 2, Math.PI / 2);
        double middle = (TOP + bottom) / 2;
        double half = (TOP - bottom) / 2;
        double goal = work(n, TOP);
        return 2
                * rule.integrate(phi -> {
                    double kinetic = work(n, middle + half * Math.sin(phi)) - goal;
                    return half * Math.cos(phi) / Math.sqrt(2 * kinetic / MASS);
                });
    }
}
