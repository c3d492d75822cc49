package org.ridewright.solver;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Taylor coefficients of the motion from one instant, in powers of τ = (t − t_0)/h.
 *
 * <p>With k the power: {@code ċ_{i,k} = B_i v_k + D_i u̇_k}, {@code c_{i,k} = h ċ_{i,k−1}/k}, {@code f_{i,k}} by the laws of the regime,
 * {@code a_k = −M⁻¹(g_q [k=0] + K_g q_k) + Σ_i w_i f_{i,k}}, {@code v_{k+1} = h a_k/(k+1)}, {@code q_{k+1} = h v_k/(k+1)}. While every
 * law is straight a coefficient costs no more than these products. All work arrays are made once.
 *
 * <p>With {@link #order()} K, speeds have K as their highest power, displacements and forces K + 1: so cut, c, ċ and f agree with q and v
 * to round-off wherever the step is ended, whatever the tolerance.
 */
final class TaylorSeries {
    private final FlatLaws laws;
    private final Regime regime;
    private final HeldLaws held;
    private final PackedRows rows;
    private final CurvedTerms curved;
    private final PushTerms pushes;
    private final int n;
    private final int ne;
    private final int inputs;
    private final int most;
    private final double tolerance;

    /** Coordinates at τ = 0. */
    final double[] q;
    /** Row k: coefficient k of each speed; row order + 1 is the first that is cut off. */
    final double[] v;

    /** Row k: coefficient k of each compression (m, or rad of what turns). */
    final double[] c;
    /** The same of ċ (m/s). */
    final double[] speed;
    /** The same of the force passed on (N, or N·m). */
    final double[] force;
    /** Row k: coefficient k of each height (m). */
    final double[] u;
    /** {@code Σ_{k≥1} |ċ_k|} of each element (m/s). */
    final double[] reach;

    private final double[] acceleration;
    private final double[] limit;
    /** {@code 1/k}. */
    private final double[] inverse;

    private int inputDegree;
    private int order;
    private double h;

    /**
     * @param most highest power of the acceleration
     * @param tolerance of the last two terms, relative to 1 m/s² and the leading term
     */
    TaylorSeries(
            FlatLaws laws,
            Regime regime,
            HeldLaws held,
            PackedRows rows,
            CurvedTerms curved,
            PushTerms pushes,
            int most,
            double tolerance) {
        this.laws = laws;
        this.regime = regime;
        this.held = held;
        this.rows = rows;
        this.curved = curved;
        this.pushes = pushes;
        this.most = most;
        this.tolerance = tolerance;
        n = laws.n;
        ne = laws.ne;
        inputs = laws.equations.inputs();
        int room = most + 2;
        q = new double[n];
        v = new double[room * n];
        c = new double[room * ne];
        speed = new double[room * ne];
        force = new double[room * ne];
        u = new double[room * inputs];
        reach = new double[ne];
        acceleration = new double[n];
        limit = new double[n];
        inverse = IntStream.rangeClosed(0, most + 2).mapToDouble(k -> 1.0 / k).toArray();
    }

    /** Highest power of the speeds in use. */
    int order() {
        return order;
    }

    /** Time for which τ runs from 0 to 1 (s). */
    double h() {
        return h;
    }

    /** Highest power of any height. */
    int inputDegree() {
        return inputDegree;
    }

    /** Compressions and their speeds at τ = 0, before any regime is known. */
    void locate(double step, int degreeOfHeights) {
        h = step;
        inputDegree = degreeOfHeights;
        rows.compress(q, 0, c, 0);
        for (int e : laws.driven) {
            c[e] += u[laws.input[e]];
        }
        speeds(0);
    }

    /**
     * Coefficients until the last two are below the tolerance; if they are not at the highest power, the step is shortened to where they
     * are and the coefficients are scaled to it.
     *
     * @param step to try (s); q, v and u hold their leading coefficients for it
     * @param degreeOfHeights highest power of any height
     */
    void converge(double step, int degreeOfHeights) {
        locate(step, degreeOfHeights);
        Arrays.fill(reach, 0);
        driven(0);
        for (int i = 0; i < n; i++) {
            limit[i] = tolerance * (1 + Math.abs(acceleration[i]));
        }
        next(0);
        int small = 0;
        int least = pushes.least(inputDegree);
        for (int k = 1; k <= most; k++) {
            if (k < inputDegree) {
                speeds(k);
                driven(k);
            } else {
                free(k);
            }
            small = next(k) ? small + 1 : 0;
            if (small >= 2 && k > 2 && k >= least) {
                close(k);
                return;
            }
        }
        shorten();
    }

    /** {@code ċ_k} of every element, heights included. */
    private void speeds(int k) {
        rows.compress(v, k * n, speed, k * ne);
        if (k < inputDegree) {
            double factor = (k + 1) / h;
            for (int e : laws.driven) {
                speed[k * ne + e] += factor * u[(k + 1) * inputs + laws.input[e]];
            }
        }
    }

    /** Forces and acceleration of coefficient k once its ċ is known. */
    private void driven(int k) {
        int at = k * ne;
        for (int e = 0; e < ne; e++) {
            if (k > 0) {
                c[at + e] = h * speed[at - ne + e] * inverse[k];
                reach[e] += Math.abs(speed[at + e]);
            }
            double f = held.stiffness[e] * c[at + e] + held.damping[e] * speed[at + e];
            force[at + e] = k == 0 ? f + held.constant[e] : f;
        }
        accelerate(k);
    }

    /** All of coefficient k where no height has a part in it. */
    private void free(int k) {
        rows.term(h * inverse[k], v, k * n, speed, c, force, k * ne, ne, held.stiffness, held.damping, reach);
        accelerate(k);
    }

    /** Curved parts of the forces, gravity and pushes, beside the straight ones. */
    private void accelerate(int k) {
        int at = k * ne;
        for (int e : curved.elements) {
            force[at + e] = curved.force(e, k, h, c, speed, force[at + e]);
        }
        rows.accelerate(force, at, acceleration);
        double share = h * inverse[Math.max(1, k)];
        for (int g = 0; g < laws.gravity.length; g++) {
            double displacement = k == 0 ? q[laws.gravityColumn[g]] : share * v[(k - 1) * n + laws.gravityColumn[g]];
            acceleration[laws.gravityRow[g]] += laws.gravity[g] * displacement;
        }
        if (k == 0) {
            for (int i = 0; i < n; i++) {
                acceleration[i] += laws.freeFall[i];
            }
        }
        if (!pushes.isEmpty()) {
            pushes.accelerate(k, h, u, inputDegree, force, acceleration);
        }
    }

    /** Row k + 1 of v; tells whether the acceleration's coefficient k is below the tolerance. */
    private boolean next(int k) {
        double share = h * inverse[k + 1];
        int at = (k + 1) * n;
        boolean small = true;
        for (int i = 0; i < n; i++) {
            double a = acceleration[i];
            v[at + i] = share * a;
            small &= Math.abs(a) < limit[i];
        }
        return small;
    }

    /** Ends the series with speeds of power k. */
    private void close(int k) {
        order = k;
        int at = (k + 1) * ne;
        double share = h * inverse[k + 1];
        for (int e = 0; e < ne; e++) {
            speed[at + e] = 0;
            c[at + e] = share * speed[at - ne + e];
            force[at + e] = held.stiffness[e] * c[at + e];
        }
        for (int e : curved.elements) {
            force[at + e] = curved.force(e, k + 1, h, c, speed, force[at + e]);
        }
    }

    /** Finds the share of the step in which the last two terms are below the tolerance. */
    private void shorten() {
        double share = 1;
        for (int k = most - 1; k <= most; k++) {
            double worst = 0;
            for (int i = 0; i < n; i++) {
                double term = Math.abs(v[(k + 1) * n + i]) * (k + 1) / h;
                worst = Math.max(worst, term / limit[i]);
            }
            if (worst > 1) {
                share = Math.min(share, Math.pow(worst, -1.0 / k));
            }
        }
        rescale(0.95 * share);
        close(most);
    }

    private void rescale(double share) {
        h *= share;
        double power = 1;
        Arrays.fill(reach, 0);
        for (int k = 0; k <= most; k++) {
            scaleRow(c, ne, k, power);
            scaleRow(speed, ne, k, power);
            scaleRow(force, ne, k, power);
            scaleRow(v, n, k, power);
            if (k <= inputDegree) {
                scaleRow(u, inputs, k, power);
            }
            for (int e = 0; e < ne && k > 0; e++) {
                reach[e] += Math.abs(speed[k * ne + e]);
            }
            power *= share;
        }
        scaleRow(v, n, most + 1, power);
        curved.rescale(share, most + 1);
        pushes.rescale(share, most);
    }

    private static void scaleRow(double[] x, int width, int k, double factor) {
        for (int i = k * width; i < (k + 1) * width; i++) {
            x[i] *= factor;
        }
    }

    /** Coefficient k of the friction state j (N). */
    double friction(int j, int k) {
        int e = laws.sliderElement[j];
        if (laws.envelope[e] > 0) {
            return curved.friction(j, k);
        } else if (regime.slider[j] == Regime.LOCKED) {
            double elongation = laws.sliderRate[j] * c[k * ne + e];
            return k == 0 ? elongation + held.anchor[j] : elongation;
        }
        double leaf = elastic(e, k) - regime.stopRate[e] * c[k * ne + e];
        return k == 0
                ? regime.sliding(j, leaf - regime.stopOffset[e])
                : regime.loaded[e] ? regime.slider[j] * laws.sliderShare[j] * laws.mu[e] * leaf : 0;
    }

    /** Coefficient k of f_e (N). */
    double elastic(int e, int k) {
        if (laws.curved[e]) {
            return curved.elastic(e, k);
        }
        double fe = regime.elasticRate[e] * c[k * ne + e];
        return k == 0 ? fe + regime.elasticOffset[e] : fe;
    }

    /** Compression of element e at τ (m). */
    double compression(int e, double tau) {
        return value(c, ne, e, order + 1, tau);
    }

    /** Moves q and v to τ. */
    void move(double tau, double[] newQ, double[] newV) {
        double share = tau * h;
        for (int i = 0; i < n; i++) {
            double value = 0;
            double integral = 0;
            for (int at = order * n + i, k = order; k >= 0; at -= n, k--) {
                value = value * tau + v[at];
                integral = integral * tau + v[at] * inverse[k + 1];
            }
            newV[i] = value;
            newQ[i] = q[i] + share * integral;
        }
    }

    /** Value at τ of one of the coefficient arrays. */
    static double value(double[] x, int width, int index, int degree, double tau) {
        double sum = 0;
        for (int k = degree; k >= 0; k--) {
            sum = sum * tau + x[k * width + index];
        }
        return sum;
    }
}
