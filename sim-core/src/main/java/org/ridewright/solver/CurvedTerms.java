package org.ridewright.solver;

import java.util.stream.IntStream;
import org.ridewright.suspension.GasLaw;

/**
 * Coefficients of what is not straight: enclosed gas and the exponential envelope, by Cauchy products. Mutable, one per run; empty for a
 * vehicle that has neither.
 */
final class CurvedTerms {
    private final FlatLaws laws;
    private final Regime regime;
    private final HeldLaws held;
    private final int ne;
    private final int ns;
    /** Indices of the elements concerned. */
    final int[] elements;

    private final double[] elastic;
    private final double[] gasPower;
    private final double[] friction;

    CurvedTerms(FlatLaws laws, Regime regime, HeldLaws held, int rows) {
        this.laws = laws;
        this.regime = regime;
        this.held = held;
        ne = laws.ne;
        ns = laws.sliders();
        elements = IntStream.range(0, ne).filter(e -> laws.curved[e]).toArray();
        int room = elements.length == 0 ? 0 : rows;
        elastic = new double[room * ne];
        gasPower = new double[room * ne];
        friction = new double[room * ns];
    }

    /** Sets the friction of an envelope at the step's beginning (N). */
    void begin(double[] envelopeForce) {
        if (elements.length > 0) {
            System.arraycopy(envelopeForce, 0, friction, 0, ns);
        }
    }

    /** Coefficient k of f_e (N); of a curved element only. */
    double elastic(int e, int k) {
        return elastic[k * ne + e];
    }

    /** Coefficient k of the envelope's friction j (N). */
    double friction(int j, int k) {
        return friction[k * ns + j];
    }

    /**
     * Coefficient k of the force of a curved element, from coefficients 0 to k of c and ċ.
     *
     * @param h time for which τ runs from 0 to 1 (s)
     * @param straight {@code stiffness·c_k + damping·ċ_k}, with the constant at k = 0
     */
    double force(int e, int k, double h, double[] c, double[] speed, double straight) {
        double fe = regime.elasticRate[e] * c[k * ne + e];
        if (k == 0) {
            fe += regime.elasticOffset[e];
        }
        if (laws.gas[e] != null) {
            fe += gas(e, k, c, laws.gas[e]);
        }
        elastic[k * ne + e] = fe;
        double f = straight + held.elasticFactor[e] * fe;
        if (laws.envelope[e] > 0) {
            int j = laws.sliderFrom[e];
            envelope(e, j, k, h, c, speed);
            f += friction[k * ns + j];
        }
        return regime.acts(e) ? f : 0;
    }

    /** {@code ṡ = ċ (S sgn(ċ) − s) sgn(ċ)/β}: coefficient k + 1 of s from those up to k. */
    private void envelope(int e, int j, int k, double h, double[] c, double[] speed) {
        double product = 0;
        int sense = regime.sense[e];
        for (int l = 0; l <= k; l++) {
            int m = k - l;
            double leaf = elastic[m * ne + e] - regime.stopRate[e] * c[m * ne + e];
            double limit = regime.loaded[e] ? laws.mu[e] * leaf : 0;
            if (m == 0) {
                limit += laws.constant[e] - (regime.loaded[e] ? laws.mu[e] * regime.stopOffset[e] : 0);
            }
            product += speed[l * ne + e] * (sense * limit - friction[m * ns + j]);
        }
        friction[(k + 1) * ns + j] = h * sense * product / (laws.envelope[e] * (k + 1));
    }

    /** Power series of {@code y = p^α}, p = 1 − c/L: {@code k p_0 y_k = Σ_{j=1..k} (α j − (k − j)) p_j y_{k−j}}. */
    private double gas(int e, int k, double[] c, GasLaw law) {
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

    /** Value of the envelope's friction j at τ. */
    double frictionAt(int j, int degree, double tau) {
        return TaylorSeries.value(friction, ns, j, degree, tau);
    }

    /** Scales rows 0 to {@code last} to a step shortened to the given share. */
    void rescale(double share, int last) {
        if (elements.length == 0) {
            return;
        }
        double power = 1;
        for (int k = 0; k <= last; k++) {
            for (int e : elements) {
                elastic[k * ne + e] *= power;
                gasPower[k * ne + e] *= power;
            }
            for (int j = 0; j < ns; j++) {
                friction[k * ns + j] *= power;
            }
            power *= share;
        }
    }
}
