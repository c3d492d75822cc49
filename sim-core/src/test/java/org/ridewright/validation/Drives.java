package org.ridewright.validation;

import org.ridewright.math.PiecewisePolynomial;

/** Heights against time that have closed forms. */
final class Drives {
    /** Degree at which a twenty-fourth of a cosine's cycle is exact to round-off: 0.27¹³/13! is 1e-17. */
    private static final int DEGREE = 12;

    private Drives() {}

    /** {@code amplitude cos(ωt + phase)} to round-off, from 0 until past the duration. */
    static PiecewisePolynomial cosine(double amplitude, double omega, double phase, double duration) {
        return cosine(amplitude, omega, phase, duration, 24);
    }

    /** The same with a stated number of joints in a cycle. */
    static PiecewisePolynomial cosine(
            double amplitude, double omega, double phase, double duration, int piecesPerCycle) {
        double dt = 2 * Math.PI / omega / piecesPerCycle;
        int pieces = (int) Math.ceil(duration / dt) + 1;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][DEGREE + 1];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = i * dt;
        }
        for (int i = 0; i < pieces; i++) {
            double factor = amplitude;
            for (int k = 0; k <= DEGREE; k++) {
                a[i][k] = factor * Math.cos(omega * joints[i] + phase + k * Math.PI / 2);
                factor *= omega / (k + 1);
            }
        }
        return new PiecewisePolynomial(joints, a, 0);
    }

    /** From 0 to +X, −X, +X and so on at an even pace; {@code quarter} is the time for X (s). */
    static PiecewisePolynomial triangle(double amplitude, double quarter, int halfCycles) {
        double[] joints = new double[halfCycles + 2];
        double[][] a = new double[halfCycles + 1][];
        joints[1] = quarter;
        a[0] = new double[] {0, amplitude / quarter};
        for (int i = 1; i <= halfCycles; i++) {
            joints[i + 1] = joints[i] + 2 * quarter;
            double sign = i % 2 == 0 ? 1 : -1;
            a[i] = new double[] {-sign * amplitude, sign * amplitude / quarter};
        }
        return new PiecewisePolynomial(joints, a, halfCycles % 2 == 0 ? amplitude : -amplitude);
    }

    /** From 0 at each of these velocities for the time dt. */
    static PiecewisePolynomial velocities(double[] velocity, double dt) {
        double[] joints = new double[velocity.length + 1];
        double[][] a = new double[velocity.length][];
        double height = 0;
        for (int i = 0; i < velocity.length; i++) {
            joints[i + 1] = (i + 1) * dt;
            a[i] = new double[] {height, velocity[i]};
            height += velocity[i] * dt;
        }
        return new PiecewisePolynomial(joints, a, height);
    }
}
