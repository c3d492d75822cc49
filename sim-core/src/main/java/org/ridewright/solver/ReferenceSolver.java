package org.ridewright.solver;

import java.util.Arrays;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import org.ridewright.dynamics.RideException;

/**
 * The cross-check of {@link RegimeSolver}: the same equations and guards advanced by an adaptive Dormand–Prince integrator of order 8,
 * one call per regime and stretch between joints, stopped by the first guard to be crossed.
 *
 * <p>Slow and for checking only. It shares with the solver that it checks {@link FlatLaws} (equations and laws in arrays, the round-off
 * allowed to each guard), {@link GuardTable} (which guards there are), {@link Regime} (the pieces at the start, what a crossing changes,
 * the straight law of the present pieces) and {@link HeightCursor} (heights): what is wrong in these is wrong in both. Series, steps,
 * constants of a regime, guards as polynomials, the search for crossings and the friction of locked sliders are its own.
 */
public final class ReferenceSolver {
    /** Of the integrator (s). */
    private static final double LARGEST_STEP = 2e-3;
    /** Time between looks at the guards; one that dips below zero and back between two looks is missed (s). */
    private static final double CHECK = 1e-4;

    private static final int MOST_SWITCHES_AT_INSTANT = 400;
    /** Powers of the heights that there is room for, as the regime solver takes them. */
    private static final int MOST_HEIGHT_ROWS = 26;

    private final Problem problem;
    private final FlatLaws laws;
    private final Regime regime;
    private final GuardTable table;
    private final PointLaws point;
    private final HeightCursor heights;
    private final double tolerance;
    private final double[] u;
    private final int n;
    private final int ns;
    private double t;
    private long switches;

    private ReferenceSolver(Problem problem, double tolerance) {
        this.problem = problem;
        this.tolerance = tolerance;
        laws = new FlatLaws(problem.equations());
        table = new GuardTable(laws);
        regime = new Regime(laws, table);
        point = new PointLaws(laws, table, regime);
        heights = new HeightCursor(problem.heights(), MOST_HEIGHT_ROWS);
        u = new double[MOST_HEIGHT_ROWS * problem.equations().inputs()];
        n = laws.n;
        ns = laws.sliders();
    }

    /** Coordinates, their speeds and accelerations at one instant. */
    @FunctionalInterface
    public interface Sampler {
        /** Called at even instants in order; the arrays are the caller's to copy. */
        void sample(double time, double[] q, double[] v, double[] acceleration);
    }

    /**
     * Runs a problem.
     *
     * @param tolerance relative and absolute of coordinates and speeds
     * @param rate samples a second handed to the sampler
     * @return number of switches of regime
     */
    public static long solve(Problem problem, double tolerance, double rate, Sampler sampler) {
        return new ReferenceSolver(problem, tolerance).run(rate, sampler);
    }

    private long run(double rate, Sampler sampler) {
        double[] y = new double[2 * n + ns];
        System.arraycopy(problem.q(), 0, y, 0, n);
        System.arraycopy(problem.v(), 0, y, n, n);
        System.arraycopy(problem.friction(), 0, y, 2 * n, ns);
        evaluate(0, y);
        regime.classify(point.c, point.speed);
        Samples samples = new Samples(rate, sampler);
        double instant = -1;
        int atInstant = 0;
        while (t < problem.duration()) {
            evaluate(t, y);
            if (point.least() < -1) {
                int crossed = point.nearest();
                if (t > instant) {
                    instant = t;
                    atInstant = 0;
                }
                if (++atInstant > MOST_SWITCHES_AT_INSTANT) {
                    throw new RideException("the reference run stopped at " + t + " s: " + table.describe(crossed)
                            + " does not settle");
                }
                cross(crossed, y);
                continue;
            }
            double stop = Math.min(heights.nextJoint(), problem.duration());
            y = advance(y, stop, samples);
            heights.pass(t);
        }
        return switches;
    }

    private double[] advance(double[] y, double stop, Samples samples) {
        if (stop - t < 1e-13) {
            t = stop;
            return y;
        }
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-18, LARGEST_STEP, tolerance, tolerance);
        Crossing crossing = new Crossing();
        integrator.addEventDetector(crossing);
        integrator.addStepHandler(samples);
        ODEStateAndDerivative end = integrator.integrate(new Motion(), new ODEState(t, y), stop);
        t = crossing.happened ? end.getTime() : stop;
        double[] state = end.getPrimaryState();
        evaluate(t, state);
        for (int j = 0; j < ns; j++) {
            state[2 * n + j] = point.s[j];
        }
        if (crossing.happened) {
            cross(point.nearest(), state);
        }
        return state;
    }

    private void cross(int crossed, double[] y) {
        regime.cross(crossed);
        if (table.kind[crossed] == GuardTable.Kind.SLIDER && regime.slider[table.part[crossed]] != Regime.LOCKED) {
            int e = table.element[crossed];
            y[2 * n + table.part[crossed]] = regime.sliding(table.part[crossed], regime.leafForce(e, point.c[e]));
        }
        switches++;
    }

    private void evaluate(double time, double[] y) {
        System.arraycopy(y, 0, point.q, 0, n);
        System.arraycopy(y, n, point.v, 0, n);
        System.arraycopy(y, 2 * n, point.s, 0, ns);
        int inputs = problem.equations().inputs();
        if (heights.expand(time, 1, u) == 0) {
            Arrays.fill(u, inputs, 2 * inputs, 0);
        }
        point.evaluate(u);
    }

    /** {@code (q, v, s)′ = (v, a, ṡ)}; of sliders that slide, s follows from c. */
    private final class Motion implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 2 * n + ns;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            evaluate(time, y);
            double[] d = new double[y.length];
            System.arraycopy(y, n, d, 0, n);
            System.arraycopy(point.a, 0, d, n, n);
            for (int j = 0; j < ns; j++) {
                d[2 * n + j] = point.frictionRate[j];
            }
            return d;
        }
    }

    /** The least guard, each against its own round-off, as one switching function. */
    private final class Crossing implements ODEEventDetector {
        private boolean happened;

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return (state, forward) -> CHECK;
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-15, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> {
                happened = true;
                return Action.STOP;
            };
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            evaluate(state.getTime(), state.getPrimaryState());
            return point.least() + 1;
        }
    }

    /** Hands over even samples from the integrator's interpolation. */
    private final class Samples implements ODEStepHandler {
        private final double rate;
        private final Sampler sampler;
        private long next;

        Samples(double rate, Sampler sampler) {
            this.rate = rate;
            this.sampler = sampler;
        }

        @Override
        public void handleStep(ODEStateInterpolator interpolator) {
            double to = interpolator.getCurrentState().getTime();
            while (next / rate < to) {
                double time = next / rate;
                if (time >= interpolator.getPreviousState().getTime()) {
                    double[] y = interpolator.getInterpolatedState(time).getPrimaryState();
                    evaluate(time, y);
                    double[] q = new double[n];
                    double[] v = new double[n];
                    double[] a = new double[n];
                    System.arraycopy(y, 0, q, 0, n);
                    System.arraycopy(y, n, v, 0, n);
                    System.arraycopy(point.a, 0, a, 0, n);
                    sampler.sample(time, q, v, a);
                }
                next++;
            }
        }
    }
}
