package org.ridewright.suspension;

/**
 * Enclosed gas: {@code f(c) = F_a [(1 − c/L)^(−n) − 1]}, from {@code p Vⁿ} constant with no gauge pressure at c = 0. The polytropic change of
 * an ideal gas under a piston of constant area: n = 1 for changes slow enough to stay at one temperature, 1.4 for quick ones of air.
 *
 * @param ambientForce F_a, ambient pressure times piston area (N), > 0
 * @param length L, volume in the free state over piston area (m), > 0
 * @param exponent n, > 0
 */
public record GasLaw(double ambientForce, double length, double exponent) {
    /** Force at compression c (N); infinite at c ≥ L. */
    public double force(double c) {
        return c < length ? ambientForce * (Math.pow(1 - c / length, -exponent) - 1) : Double.POSITIVE_INFINITY;
    }

    /** {@code df/dc} (N/m). */
    public double rate(double c) {
        return c < length
                ? ambientForce * exponent / length * Math.pow(1 - c / length, -exponent - 1)
                : Double.POSITIVE_INFINITY;
    }

    /** Integral of the force from 0 to c (J). */
    public double energy(double c) {
        double p = 1 - c / length;
        double work = exponent == 1 ? -Math.log(p) : (Math.pow(p, 1 - exponent) - 1) / (exponent - 1);
        return ambientForce * (length * work - c);
    }
}
