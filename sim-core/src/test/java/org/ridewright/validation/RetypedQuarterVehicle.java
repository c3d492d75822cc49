package org.ridewright.validation;

import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.SpringLaws;

/**
 * A quarter vehicle with everything at once, written twice. Body and wheel rise by z_b, z_w; c = z_w − z_b, c_t = u − z_w.
 *
 * <pre>
 *   m_b z̈_b = f − m_b g                   f = k c + k_h max(0, c − g_h) + d(ċ) ċ + s,   d = 800 or 1600 N·s/m for ċ > 0 or < 0
 *   m_w z̈_w = N − f − m_w g               N = max(0, k_t c_t + d_t ċ_t) while c_t > 0, else 0
 *   ṡ = k_p ċ, but 0 where |s| = F and ċ s > 0
 *   u = H (1 − cos(2πt/T))/2 for t &lt; T, else 0
 * </pre>
 *
 * <p>The second time as plain right-hand sides without pieces, guards or polynomials, integrated by the Dormand–Prince method of
 * order 8(5,3) of the Hipparchus library, which finds its way over the kinks by refusing steps (relative and absolute tolerance
 * 1e-12 on every state).
 */
final class RetypedQuarterVehicle implements ReferenceProblem {
    private static final double BODY = 300;
    private static final double WHEEL = 40;
    private static final double SPRING = 20_000;
    private static final double HELPER = 40_000;
    private static final double GAP = 0.16;
    private static final double BUMP = 800;
    private static final double REBOUND = 1600;
    private static final double LOCKED = 60_000;
    private static final double FRICTION = 150;
    private static final double TYRE = 200_000;
    private static final double TYRE_DAMPING = 300;
    private static final double G = 9.80665;
    private static final double HUMP = 0.1;
    private static final double PASSAGE = 0.12;
    private static final Source LIBRARY = Source.integrator("Hipparchus, Dormand–Prince 8(5,3), laws written anew");

    @Override
    public String title() {
        return "Quarter vehicle written anew for a library's integrator";
    }

    @Override
    public String statement() {
        return "Spring with helper, dry friction, bump and rebound damping and a tyre that leaves the ground, over a "
                + "haversine hump of 100 mm in 0.12 s; nothing but the numbers is shared.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        Extremes body = new Extremes(Reading.acceleration(0), 0);
        double[] aloft = {0};
        boolean[] helped = {false};
        Problem whole = problem(1.5);
        RegimeSolver.solve(whole, step -> {
            body.step(step);
            aloft[0] += step.isOff(2) ? step.duration() : 0;
            helped[0] |= step.isStageOn(0, 0);
        });
        if (aloft[0] < 0.02 || !helped[0]) {
            throw new IllegalStateException("the wheel must leave the ground and the helper touch");
        }
        for (double t : new double[] {0.1, 0.3, 0.6, 1.5}) {
            Solution ours = RegimeSolver.solve(problem(t), step -> {});
            double[] theirs = integrated(t);
            String at = " at " + t + " s";
            rows.absolute(LIBRARY, "body" + at, "mm", 1000 * theirs[0], 1000 * ours.q()[0], 1e-6);
            rows.absolute(LIBRARY, "wheel" + at, "mm", 1000 * theirs[1], 1000 * ours.q()[1], 1e-6);
            rows.absolute(LIBRARY, "speed of the body" + at, "m/s", theirs[2], ours.v()[0], 1e-7);
            rows.absolute(LIBRARY, "friction" + at, "N", theirs[4], ours.friction()[0], 1e-4);
        }
        return rows.list();
    }

    private static double[] rest() {
        double wheel = -(BODY + WHEEL) * G / TYRE;
        return new double[] {wheel - BODY * G / SPRING, wheel};
    }

    private static Problem problem(double duration) {
        ForceLaw spring = SpringLaws.withStage(ForceLaw.spring(SPRING), HELPER, GAP, 1)
                .withFriction(FrictionLaw.single(0, FRICTION, LOCKED));
        Equations equations = new Equations(
                new double[] {BODY, 0, 0, WHEEL},
                new double[4],
                new double[] {BODY * G, WHEEL * G},
                List.of(
                        new Element("spring", Element.Kind.SPRING, new double[] {-1, 1}, -1, spring),
                        new Element(
                                "damper",
                                Element.Kind.DAMPER,
                                new double[] {-1, 1},
                                -1,
                                SpringLaws.bilinear(BUMP, REBOUND)),
                        new Element(
                                "tyre",
                                Element.Kind.CONTACT,
                                new double[] {0, -1},
                                0,
                                ForceLaw.contact(TYRE, TYRE_DAMPING))),
                1);
        return new Problem(equations, List.of(hump()), rest(), new double[2], new double[1], duration);
    }

    /** {@code H (1 − cos ωt)/2} up to T. */
    private static PiecewisePolynomial hump() {
        int pieces = 24;
        PiecewisePolynomial cosine = Drives.cosine(-HUMP / 2, 2 * Math.PI / PASSAGE, 0, PASSAGE, pieces);
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i < pieces; i++) {
            joints[i + 1] = i + 1 == pieces ? PASSAGE : cosine.joint(i + 1);
            a[i] = cosine.coefficients(i);
            a[i][0] += HUMP / 2;
        }
        return new PiecewisePolynomial(joints, a, 0);
    }

    private static double[] integrated(double duration) {
        double[] rest = rest();
        double[] y = {rest[0], rest[1], 0, 0, 0};
        double middle = Math.min(PASSAGE, duration);
        y = integrated(y, 0, middle);
        return duration > middle ? integrated(y, middle, duration) : y;
    }

    private static double[] integrated(double[] y, double from, double to) {
        return new DormandPrince853Integrator(1e-15, 1e-3, 1e-12, 1e-12)
                .integrate(new Motion(), new ODEState(from, y), to)
                .getPrimaryState();
    }

    /** State z_b, z_w, ż_b, ż_w, s. */
    private static final class Motion implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 5;
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            double w = 2 * Math.PI / PASSAGE;
            double u = t < PASSAGE ? HUMP / 2 * (1 - Math.cos(w * t)) : 0;
            double rise = t < PASSAGE ? HUMP / 2 * w * Math.sin(w * t) : 0;
            double c = y[1] - y[0];
            double speed = y[3] - y[2];
            double f = SPRING * c + HELPER * Math.max(0, c - GAP) + (speed > 0 ? BUMP : REBOUND) * speed + y[4];
            double depth = u - y[1];
            double n = depth > 0 ? Math.max(0, TYRE * depth + TYRE_DAMPING * (rise - y[3])) : 0;
            boolean slides = Math.abs(y[4]) >= FRICTION && y[4] * speed > 0;
            return new double[] {y[2], y[3], f / BODY - G, (n - f) / WHEEL - G, slides ? 0 : LOCKED * speed};
        }
    }
}
