package org.ridewright.solver;

import java.util.Locale;
import org.ridewright.dynamics.RideException;

/**
 * Advances a problem by Taylor series, regime by regime: within a regime the motion is analytic, so its series comes from the
 * equations themselves; guards are polynomials on the step, whose first crossing is isolated without missing any; there the regime is
 * switched and the series starts again.
 *
 * <p>Cost of a step: order × (coordinates that the elements touch). Accuracy: the last two terms of every acceleration are below the
 * tolerance times 1 m/s² plus the acceleration at the step's beginning; the second of them is not part of the motion any more.
 */
public final class RegimeSolver {
    /** Tolerance of a run unless another is asked for: a step's error stays below what a figure or a number could show. */
    public static final double TOLERANCE = 1e-12;

    /** Highest power of an acceleration; a series that needs more is shortened. */
    private static final int MOST = 24;
    /** A step that needs more terms than this is not lengthened. */
    private static final int COMFORTABLE = 14;

    /** Beyond this a step saves nothing, and read-offs would be polynomials over whole swings (s). */
    private static final double LONGEST_STEP = 0.1;
    /** A guess; steps find their length within a few (s). */
    private static final double FIRST_STEP = 2e-3;
    /** No vehicle has a motion that needs a shorter step (s). */
    private static final double SHORTEST_STEP = 1e-10;

    /** Days of computing: every loop has an end. */
    private static final long MOST_STEPS = 1_000_000_000;

    private final Problem problem;
    private final StepListener listener;
    private final ElementOrder order;
    private final FlatLaws laws;
    private final GuardTable table;
    private final Regime regime;
    private final HeldLaws held;
    private final CurvedTerms curved;
    private final TaylorSeries series;
    private final Guards guards;
    private final EnergyAudit audit;
    private final HeightCursor heights;
    private final Tally tally;
    private final Step view;
    private final double[] q;
    private final double[] v;
    /** Friction states of envelopes; those of sliders follow from c. */
    private final double[] s;

    private double t;
    private double preferredStep = FIRST_STEP;

    private RegimeSolver(Problem problem, double tolerance, StepListener listener) {
        this.problem = problem;
        this.listener = listener;
        order = new ElementOrder(problem.equations());
        laws = new FlatLaws(order.equations());
        table = new GuardTable(laws);
        regime = new Regime(laws, table);
        held = new HeldLaws(laws, table, regime);
        curved = new CurvedTerms(laws, regime, held, MOST + 3);
        PushTerms pushes = new PushTerms(laws, MOST + 3);
        series = new TaylorSeries(laws, regime, held, new PackedRows(laws), curved, pushes, MOST, tolerance);
        guards = new Guards(laws, table, held, series, MOST);
        audit = new EnergyAudit(laws, regime, held, series, curved, pushes, MOST);
        heights = new HeightCursor(problem.heights(), MOST);
        tally = new Tally(table, SHORTEST_STEP);
        view = new Step(order, laws, series, regime);
        q = problem.q().clone();
        v = problem.v().clone();
        s = order.slidersOrdered(problem.friction());
    }

    /**
     * Runs a problem from time 0 to its duration, at the tolerance {@link #TOLERANCE}.
     *
     * @param listener is handed every step in order of time
     * @throws RideException if switches of regime do not settle at one instant (the message names the law), or the run makes no
     *     headway
     */
    public static Solution solve(Problem problem, StepListener listener) {
        return solve(problem, TOLERANCE, listener);
    }

    /**
     * Runs a problem from time 0 to its duration.
     *
     * @param tolerance of the last terms of every acceleration, relative to 1 m/s² plus the acceleration, from 1e-15 to 1e-2
     * @param listener is handed every step in order of time
     * @throws RideException as {@link #solve(Problem, StepListener)} does
     */
    public static Solution solve(Problem problem, double tolerance, StepListener listener) {
        if (!(tolerance >= 1e-15 && tolerance <= 1e-2)) {
            throw new IllegalArgumentException("tolerance must lie between 1e-15 and 1e-2, got " + tolerance);
        }
        return new RegimeSolver(problem, tolerance, listener).run();
    }

    private Solution run() {
        double[] u = new double[problem.equations().inputs()];
        heights.values(0, u);
        double before = EnergyAudit.stored(laws.equations, q, v, s, u);
        begin();
        while (t < problem.duration()) {
            advance();
        }
        for (int e = 0; e < laws.ne; e++) {
            audit.settle(e, series.compression(e, view.end()));
        }
        double[] frictionAfter = friction();
        heights.values(t, u);
        double after = EnergyAudit.stored(laws.equations, q, v, frictionAfter, u);
        return new Solution(
                q, v, order.slidersAsGiven(frictionAfter), audit.close(before, after, order), tally.statistics());
    }

    private void begin() {
        int degree = load(1);
        series.locate(1, degree);
        double[] c = new double[laws.ne];
        double[] speed = new double[laws.ne];
        System.arraycopy(series.c, 0, c, 0, laws.ne);
        System.arraycopy(series.speed, 0, speed, 0, laws.ne);
        regime.classify(c, speed);
        audit.begin(c);
        for (int j = 0; j < laws.sliders(); j++) {
            held.lock(j, s[j], c[laws.sliderElement[j]]);
        }
        for (int e = 0; e < laws.ne; e++) {
            held.refresh(e);
        }
    }

    /** State and heights into the leading coefficients; the highest power of the heights. */
    private int load(double h) {
        System.arraycopy(q, 0, series.q, 0, laws.n);
        System.arraycopy(v, 0, series.v, 0, laws.n);
        curved.begin(s);
        return heights.expand(t, h, series.u);
    }

    private void advance() {
        double stop = Math.min(heights.nextJoint(), problem.duration());
        double step = Math.min(preferredStep, stop - t);
        series.converge(step, load(step));
        refuseStandstill();
        int crossed = guards.search();
        if (crossed >= 0 && guards.at() == 0) {
            cross(crossed, 0);
        } else {
            finish(step, stop, guards.at(), crossed);
        }
    }

    /** A series that does not converge, or numbers that are none, end the run with what is known of it. */
    private void refuseStandstill() {
        double sum = 0;
        for (int i = 0; i < laws.n; i++) {
            sum += 0 * (series.v[laws.n + i] + q[i] + v[i]);
        }
        boolean finite = sum == 0;
        boolean stuck = series.h() < SHORTEST_STEP
                && heights.nextJoint() - t > SHORTEST_STEP
                && problem.duration() - t > SHORTEST_STEP;
        if (!finite || stuck || tally.steps() >= MOST_STEPS) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "the run stopped at %.6f s: %s after %d steps and %d switches of regime (smallest step %.1e s). "
                            + "Check rates, damping and masses for values many orders of magnitude apart",
                    t,
                    finite ? "it makes no headway" : "the motion grows beyond all numbers",
                    tally.steps(),
                    tally.switches(),
                    tally.smallestStep()));
        }
    }

    private void finish(double step, double stop, double end, int first) {
        view.set(t, end);
        listener.step(view);
        audit.step(end);
        tally.step(series.order(), end * series.h());
        boolean whole = first < 0 && series.h() == step;
        series.move(end, q, v);
        for (int e : curved.elements) {
            if (laws.envelope[e] > 0) {
                int j = laws.sliderFrom[e];
                s[j] = curved.frictionAt(j, series.order() + 1, end);
            }
        }
        t = whole && step == stop - t ? stop : Math.min(t + end * series.h(), stop);
        if (first >= 0) {
            cross(first, end);
        }
        if (heights.pass(t)) {
            for (int e : laws.driven) {
                audit.jump(e, series.compression(e, end), heights.rise(laws.input[e]));
            }
        }
        choose(step, whole);
    }

    /** Lengthens the next step while the series ends early, shortens it where it had to be cut. */
    private void choose(double step, boolean whole) {
        if (series.h() < step) {
            preferredStep = series.h();
        } else if (series.order() >= MOST - 2) {
            preferredStep = Math.min(preferredStep, 0.9 * series.h());
        } else if (whole && step == preferredStep && series.order() < COMFORTABLE) {
            preferredStep = Math.min(LONGEST_STEP, 1.4 * preferredStep);
        }
    }

    private void cross(int guard, double tau) {
        if (tally.cross(guard, t) > 50 + 4 * table.count) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "the run stopped at %.6f s: %s does not settle (%d switches of regime at one instant, %d in all)",
                    t,
                    table.describe(guard),
                    tally.switchesAtInstant(),
                    tally.switches()));
        }
        int e = table.element[guard];
        double c = series.compression(e, tau);
        audit.settle(e, c);
        if (table.kind[guard] == GuardTable.Kind.SLIDER) {
            crossSlider(guard, e, table.part[guard], c);
        } else {
            regime.cross(guard);
        }
        held.refresh(e);
    }

    private void crossSlider(int guard, int e, int j, double c) {
        if (regime.slider[j] == Regime.LOCKED) {
            double before = held.anchor[j] + laws.sliderRate[j] * c;
            regime.cross(guard);
            audit.release(j, before, regime.sliding(j, regime.leafForce(e, c)));
        } else {
            held.lock(j, regime.sliding(j, regime.leafForce(e, c)), c);
            regime.cross(guard);
        }
    }

    /** Friction states at the end of the last step (N). */
    private double[] friction() {
        double[] all = new double[s.length];
        for (int j = 0; j < all.length; j++) {
            int e = laws.sliderElement[j];
            double c = series.compression(e, view.end());
            if (laws.envelope[e] > 0) {
                all[j] = s[j];
            } else if (regime.slider[j] == Regime.LOCKED) {
                all[j] = held.anchor[j] + laws.sliderRate[j] * c;
            } else {
                all[j] = regime.sliding(j, regime.leafForce(e, c));
            }
        }
        return all;
    }
}
