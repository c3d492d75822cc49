package org.ridewright.validation;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.wheel.Bounce;

/**
 * A mass that falls from height h on a contact {@code N = max(0, k c + d ċ)}; ω = √(k/m), ω_d = ω√(1 − ζ²), v = √(2gh) at the touch.
 *
 * <pre>
 *   fall       √(2h/g)
 *   touch      d = 0: c = (g/ω²)(1 − cos ωt) + (v/ω) sin ωt, over at t_c = (2/ω)(π − arctan(vω/g))
 *   flight     d = 0: 2v/g; landings at √(2h/g) + j (t_c + 2v/g), tops at h
 *   d > 0      c = g/ω² + e^(−ζωt)(−(g/ω²) cos ω_d t + ((v − ζg/ω)/ω_d) sin ω_d t); N = m(g − c̈) is first 0 at t_N,
 *              whence the mass flies from −c(t_N) at −ċ(t_N) until it lands
 *   no weight  leaves at e = exp(−2ψ cot ψ) of its speed, ζ = cos ψ; exp(−2) for ζ = 1
 * </pre>
 */
final class Bouncing implements ReferenceProblem {
    private static final double MASS = 50;
    private static final double RATE = 1e6;
    private static final double HEIGHT = 0.1;
    private static final double G = VehicleModel.GRAVITY;
    private static final Source CLOSED = Source.closedForm("free fall and linear contact");
    private static final Source RESTITUTION = Source.closedForm("restitution of a linear contact");

    @Override
    public String title() {
        return "Bouncing contact";
    }

    @Override
    public String statement() {
        return "50 kg fall 100 mm on a contact of 1 MN/m that only pushes; then the same contact met at 1 m/s without weight.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        addElastic(rows);
        addDamped(rows, 0.15);
        for (double zeta : new double[] {0.05, 0.15, 0.5}) {
            double psi = Math.acos(zeta);
            addRestitution(rows, zeta, Math.exp(-2 * psi / Math.tan(psi)));
        }
        addRestitution(rows, 1, Math.exp(-2));
        return rows.list();
    }

    private static void addElastic(Rows rows) {
        double omega = Math.sqrt(RATE / MASS);
        double v = Math.sqrt(2 * G * HEIGHT);
        double touch = 2 / omega * (Math.PI - Math.atan(v * omega / G));
        double fall = Math.sqrt(2 * HEIGHT / G);
        Touches touches = new Touches();
        Crossings turns = Crossings.turns(0);
        RegimeSolver.solve(problem(0, 1, HEIGHT, 0, 1.6), step -> {
            touches.step(step);
            turns.step(step);
        });
        rows.relative(CLOSED, "first landing, ζ = 0", "s", fall, touches.landing(0), 1e-11);
        rows.relative(CLOSED, "time on the ground", "s", touch, touches.leaving(0) - touches.landing(0), 1e-9);
        rows.relative(CLOSED, "flight", "s", 2 * v / G, touches.landing(1) - touches.leaving(0), 1e-9);
        rows.relative(CLOSED, "fifth landing", "s", fall + 4 * (touch + 2 * v / G), touches.landing(4), 1e-9);
        rows.relative(
                CLOSED,
                "height after the fourth bounce",
                "m",
                HEIGHT,
                turns.events(false).get(3).value(),
                1e-9);
    }

    private static void addDamped(Rows rows, double zeta) {
        double omega = Math.sqrt(RATE / MASS);
        double damped = omega * Math.sqrt(1 - zeta * zeta);
        double sag = G / (omega * omega);
        double v = Math.sqrt(2 * G * HEIGHT);
        double a = -sag;
        double b = (v - zeta * G / omega) / damped;
        // with c and ċ, the force over mass is ω² c + 2ζω ċ
        double leaves = new BrentSolver(1e-15, 1e-15, 1e-15)
                .solve(
                        200,
                        t -> omega * omega * position(t, zeta, omega, sag, a, b)
                                + 2 * zeta * omega * speed(t, zeta, omega, a, b),
                        Math.PI / 2 / damped,
                        Math.PI / damped);
        double c = position(leaves, zeta, omega, sag, a, b);
        double up = -speed(leaves, zeta, omega, a, b);
        double flight = (up + Math.sqrt(up * up - 2 * G * c)) / G;
        Touches touches = new Touches();
        RegimeSolver.solve(problem(zeta, 1, HEIGHT, 0, 0.6), touches);
        rows.relative(CLOSED, "time under load, ζ = 0.15", "s", leaves, touches.leaving(0) - touches.landing(0), 1e-9);
        rows.relative(
                CLOSED, "from there to the next landing", "s", flight, touches.landing(1) - touches.leaving(0), 1e-9);
    }

    private static double position(double t, double zeta, double omega, double sag, double a, double b) {
        double damped = omega * Math.sqrt(1 - zeta * zeta);
        return sag + Math.exp(-zeta * omega * t) * (a * Math.cos(damped * t) + b * Math.sin(damped * t));
    }

    private static double speed(double t, double zeta, double omega, double a, double b) {
        double damped = omega * Math.sqrt(1 - zeta * zeta);
        return Math.exp(-zeta * omega * t)
                * ((b * damped - zeta * omega * a) * Math.cos(damped * t)
                        - (a * damped + zeta * omega * b) * Math.sin(damped * t));
    }

    private static void addRestitution(Rows rows, double zeta, double expected) {
        double after =
                RegimeSolver.solve(problem(zeta, 0, 0.01, -1, 0.2), step -> {}).v()[0];
        rows.relative(RESTITUTION, "speed after over before, ζ = " + zeta, "1", expected, after, 1e-9);
        rows.relative(
                RESTITUTION,
                "restitution that a file's ζ stands for, ζ = " + zeta,
                "1",
                expected,
                Bounce.restitution(zeta),
                1e-12);
    }

    private static Problem problem(double zeta, double gravity, double height, double speed, double duration) {
        ForceLaw law = ForceLaw.contact(RATE, 2 * zeta * Math.sqrt(RATE * MASS));
        Element ground = new Element("ground", Element.Kind.CONTACT, new double[] {-1}, 0, law);
        return Oscillator.problem(
                MASS,
                gravity * MASS * G,
                List.of(ground),
                List.of(PiecewisePolynomial.constant(0)),
                height,
                speed,
                duration);
    }

    /** When the first element begins and ceases to push. */
    private static final class Touches implements StepListener {
        private final List<Double> landings = new ArrayList<>();
        private final List<Double> leavings = new ArrayList<>();
        private boolean off = true;

        @Override
        public void step(Step step) {
            if (step.isOff(0) != off) {
                off = step.isOff(0);
                (off ? leavings : landings).add(step.start());
            }
        }

        double landing(int i) {
            return landings.get(i);
        }

        double leaving(int i) {
            return leavings.get(i);
        }
    }
}
