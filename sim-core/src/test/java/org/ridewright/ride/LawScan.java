package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.Pieces;

/**
 * Looks at every step of a run at many instants and works each force out afresh from its law, knowing no regime: a switch that the
 * solver missed, made too early or made to the wrong side shows as a force that its law does not give.
 *
 * <p>These are invariants 1 to 3 of the solver. Checked at each instant: {@code c = B q + u}; the force against its law by definition, friction by {@link Rubbing}; Newton's law
 * {@code M q̈ = −g_q − K_g q − Σ Bᵀ f}; the heights followed; that speeds and accelerations are the rates of what they should be; and what
 * the step says of its regime. From step to step: time without gaps, coordinates and speeds without jumps.
 */
final class LawScan implements StepListener {
    private static final int ROOM = SampleRecorder.ROOM;

    private final Problem problem;
    private final Equations equations;
    private final int instants;
    private final int n;
    private final int count;
    private final double weight;
    private final double[] forceSlack;
    private final Rubbing[] rubbing;
    private final double[][] q;
    private final double[][] v;
    private final double[][] a;
    private final double[][] c;
    private final double[][] force;
    private final double[][] friction;
    private final double[][] u;
    private final double[][] heightSpeed;
    private final double[] endQ;
    private final double[] endV;
    private final List<String> faults = new ArrayList<>();
    private double time;
    private long looks;

    /**
     * @param instants at which each step is looked at, besides its beginning
     */
    LawScan(Problem problem, int instants) {
        this.problem = problem;
        this.instants = instants;
        equations = problem.equations();
        n = equations.size();
        count = equations.elements().size();
        weight = greatest(n, equations::gravityForce);
        q = new double[n][ROOM];
        v = new double[n][ROOM];
        a = new double[n][ROOM];
        c = new double[count][ROOM];
        force = new double[count][ROOM];
        friction = new double[count][ROOM];
        u = new double[equations.inputs()][ROOM];
        heightSpeed = new double[equations.inputs()][ROOM];
        endQ = problem.q().clone();
        endV = problem.v().clone();
        forceSlack = new double[count];
        rubbing = new Rubbing[count];
        int state = 0;
        for (int e = 0; e < count; e++) {
            ForceLaw law = equations.elements().get(e).law();
            forceSlack[e] = 1e-11 * weight
                    + 1e-12 * (Math.abs(law.greatestRate()) + law.friction().lockedRate())
                    + 1e-11 * greatestDamping(law);
            int states = law.friction().states();
            if (states > 0) {
                rubbing[e] = new Rubbing(law, Arrays.copyOfRange(problem.friction(), state, state + states));
            }
            state += states;
        }
    }

    /** Fails with what was found, if anything. */
    void assertNothingMissed() {
        assertThat(faults).isEmpty();
        assertThat(time).isEqualTo(problem.duration());
        assertThat(looks).isPositive();
    }

    private interface Entry {
        double at(int i);
    }

    private static double greatest(int count, Entry entry) {
        double most = 0;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, Math.abs(entry.at(i)));
        }
        return most;
    }

    private static double greatestDamping(ForceLaw law) {
        Pieces pieces = law.speedStages();
        return Math.abs(law.damping()) + greatest(pieces.count(), pieces::slope) * pieces.count();
    }

    private void fault(double tau, Step step, String format, Object... values) {
        if (faults.size() < 5) {
            faults.add(String.format(
                            Locale.ROOT,
                            "at %.12f s (τ = %.6f of %.3e s): ",
                            step.start() + tau * step.h(),
                            tau,
                            step.h())
                    + String.format(Locale.ROOT, format, values));
        }
    }

    @Override
    public void step(Step step) {
        load(step);
        join(step);
        for (int e = 0; e < count; e++) {
            if (rubbing[e] != null) {
                rubbing[e].begin(value(c[e], 0));
            }
        }
        for (int i = 0; i <= instants; i++) {
            look(step, step.end() * i / instants);
        }
        double tau = step.end();
        for (int i = 0; i < n; i++) {
            endQ[i] = value(q[i], tau);
            endV[i] = value(v[i], tau);
        }
        time = step.start() + step.duration();
        if (Math.abs(time - problem.duration()) < 1e-12 * problem.duration()) {
            time = problem.duration();
        }
    }

    private void load(Step step) {
        for (int i = 0; i < n; i++) {
            clear(q[i], v[i], a[i]);
            step.addDisplacement(i, 1, q[i]);
            step.addVelocity(i, 1, v[i]);
            step.addAcceleration(i, 1, a[i]);
        }
        for (int e = 0; e < count; e++) {
            clear(c[e], force[e], friction[e]);
            step.addCompression(e, 1, c[e]);
            step.addForce(e, 1, force[e]);
            step.addFriction(e, 1, friction[e]);
        }
        for (int i = 0; i < u.length; i++) {
            clear(u[i], heightSpeed[i]);
            step.addHeight(i, 1, u[i]);
            step.addHeightSpeed(i, 1, heightSpeed[i]);
        }
    }

    private static void clear(double[]... rows) {
        for (double[] row : rows) {
            Arrays.fill(row, 0);
        }
    }

    static double value(double[] x, double tau) {
        double sum = 0;
        for (int k = x.length - 1; k >= 0; k--) {
            sum = sum * tau + x[k];
        }
        return sum;
    }

    private static double slope(double[] x, double tau) {
        double sum = 0;
        for (int k = x.length - 1; k > 0; k--) {
            sum = sum * tau + k * x[k];
        }
        return sum;
    }

    private void join(Step step) {
        if (Math.abs(step.start() - time) > 1e-12 * (1 + time)) {
            fault(0, step, "the step before ended at %.15f s", time);
        }
        for (int i = 0; i < n; i++) {
            double jump = Math.abs(q[i][0] - endQ[i]);
            double kick = Math.abs(v[i][0] - endV[i]);
            if (!(jump <= 1e-12 && kick <= 1e-10 * (1 + Math.abs(endV[i])))) {
                fault(0, step, "coordinate %d jumps by %.3e, its speed by %.3e", i, jump, kick);
            }
        }
    }

    private void look(Step step, double tau) {
        looks++;
        for (int i = 0; i < u.length; i++) {
            PiecewisePolynomial height = problem.heights().get(i).block(0);
            double middle = step.start() + step.duration() / 2;
            int piece = height.pieceAt(middle);
            double[] about = new double[Math.max(1, height.degree() + 1)];
            height.expand(piece, step.start(), about);
            double off = value(about, tau * step.h()) - value(u[i], tau);
            if (!(Math.abs(off) <= 1e-12)) {
                fault(tau, step, "height %d is off by %.3e m", i, off);
            }
        }
        double[] net = new double[n];
        double[] size = new double[n];
        for (int e = 0; e < count; e++) {
            element(e, step, tau);
            double f = value(force[e], tau);
            double[] row = equations.elements().get(e).row();
            for (int i = 0; i < n; i++) {
                net[i] -= row[i] * f;
                size[i] += Math.abs(row[i]) * (forceSlack[e] + 1e-12 * Math.abs(f));
            }
        }
        newton(step, tau, net, size);
    }

    private void newton(Step step, double tau, double[] net, double[] size) {
        for (int i = 0; i < n; i++) {
            double inertia = 0;
            double most = 0;
            double held = net[i] - equations.gravityForce(i);
            for (int j = 0; j < n; j++) {
                inertia += equations.mass(i, j) * value(a[j], tau);
                most += Math.abs(equations.mass(i, j)) * (1 + Math.abs(value(a[j], 0)) + Math.abs(value(a[j], tau)));
                held -= equations.gravityStiffness(i, j) * value(q[j], tau);
            }
            double off = inertia - held;
            if (!(Math.abs(off) <= size[i] + 1e-11 * most + 1e-11 * weight)) {
                fault(tau, step, "coordinate %d: mass times acceleration is off by %.3e N", i, off);
            }
            double scale = 1 + Math.abs(value(v[i], tau));
            if (!(Math.abs(slope(q[i], tau) / step.h() - value(v[i], tau)) <= 1e-10 * scale)) {
                fault(tau, step, "speed of coordinate %d is not its rate", i);
            }
            double rate = slope(v[i], tau) / step.h();
            if (!(Math.abs(rate - value(a[i], tau)) <= 1e-9 * (1 + Math.abs(rate)))) {
                fault(tau, step, "acceleration of coordinate %d is not the rate of its speed", i);
            }
        }
    }

    private double speed(int e, double tau) {
        Element element = equations.elements().get(e);
        double sum = element.input() >= 0 ? value(heightSpeed[element.input()], tau) : 0;
        for (int i = 0; i < n; i++) {
            sum += element.row()[i] * value(v[i], tau);
        }
        return sum;
    }

    private void element(int e, Step step, double tau) {
        Element element = equations.elements().get(e);
        ForceLaw law = element.law();
        double compression = element.input() >= 0 ? value(u[element.input()], tau) : 0;
        for (int i = 0; i < n; i++) {
            compression += element.row()[i] * value(q[i], tau);
        }
        double x = value(c[e], tau);
        if (!(Math.abs(compression - x) <= 1e-12)) {
            fault(tau, step, "'%s': compression is off by %.3e m", element.name(), compression - x);
        }
        double speed = speed(e, tau);
        double f =
                law.elasticForce(x) + law.damping() * speed + law.speedStages().value(speed);
        double slack = forceSlack[e] + 1e-12 * Math.abs(f);
        double given = value(force[e], tau);
        if (rubbing[e] != null) {
            double s = rubbing[e].advance(c[e], tau);
            double told = value(friction[e], tau);
            double off = Math.abs(s - told);
            if (!(off <= slack + rubbing[e].slack(x))) {
                fault(tau, step, "'%s': friction is %.9e N, by its law %.9e N", element.name(), told, s);
            }
            f += told;
        }
        if (!law.pushesOnly()) {
            if (!(Math.abs(f - given) <= slack)) {
                fault(tau, step, "'%s': force is %.9e N, by its law %.9e N", element.name(), given, f);
            }
        } else {
            pushes(e, step, tau, x, f, given, slack);
        }
        Pieces stages = law.allStages();
        for (int p = 0; p < stages.count(); p++) {
            double beyond = stages.side(p) * (x - stages.at(p));
            if (step.isStageOn(e, p) ? beyond < -1e-12 : beyond > 1e-12) {
                fault(tau, step, "'%s': stage %d is %.3e m on the wrong side", element.name(), p, beyond);
            }
        }
    }

    /** At the instant of touching, c = 0, a damped contact's force jumps: either side will do there. */
    private void pushes(int e, Step step, double tau, double x, double f, double given, double slack) {
        double lawful = x > 0 ? Math.max(0, f) : 0;
        boolean right = Math.abs(given - lawful) <= slack;
        if (Math.abs(x) <= 1e-12) {
            right |= Math.abs(given) <= slack || Math.abs(given - Math.max(0, f)) <= slack;
        }
        if (!right) {
            fault(
                    tau,
                    step,
                    "'%s': pushes with %.9e N, by its law %.9e N (c = %.3e m)",
                    equations.elements().get(e).name(),
                    given,
                    lawful,
                    x);
        }
        if (step.isOff(e) && given != 0) {
            fault(
                    tau,
                    step,
                    "'%s' is off and pushes with %.3e N",
                    equations.elements().get(e).name(),
                    given);
        }
    }
}
