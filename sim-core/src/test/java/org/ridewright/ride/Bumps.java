package org.ridewright.ride;

import org.ridewright.math.PiecewisePolynomial;

/** Heights of the ground made by hand. */
final class Bumps {
    private Bumps() {}

    /** One smooth wave {@code 64 h s³(1 − s)³}, s from 0 to 1 between its beginning and its end. */
    static PiecewisePolynomial wave(double height, double begin, double end) {
        double[] a = {0, 0, 0, 1, -3, 3, -1};
        for (int k = 0; k < a.length; k++) {
            a[k] *= 64 * height / Math.pow(end - begin, k);
        }
        return new PiecewisePolynomial(new double[] {begin, end}, new double[][] {a}, 0);
    }
}
