package org.ridewright.solver;

import java.util.Locale;
import org.ridewright.dynamics.RideException;
import org.ridewright.math.FirstCrossing;

/**
 * Advances a problem by Taylor series, regime by regime: within a regime the motion is analytic, so its series comes from the
 * equations themselves; guards are polynomials on the step, whose first crossing is isolated without missing any; there the regime is
 * switched and the series starts again.
 *
 * <p>Cost of a step: order × (elements × coordinates). Accuracy: the last two terms of every acceleration are below {@code 1e-13} of
 * 1 m/s² plus the acceleration at the step's beginning.
 */
public final class RegimeSolver {
    private static final int MOST = 24;
    private static final double TOLERANCE = 1e-13;
    private static final double LONGEST_STEP = 0.1;
    private static final double FIRST_STEP = 2e-3;
    /** No vehicle has a motion that needs a shorter step (s). */
    private static final double SHORTEST_STEP = 1e-10;

    private static final long MOST_STEPS = 1_000_000_000;

    private final Problem problem;
    private final StepListener listener;
    private final FlatLaws laws;
    private final Regime regime;
    private final TaylorSeries series;
    private final Guards guards;
    private final EnergyAudit audit;
    private final HeightCursor heights;
    private final FirstCrossing crossing = new FirstCrossing(MOST);
    private final Step view;
    private final double[] guard = new double[MOST + 3];
    private final double[] q;
    private final double[] v;
    private final double[] s;
    private final double[] elastic;
    private double t;
    private double preferredStep = FIRST_STEP;
    private long steps;
    private long switches;
    private long orders;
    private double smallest = Double.POSITIVE_INFINITY;
    private int switchesAtInstant;
    private double instant = -1;

    private RegimeSolver(Problem problem, StepListener listener) {
        this.problem = problem;
        this.listener = listener;
        laws = new FlatLaws(problem.equations());
        regime = new Regime(laws);
        series = new TaylorSeries(laws, MOST, TOLERANCE);
        guards = new Guards(laws, regime, series);
        audit = new EnergyAudit(laws, regime, series, MOST);
        heights = new HeightCursor(problem.heights(), MOST);
        view = new Step(laws, series, regime);
        q = problem.q().clone();
        v = problem.v().clone();
        s = problem.friction().clone();
        elastic = new double[laws.ne];
    }

    /**
     * Runs a problem from time 0 to its duration.
     *
     * @param listener is handed every step in order of time
     * @throws RideException if switches of regime do not settle at one instant (the message names the law), or the run makes no
     *     headway
     */
    public static Solution solve(Problem problem, StepListener listener) {
        return new RegimeSolver(problem, listener).run();
    }

    private Solution run() {
        double[] u = new double[problem.equations().inputs()];
        heights.values(0, u);
        double before = EnergyAudit.stored(problem.equations(), q, v, s, u);
        double[] frictionBefore = s.clone();
        begin();
        while (t < problem.duration()) {
            advance();
        }
        heights.values(t, u);
        double after = EnergyAudit.stored(problem.equations(), q, v, s, u);
        return new Solution(
                q,
                v,
                s,
                audit.close(before, after, frictionBefore, s),
                new Solution.Statistics(
                        steps,
                        switches,
                        guards.crossings(Guards.Kind.SLIDER) + guards.crossings(Guards.Kind.SENSE),
                        guards.crossings(Guards.Kind.CONTACT),
                        steps == 0 ? 0 : (double) orders / steps,
                        smallest));
    }

    private void begin() {
        load(1);
        series.compute(1, regime, 0);
        double[] c = new double[laws.ne];
        double[] speed = new double[laws.ne];
        System.arraycopy(series.c, 0, c, 0, laws.ne);
        System.arraycopy(series.speed, 0, speed, 0, laws.ne);
        regime.classify(c, speed);
    }

    /** State and heights into the leading coefficients. */
    private void load(double h) {
        System.arraycopy(q, 0, series.q, 0, laws.n);
        System.arraycopy(v, 0, series.v, 0, laws.n);
        System.arraycopy(s, 0, series.s, 0, s.length);
        heights.expand(t, h, series.u);
    }

    private void advance() {
        double stop = Math.min(heights.nextJoint(), problem.duration());
        double step = Math.min(preferredStep, stop - t);
        load(step);
        series.converge(step, regime);
        refuseStandstill();
        int crossed = crossedOnEntry();
        if (crossed >= 0) {
            keepElastic(0);
            cross(crossed);
            return;
        }
        double end = 1;
        int first = -1;
        for (int g = 0; g < guards.count(); g++) {
            if (guards.polynomial(g, guard)) {
                double at = crossing.find(guard, series.order(), end);
                if (!Double.isNaN(at)) {
                    end = at;
                    first = g;
                }
            }
        }
        finish(step, stop, end, first);
    }

    /** A series that does not converge, or numbers that are none, end the run with what is known of it. */
    private void refuseStandstill() {
        boolean finite = true;
        for (int i = 0; i < laws.n; i++) {
            finite &= Double.isFinite(series.a[i]) && Double.isFinite(q[i]) && Double.isFinite(v[i]);
        }
        boolean stuck = series.h() < SHORTEST_STEP
                && heights.nextJoint() - t > SHORTEST_STEP
                && problem.duration() - t > SHORTEST_STEP;
        if (!finite || stuck || steps >= MOST_STEPS) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "the run stopped at %.6f s: %s after %d steps and %d switches of regime (smallest step %.1e s). "
                            + "Check rates, damping and masses for values many orders of magnitude apart",
                    t,
                    finite ? "it makes no headway" : "the motion grows beyond all numbers",
                    steps,
                    switches,
                    smallest));
        }
    }

    private int crossedOnEntry() {
        for (int g = 0; g < guards.count(); g++) {
            if (guards.polynomial(g, guard) && guard[0] < 0) {
                return g;
            }
        }
        return -1;
    }

    private void finish(double step, double stop, double end, int first) {
        view.set(t, end);
        listener.step(view);
        audit.step(end);
        steps++;
        orders += series.order();
        smallest = Math.min(smallest, end * series.h());
        boolean whole = first < 0 && series.h() == step;
        move(end);
        if (whole && step == stop - t) {
            t = stop;
        } else {
            t = Math.min(t + end * series.h(), stop);
        }
        heights.pass(t);
        if (first >= 0) {
            keepElastic(end);
            cross(first);
        }
        choose(step, stop, whole);
    }

    /** Lengthens the next step while the series ends early, shortens it where it had to be cut. */
    private void choose(double step, double stop, boolean whole) {
        if (series.h() < step) {
            preferredStep = series.h();
        } else if (whole && step == preferredStep && series.order() < 16) {
            preferredStep = Math.min(LONGEST_STEP, 1.4 * preferredStep);
        } else if (series.order() >= MOST - 2 && stop > t) {
            preferredStep = Math.min(preferredStep, 0.9 * series.h());
        }
    }

    private void move(double end) {
        int order = series.order();
        for (int i = 0; i < laws.n; i++) {
            q[i] = TaylorSeries.value(series.q, laws.n, i, order + 2, end);
            v[i] = TaylorSeries.value(series.v, laws.n, i, order + 1, end);
        }
        for (int j = 0; j < s.length; j++) {
            boolean evolves = regime.slider[j] == Regime.LOCKED;
            s[j] = TaylorSeries.value(series.s, s.length, j, evolves ? order + 1 : order, end);
        }
    }

    private void keepElastic(double tau) {
        for (int e = 0; e < laws.ne; e++) {
            elastic[e] = TaylorSeries.value(series.elastic, laws.ne, e, series.order(), tau);
        }
    }

    private void cross(int first) {
        switches++;
        if (t > instant) {
            instant = t;
            switchesAtInstant = 0;
        }
        if (++switchesAtInstant > 50 + 4 * guards.count()) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "the run stopped at %.6f s: %s does not settle (%d switches of regime at one instant, %d in all)",
                    t,
                    guards.describe(first),
                    switchesAtInstant,
                    switches));
        }
        guards.cross(first, s, elastic);
    }
}
