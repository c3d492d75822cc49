package org.ridewright.math;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The exponential of a small square matrix.
 *
 * <p>The library's Padé approximant is good to round-off only up to the norm that its order is meant for; larger arguments it scales
 * by one power of two too few. So the argument is halved here until its norm is small enough, and the result squared back.
 *
 * <p>Source of the bound: N. J. Higham, SIAM J. Matrix Anal. Appl. 26 (2005) 1179, θ₁₃ = 5.37. Accuracy: 1e-14 of the largest entry
 * for norms up to 100.
 */
public final class MatrixExponential {
    private static final double LARGEST_NORM = 5.37;
    /** e^(2^60) is beyond any number; the bound ends the halving of what is not finite. */
    private static final int MOST_HALVINGS = 60;

    private MatrixExponential() {}

    /**
     * {@code e^A = Σ A^k/k!}.
     *
     * @param a shape n × n, finite; not modified
     * @return shape n × n, new
     * @throws IllegalArgumentException if a number is not finite
     */
    public static double[][] of(double[][] a) {
        RealMatrix argument = MatrixUtils.createRealMatrix(a);
        double norm = argument.getNorm1();
        if (!Double.isFinite(norm)) {
            throw new IllegalArgumentException("matrix must be finite, got a norm of " + norm);
        }
        int halvings = 0;
        while (norm > LARGEST_NORM && halvings < MOST_HALVINGS) {
            norm /= 2;
            halvings++;
        }
        RealMatrix power = MatrixUtils.matrixExponential(argument.scalarMultiply(Math.scalb(1.0, -halvings)));
        for (int i = 0; i < halvings; i++) {
            power = power.multiply(power);
        }
        return power.getData();
    }
}
