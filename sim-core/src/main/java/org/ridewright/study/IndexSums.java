package org.ridewright.study;

import java.util.function.ToDoubleFunction;

/**
 * Sobol' indices of one function of k values, from runs point by point as {@link SaltelliDesign} orders them.
 *
 * <pre>
 *   S_i  = ⟨(f_B − f̄)(f_ABi − f_A)⟩ / V        share of the variance that knowing value i alone would take away
 *   ST_i = ⟨(f_A − f_ABi)²⟩ / 2V                share that would stay if all but value i were known
 * </pre>
 *
 * with mean f̄ and variance V over A and B. Points at which any run failed are left out; where they are more than a tenth,
 * what is left says too little of the whole, and nothing is told. Memory does not grow with the number of points.
 *
 * <p>Source: S_i after Saltelli and others (2010), table 2 (b); ST_i after Jansen (1999), same table (f); from memory, checked against the known indices of
 * Ishigami's function.
 */
public final class IndexSums {
    private static final int SHARED = 5;
    /** Share of the points that may be left out; beyond, nothing is told. */
    static final double MOST_LEFT = 0.1;

    private static final Estimate UNTOLD = new Estimate(Double.NaN, Double.NaN, Double.NaN);

    private final int k;
    private final Resampled sums;
    private double shift = Double.NaN;
    private long used;
    private long left;

    public IndexSums(int k, long seed) {
        this.k = k;
        sums = new Resampled(SHARED + 3 * k, seed);
    }

    /**
     * Takes a point.
     *
     * @param f values of the function: A, B, AB_1, …, AB_k; NaN where a run failed
     */
    public void add(long point, double[] f) {
        for (double value : f) {
            if (!Double.isFinite(value)) {
                left++;
                return;
            }
        }
        if (Double.isNaN(shift)) {
            shift = f[0];
        }
        used++;
        double a = f[0] - shift;
        double b = f[1] - shift;
        double[] terms = new double[SHARED + 3 * k];
        terms[0] = 1;
        terms[1] = a;
        terms[2] = b;
        terms[3] = a * a;
        terms[4] = b * b;
        for (int i = 0; i < k; i++) {
            double change = f[2 + i] - f[0];
            terms[SHARED + 3 * i] = b * change;
            terms[SHARED + 3 * i + 1] = change;
            terms[SHARED + 3 * i + 2] = change * change;
        }
        sums.add(point, terms);
    }

    private static double mean(double[] s) {
        return (s[1] + s[2]) / (2 * s[0]);
    }

    private static double variance(double[] s) {
        return (s[3] + s[4]) / (2 * s[0]) - mean(s) * mean(s);
    }

    /** First-order index of value {@code i}. */
    public Estimate first(int i) {
        return told(s -> (s[SHARED + 3 * i] - mean(s) * s[SHARED + 3 * i + 1]) / s[0] / variance(s));
    }

    /** Total index of value {@code i}. */
    public Estimate total(int i) {
        return told(s -> s[SHARED + 3 * i + 2] / (2 * s[0]) / variance(s));
    }

    /** Standard deviation of the function (its unit). */
    public Estimate deviation() {
        return told(s -> Math.sqrt(Math.max(0, variance(s))));
    }

    private Estimate told(ToDoubleFunction<double[]> of) {
        return isTold() ? sums.estimate(of) : UNTOLD;
    }

    /** Whether no more than a tenth of the points had to be left out. */
    public boolean isTold() {
        return left <= MOST_LEFT * (used + left);
    }

    /** Points that were taken. */
    public long used() {
        return used;
    }

    /** Points that were left out because a run failed. */
    public long left() {
        return left;
    }
}
