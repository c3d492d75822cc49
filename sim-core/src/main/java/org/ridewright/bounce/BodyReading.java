package org.ridewright.bounce;

import java.util.Arrays;
import org.ridewright.solver.Step;

/**
 * A motion as a row on the coordinates, counted from rest.
 *
 * @param row on coordinates; not modified
 * @param rest value of the row at rest
 * @param visible least motion to either side that is seen (m or rad)
 */
record BodyReading(Motion motion, double[] row, double rest, double visible) {
    /** Room for the polynomials of a step. */
    static final int ROOM = 40;

    /** Reads from a position q of rest. */
    static BodyReading from(Motion motion, double[] row, double[] q, double visible) {
        return new BodyReading(motion, row, dot(row, q), visible);
    }

    /** Value at coordinates q. */
    double at(double[] q) {
        return dot(row, q) - rest;
    }

    /** Writes the polynomial of the value on a step; its degree. */
    int value(Step step, double[] out) {
        Arrays.fill(out, 0);
        out[0] = -rest;
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                step.addDisplacement(i, row[i], out);
            }
        }
        return step.degree();
    }

    /** Writes the polynomial of its speed on a step; its degree. */
    int speed(Step step, double[] out) {
        Arrays.fill(out, 0);
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                step.addVelocity(i, row[i], out);
            }
        }
        return step.degree();
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Σ a_k τ^k. */
    static double polynomial(double[] a, int degree, double tau) {
        double sum = 0;
        for (int k = degree; k >= 0; k--) {
            sum = sum * tau + a[k];
        }
        return sum;
    }
}
