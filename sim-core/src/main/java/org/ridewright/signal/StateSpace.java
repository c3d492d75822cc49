package org.ridewright.signal;

import java.util.List;

/**
 * A cascade of sections as {@code ẋ = A x + B u, y = C x + D u}.
 *
 * <p>Section i, with ω and 1/Q of its poles and the input u_i that the section before gives out, has the two states
 *
 * <pre>
 *   ẋ₁ = ω x₂        ẋ₂ = ω e        e = u_i − x₁ − x₂/Q
 *   y_i = β₀ x₁ + β₁ x₂ + β₂ e       β₀ = b0/a0, β₁ = b1 ω/a0, β₂ = b2/a2
 * </pre>
 *
 * so that all states have the input's unit and A has the size of the pole frequencies.
 */
final class StateSpace {
    /** Σ of the Taylor series stops here: 1/22! is below round-off for ‖A‖t ≤ 1. */
    private static final int TERMS = 22;

    final int order;
    final double[][] a;
    final double[] b;
    final double[] c;
    final double d;
    private final double[] steady;

    StateSpace(AnalogueFilter filter) {
        List<FilterSection> sections = filter.sections();
        order = 2 * sections.size();
        a = new double[order][order];
        b = new double[order];
        double[] out = new double[order];
        double through = filter.gain();
        double constant = filter.gain();
        steady = new double[order];
        for (int i = 0; i < sections.size(); i++) {
            FilterSection section = sections.get(i);
            double w = section.poleAngularFrequency();
            double damping = section.poleDamping();
            int p = 2 * i;
            a[p][p + 1] = w;
            for (int k = 0; k < p; k++) {
                a[p + 1][k] = w * out[k];
            }
            a[p + 1][p] = -w;
            a[p + 1][p + 1] = -w * damping;
            b[p + 1] = w * through;
            steady[p] = constant;
            constant *= section.b0() / section.a0();

            double beta0 = section.b0() / section.a0();
            double beta1 = section.b1() * w / section.a0();
            double beta2 = section.b2() / section.a2();
            for (int k = 0; k < p; k++) {
                out[k] *= beta2;
            }
            out[p] = beta0 - beta2;
            out[p + 1] = beta1 - beta2 * damping;
            through *= beta2;
        }
        c = out;
        d = through;
    }

    /** State under a constant input of 1: in each section x₁ is its input and x₂ is 0. */
    double[] steady() {
        return steady.clone();
    }

    /** Largest row sum of |A| (1/s). */
    double norm() {
        double largest = 0;
        for (double[] row : a) {
            double sum = 0;
            for (double value : row) {
                sum += Math.abs(value);
            }
            largest = Math.max(largest, sum);
        }
        return largest;
    }

    /** e^(A t) v by its Taylor series, to round-off for {@code norm()·t ≤ 1}; a new array. */
    double[] propagate(double[] v, double t) {
        double[] sum = v.clone();
        double[] term = v.clone();
        for (int k = 1; k <= TERMS; k++) {
            double[] next = new double[order];
            for (int i = 0; i < order; i++) {
                double s = 0;
                for (int j = 0; j < order; j++) {
                    s += a[i][j] * term[j];
                }
                next[i] = s * t / k;
                sum[i] += next[i];
            }
            term = next;
        }
        return sum;
    }
}
