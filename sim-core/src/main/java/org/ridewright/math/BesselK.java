package org.ridewright.math;

import org.hipparchus.special.Gamma;

/**
 * The modified Bessel function of the second kind, from its integral
 *
 * <pre>  K_v(x) = ∫ exp(−x cosh t) cosh(v t) dt,  t from 0 to ∞</pre>
 *
 * <p>The integrand, even in t, falls double exponentially, near t = 0 like a Gaussian of width {@code 1/√x}: the trapezium rule
 * converges faster than any power of its step h. With the steps taken here its error is below 1e-13 of the value for v ≤ 3.
 *
 * <p>Gives the same bits on every machine.
 */
public final class BesselK {
    private static final double LONGEST_STEP = 0.125;
    private static final double STEP_OVER_WIDTH = 0.75;
    /** Past it exp(−x cosh t) cosh(vt) is nothing beside the sum. */
    private static final double SPENT = 1e-18;

    private BesselK() {}

    /**
     * K_v(x).
     *
     * @param v order, ≥ 0
     * @param x argument, > 0
     * @throws IllegalArgumentException if a bound above is broken
     */
    public static double value(double v, double x) {
        if (!(v >= 0) || !(x > 0)) {
            throw new IllegalArgumentException("order must be ≥ 0 and argument > 0, got " + v + " and " + x);
        }
        return StrictMath.exp(-x) * scaled(v, x);
    }

    /**
     * Correlation of Matérn's form, {@code 2^(1−v)/Γ(v) x^v K_v(x)}: 1 at x = 0, falling steadily to 0.
     *
     * @param v order, > 0
     * @param x argument, ≥ 0
     */
    public static double correlation(double v, double x) {
        if (x == 0) {
            return 1;
        }
        double log = (1 - v) * StrictMath.log(2) - Gamma.logGamma(v) + v * StrictMath.log(x) - x;
        return Math.min(1, StrictMath.exp(log) * scaled(v, x));
    }

    /** {@code e^x K_v(x)}. */
    private static double scaled(double v, double x) {
        double h = Math.min(LONGEST_STEP, STEP_OVER_WIDTH / Math.sqrt(x));
        double sum = 0.5;
        double term = 1;
        for (int i = 1; term > SPENT * sum; i++) {
            double t = i * h;
            // cosh t − 1 = 2 sinh²(t/2), without cancellation
            double half = StrictMath.sinh(t / 2);
            term = StrictMath.exp(-2 * x * half * half) * StrictMath.cosh(v * t);
            sum += term;
        }
        return h * sum;
    }
}
