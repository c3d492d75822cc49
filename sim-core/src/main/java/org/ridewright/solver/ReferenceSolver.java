package org.ridewright.solver;

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
 * <p>Slow and for checking only; forces are those of the first Taylor coefficient.
 */
public final class ReferenceSolver {
    private static final double LARGEST_STEP = 2e-3;
    private static final double CHECK = 1e-4;
    private static final int MOST_SWITCHES_AT_INSTANT = 400;

    private final Problem problem;
    private final FlatLaws laws;
    private final Regime regime;
    private final TaylorSeries series;
    private final Guards guards;
    private final HeightCursor heights;
    private final double tolerance;
    private final double[] guard = new double[4];
    private final int n;
    private final int ns;
    private double t;
    private long switches;

    private ReferenceSolver(Problem problem, double tolerance) {
        this.problem = problem;
        this.tolerance = tolerance;
        laws = new FlatLaws(problem.equations());
        regime = new Regime(laws);
        series = new TaylorSeries(laws, 1, 0);
        guards = new Guards(laws, regime, series);
        heights = new HeightCursor(problem.heights(), 26);
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
        double[] c = new double[laws.ne];
        double[] speed = new double[laws.ne];
        System.arraycopy(series.c, 0, c, 0, laws.ne);
        System.arraycopy(series.speed, 0, speed, 0, laws.ne);
        regime.classify(c, speed);
        Samples samples = new Samples(rate, sampler);
        double instant = -1;
        int atInstant = 0;
        while (t < problem.duration()) {
            evaluate(t, y);
            int crossed = worst();
            if (crossed >= 0) {
                if (t > instant) {
                    instant = t;
                    atInstant = 0;
                }
                if (++atInstant > MOST_SWITCHES_AT_INSTANT) {
                    throw new RideException("the reference run stopped at " + t + " s: " + guards.describe(crossed)
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
            state[2 * n + j] = series.s[j];
        }
        if (crossing.happened) {
            int crossed = nearest();
            cross(crossed, state);
        }
        return state;
    }

    private void cross(int crossed, double[] y) {
        double[] s = new double[ns];
        double[] elastic = new double[laws.ne];
        System.arraycopy(y, 2 * n, s, 0, ns);
        System.arraycopy(series.elastic, 0, elastic, 0, laws.ne);
        guards.cross(crossed, s, elastic);
        System.arraycopy(s, 0, y, 2 * n, ns);
        switches++;
    }

    private void evaluate(double time, double[] y) {
        System.arraycopy(y, 0, series.q, 0, n);
        System.arraycopy(y, n, series.v, 0, n);
        System.arraycopy(y, 2 * n, series.s, 0, ns);
        heights.expand(time, 1, series.u);
        series.compute(1, regime, 0);
    }

    /** A guard that is crossed already, or −1. */
    private int worst() {
        for (int g = 0; g < guards.count(); g++) {
            if (guards.polynomial(g, guard) && guard[0] < 0) {
                return g;
            }
        }
        return -1;
    }

    /** The guard closest to its crossing, each against its own round-off. */
    private int nearest() {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int g = 0; g < guards.count(); g++) {
            if (guards.polynomial(g, guard)) {
                double value = guard[0] / guards.slack(g);
                if (value < least) {
                    least = value;
                    found = g;
                }
            }
        }
        return found;
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
            System.arraycopy(series.a, 0, d, n, n);
            for (int j = 0; j < ns; j++) {
                d[2 * n + j] = series.s[ns + j];
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
            double least = Double.POSITIVE_INFINITY;
            for (int g = 0; g < guards.count(); g++) {
                if (guards.polynomial(g, guard)) {
                    least = Math.min(least, guard[0] / guards.slack(g));
                }
            }
            return least;
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
                    System.arraycopy(series.a, 0, a, 0, n);
                    sampler.sample(time, q, v, a);
                }
                next++;
            }
        }
    }
}
