package org.ridewright.solver;

import org.ridewright.suspension.GasLaw;

/**
 * Taylor coefficients of the motion from one instant, in powers of τ = (t − t_0)/h.
 *
 * <p>With k the power: {@code q_{k+1} = h v_k/(k+1)}, {@code c_{i,k} = B_i q_k + D_i u_k}, {@code ċ_{i,k} = B_i v_k + D_i u̇_k},
 * {@code a_k = −M⁻¹(g_q [k=0] + K_g q_k) + Σ_i w_i f_{i,k}}, {@code v_{k+1} = h a_k/(k+1)}. A straight piece gives f_{i,k} by one
 * multiplication; a locked slider adds {@code s_{k+1} = h k_p ċ_k/(k+1)}, one that slides {@code s_k = ±S_k}; gas and the exponential
 * envelope are Cauchy products. All work arrays are made once.
 */
final class TaylorSeries {
    private final FlatLaws laws;
    private final int n;
    private final int ne;
    private final int ns;
    private final int most;
    private final double tolerance;

    final double[] q;
    final double[] v;
    final double[] a;
    final double[] c;
    final double[] speed;
    final double[] elastic;
    final double[] viscous;
    final double[] force;
    final double[] s;
    final double[] u;
    private final double[] gasPower;
    private final double[] scale;
    private int order;
    private double h;

    /**
     * @param most highest power of the acceleration
     * @param tolerance of the last two terms, relative to 1 m/s² and the leading term
     */
    TaylorSeries(FlatLaws laws, int most, double tolerance) {
        this.laws = laws;
        this.most = most;
        this.tolerance = tolerance;
        n = laws.n;
        ne = laws.ne;
        ns = laws.sliders();
        int rows = most + 3;
        q = new double[rows * n];
        v = new double[rows * n];
        a = new double[rows * n];
        c = new double[rows * ne];
        speed = new double[rows * ne];
        elastic = new double[rows * ne];
        viscous = new double[rows * ne];
        force = new double[rows * ne];
        s = new double[rows * ns];
        u = new double[rows * laws.equations.inputs()];
        gasPower = new double[rows * ne];
        scale = new double[n];
    }

    /** Highest power of the acceleration in use. */
    int order() {
        return order;
    }

    /** Time for which τ runs from 0 to 1 (s). */
    double h() {
        return h;
    }

    /** Coefficients up to the given power, whatever their size. */
    void compute(double step, Regime regime, int upTo) {
        h = step;
        for (int k = 0; k <= upTo; k++) {
            next(k, regime);
        }
        order = upTo;
    }

    /**
     * Coefficients until the last two are below the tolerance; if they are not at the highest power, the step is shortened to where they
     * are and the coefficients are scaled to it.
     *
     * @param step to try (s); q, v, s and u hold their leading coefficients for it
     */
    void converge(double step, Regime regime) {
        h = step;
        int small = 0;
        for (int k = 0; k <= most; k++) {
            next(k, regime);
            double worst = 0;
            for (int i = 0; i < n; i++) {
                double term = Math.abs(a[k * n + i]);
                if (k == 0) {
                    scale[i] = 1 + term;
                }
                worst = Math.max(worst, term / scale[i]);
            }
            order = k;
            small = worst < tolerance ? small + 1 : 0;
            if (small >= 2 && k > 2) {
                return;
            }
        }
        shorten();
    }

    /** Finds the share of the step in which the last two terms are below the tolerance. */
    private void shorten() {
        double share = 1;
        for (int k = most - 1; k <= most; k++) {
            double worst = 0;
            for (int i = 0; i < n; i++) {
                worst = Math.max(worst, Math.abs(a[k * n + i]) / scale[i]);
            }
            if (worst > tolerance) {
                share = Math.min(share, Math.pow(tolerance / worst, 1.0 / k));
            }
        }
        rescale(0.95 * share);
    }

    private void rescale(double share) {
        h *= share;
        double power = 1;
        for (int k = 0; k <= most + 2; k++) {
            scaleRow(q, n, k, power);
            scaleRow(v, n, k, power);
            scaleRow(a, n, k, power);
            scaleRow(c, ne, k, power);
            scaleRow(speed, ne, k, power);
            scaleRow(elastic, ne, k, power);
            scaleRow(viscous, ne, k, power);
            scaleRow(force, ne, k, power);
            scaleRow(s, ns, k, power);
            scaleRow(u, laws.equations.inputs(), k, power);
            power *= share;
        }
    }

    private static void scaleRow(double[] x, int width, int k, double factor) {
        for (int i = k * width; i < (k + 1) * width; i++) {
            x[i] *= factor;
        }
    }

    private void next(int k, Regime regime) {
        for (int e = 0; e < ne; e++) {
            double ck = 0;
            double vk = 0;
            for (int j = 0; j < n; j++) {
                double b = laws.row[e * n + j];
                ck += b * q[k * n + j];
                vk += b * v[k * n + j];
            }
            int in = laws.input[e];
            if (in >= 0) {
                int inputs = laws.equations.inputs();
                ck += u[k * inputs + in];
                vk += (k + 1) * u[(k + 1) * inputs + in] / h;
            }
            c[k * ne + e] = ck;
            speed[k * ne + e] = vk;
            element(e, k, ck, vk, regime);
        }
        accelerate(k);
    }

    private void element(int e, int k, double ck, double vk, Regime regime) {
        double fe = regime.elasticRate[e] * ck;
        double fd = regime.dampingRate[e] * vk;
        if (k == 0) {
            fe += regime.elasticOffset[e];
            fd += regime.dampingOffset[e];
        }
        if (laws.gas[e] != null) {
            fe += gas(e, k, laws.gas[e]);
        }
        elastic[k * ne + e] = fe;
        viscous[k * ne + e] = fd;
        double sum = fe + fd;
        for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
            sum += slider(e, j, k, fe, vk, regime);
        }
        force[k * ne + e] = regime.acts(e) ? sum : 0;
    }

    /** Friction coefficient k; a locked slider or envelope also gets its next one. */
    private double slider(int e, int j, int k, double fe, double vk, Regime regime) {
        if (laws.envelope[e] > 0) {
            double product = 0;
            int sense = regime.sense[e];
            for (int l = 0; l <= k; l++) {
                int m = k - l;
                double limit = regime.loaded[e] ? laws.mu[e] * elastic[m * ne + e] : 0;
                if (m == 0) {
                    limit += laws.constant[e];
                }
                product += speed[l * ne + e] * (sense * limit - s[m * ns + j]);
            }
            s[(k + 1) * ns + j] = h * sense * product / (laws.envelope[e] * (k + 1));
        } else if (regime.slider[j] == Regime.LOCKED) {
            s[(k + 1) * ns + j] = h * laws.sliderRate[j] * vk / (k + 1);
        } else {
            double limit = regime.loaded[e] ? laws.mu[e] * fe : 0;
            if (k == 0) {
                limit += laws.constant[e];
            }
            s[k * ns + j] = regime.slider[j] * laws.sliderShare[j] * limit;
            s[(k + 1) * ns + j] = 0;
        }
        return s[k * ns + j];
    }

    /** Power series of {@code y = p^α}, p = 1 − c/L: {@code k p_0 y_k = Σ_{j=1..k} (α j − (k − j)) p_j y_{k−j}}. */
    private double gas(int e, int k, GasLaw law) {
        double alpha = -law.exponent();
        double p0 = 1 - c[e] / law.length();
        double y;
        if (k == 0) {
            y = Math.pow(p0, alpha);
        } else {
            double sum = 0;
            for (int j = 1; j <= k; j++) {
                double pj = -c[j * ne + e] / law.length();
                sum += (alpha * j - (k - j)) * pj * gasPower[(k - j) * ne + e];
            }
            y = sum / (k * p0);
        }
        gasPower[k * ne + e] = y;
        return law.ambientForce() * (k == 0 ? y - 1 : y);
    }

    private void accelerate(int k) {
        for (int i = 0; i < n; i++) {
            double sum = k == 0 ? laws.freeFall[i] : 0;
            if (laws.gravityPresent) {
                for (int j = 0; j < n; j++) {
                    sum += laws.gravity[i * n + j] * q[k * n + j];
                }
            }
            a[k * n + i] = sum;
        }
        for (int e = 0; e < ne; e++) {
            double f = force[k * ne + e];
            if (f != 0) {
                for (int i = 0; i < n; i++) {
                    a[k * n + i] += laws.w[e * n + i] * f;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            v[(k + 1) * n + i] = h * a[k * n + i] / (k + 1);
            q[(k + 1) * n + i] = h * v[k * n + i] / (k + 1);
            q[(k + 2) * n + i] = h * v[(k + 1) * n + i] / (k + 2);
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
