package org.ridewright.dynamics;

import java.util.List;
import java.util.Locale;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.ridewright.suspension.ForceLaw;

/**
 * Rest under gravity, from the free state: {@code r(q) = g_q + K_g q + Σ B_iᵀ f_i(c_i) = 0}.
 *
 * <p>Newton's method with the tangent {@code K_g + Σ f_i' B_iᵀ B_i} and step halving until ‖r‖ falls. The laws are piecewise linear or
 * smooth, so it ends in a few steps once the right pieces are found.
 */
public final class StaticEquilibrium {
    private static final int MOST_STEPS = 400;
    /** ‖r‖ at rest over the greatest entry of g_q: round-off of the sums. */
    private static final double RELATIVE_RESIDUAL = 1e-13;

    private final Equations equations;
    private final double settled;
    private final int n;

    private StaticEquilibrium(Equations equations, double settled) {
        this.equations = equations;
        this.settled = settled;
        this.n = equations.size();
    }

    /**
     * Finds the position of rest.
     *
     * @param heights u of each input (m)
     * @param settled +1 if friction holds the vehicle up ({@code s = +S}, settled from above), −1 down, 0 not at all; what twists and
     *     linkages hold nothing in either case
     * @throws RideException if nothing holds the vehicle in some direction or no equilibrium is found
     */
    public static StaticState solve(Equations equations, double[] heights, int settled) {
        return new StaticEquilibrium(equations, settled).run(heights);
    }

    private StaticState run(double[] u) {
        double[] q = new double[n];
        double[] r = new double[n];
        double scale = 0;
        for (int i = 0; i < n; i++) {
            scale = Math.max(scale, Math.abs(equations.gravityForce(i)));
        }
        double norm = residual(q, u, r);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] delta = newtonStep(q, u, r);
            double[] trial = new double[n];
            double[] trialResidual = new double[n];
            double best = Double.POSITIVE_INFINITY;
            double factor = 1;
            for (int halving = 0; halving < 30; halving++, factor /= 2) {
                for (int i = 0; i < n; i++) {
                    trial[i] = q[i] - factor * delta[i];
                }
                best = residual(trial, u, trialResidual);
                if (best < norm || best <= RELATIVE_RESIDUAL * scale) {
                    break;
                }
            }
            // Once at rest, only a step that at least halves what is left does more than stir the round-off.
            if (norm <= RELATIVE_RESIDUAL * scale && !(best < norm / 2)) {
                return finished(q, u);
            }
            if (!Double.isFinite(best) || !(best < norm)) {
                if (norm <= 1e-10 * scale) {
                    return finished(q, u);
                }
                break;
            }
            q = trial.clone();
            r = trialResidual.clone();
            norm = best;
        }
        throw RideException.tooSoft(String.format(
                Locale.ROOT,
                "no position of rest was found: the springs cannot carry the load (%.3g kN of %.3g kN are left over)",
                norm / 1000,
                scale / 1000));
    }

    private double[] newtonStep(double[] q, double[] u, double[] r) {
        DMatrixRMaj k = new DMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k.set(i, j, equations.gravityStiffness(i, j));
            }
        }
        List<Element> elements = equations.elements();
        for (int e = 0; e < elements.size(); e++) {
            double slope = slope(elements.get(e), equations.compression(e, q, u));
            double[] b = elements.get(e).row();
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    k.add(i, j, slope * b[i] * b[j]);
                }
            }
        }
        // Coordinates on a stiff tyre and on a soft cushion differ by orders of magnitude: each is scaled by its own
        // stiffness.
        double[] unit = new double[n];
        for (int i = 0; i < n; i++) {
            double own = Math.abs(k.get(i, i));
            unit[i] = own > 0 ? 1 / Math.sqrt(own) : 1;
            if (nothingActs(k, i) && r[i] == 0) {
                // A vehicle that rolls freely rests anywhere along its way.
                k.set(i, i, 1);
            }
        }
        DMatrixRMaj right = new DMatrixRMaj(n, 1);
        for (int i = 0; i < n; i++) {
            right.set(i, 0, unit[i] * r[i]);
            for (int j = 0; j < n; j++) {
                k.set(i, j, unit[i] * k.get(i, j) * unit[j]);
            }
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(n);
        DMatrixRMaj delta = new DMatrixRMaj(n, 1);
        if (!solver.setA(k) || solver.quality() < 1e-15) {
            throw new RideException("nothing holds the vehicle up in some direction (heave, roll or pitch): "
                    + "check that each corner has a spring, and that a vehicle on one axle has a hitch or shafts");
        }
        solver.solve(right, delta);
        for (int i = 0; i < n; i++) {
            delta.set(i, 0, unit[i] * delta.get(i, 0));
        }
        return delta.getData().clone();
    }

    private boolean nothingActs(DMatrixRMaj k, int i) {
        for (int j = 0; j < n; j++) {
            if (k.get(i, j) != 0 || k.get(j, i) != 0) {
                return false;
            }
        }
        return true;
    }

    private double residual(double[] q, double[] u, double[] r) {
        for (int i = 0; i < n; i++) {
            r[i] = equations.gravityForce(i);
            for (int j = 0; j < n; j++) {
                r[i] += equations.gravityStiffness(i, j) * q[j];
            }
        }
        List<Element> elements = equations.elements();
        for (int e = 0; e < elements.size(); e++) {
            double f = force(elements.get(e), equations.compression(e, q, u));
            double[] b = elements.get(e).row();
            for (int i = 0; i < n; i++) {
                r[i] += b[i] * f;
            }
        }
        double sum = 0;
        for (double x : r) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }

    /** What twists or weighs one travel against another has no above and below, and holds no friction however the body settled. */
    private double settled(Element element) {
        return switch (element.kind()) {
            case TWIST, LINKAGE -> 0;
            default -> settled;
        };
    }

    private double force(Element element, double c) {
        ForceLaw law = element.law();
        return law.staticForce(c) + settled(element) * limit(law, c);
    }

    private static double limit(ForceLaw law, double c) {
        return law.friction().states() == 0 ? 0 : law.frictionLimit(c);
    }

    /** Slope of the force; a law that only pushes counts as touching at c = 0, so that the first step finds it. */
    private double slope(Element element, double c) {
        ForceLaw law = element.law();
        if (law.pushesOnly() && c < 0) {
            return 0;
        }
        double mu = law.friction().states() > 0 && law.leafForce(c) > 0
                ? law.friction().share()
                : 0;
        return law.elasticRate(c) + settled(element) * mu * law.leafRate(c);
    }

    private StaticState finished(double[] q, double[] u) {
        List<Element> elements = equations.elements();
        double[] c = new double[elements.size()];
        double[] f = new double[elements.size()];
        int states =
                elements.stream().mapToInt(e -> e.law().friction().states()).sum();
        double[] s = new double[states];
        int next = 0;
        for (int e = 0; e < c.length; e++) {
            ForceLaw law = elements.get(e).law();
            c[e] = equations.compression(e, q, u);
            f[e] = force(elements.get(e), c[e]);
            double limit = limit(law, c[e]);
            for (double share : law.friction().limitShares()) {
                s[next++] = settled(elements.get(e)) * share * limit;
            }
        }
        return new StaticState(q, c, f, s);
    }
}
