package org.ridewright.math;

import java.util.Arrays;

/**
 * A function of one variable made of polynomials between joints.
 *
 * <p>On piece i, from {@code joint(i)} to {@code joint(i + 1)}, the value is {@code Σ_k a_{i,k} (x − joint(i))^k}. Left of
 * the first joint the function is constant at the first piece's value there; right of the last joint it is constant at
 * {@link #valueAfter()}. Pieces need not meet: at a jump the right-hand value holds.
 */
public final class PiecewisePolynomial {
    private final double[] joints;
    private final double[][] coefficients;
    private final double after;

    /**
     * @param joints strictly increasing, length pieces + 1; copied
     * @param coefficients one row per piece, lowest power first, in powers of the distance from the piece's left joint; copied
     * @param after value right of the last joint
     * @throws IllegalArgumentException if the lengths disagree, joints do not increase, or a number is not finite
     */
    public PiecewisePolynomial(double[] joints, double[][] coefficients, double after) {
        if (joints.length != coefficients.length + 1 || coefficients.length == 0) {
            throw new IllegalArgumentException("need one joint more than pieces, got " + joints.length + " joints, "
                    + coefficients.length + " pieces");
        }
        for (int i = 0; i < coefficients.length; i++) {
            if (!(joints[i] < joints[i + 1])) {
                throw new IllegalArgumentException("joints must increase, got " + joints[i] + " then " + joints[i + 1]);
            }
            for (double a : coefficients[i]) {
                if (!Double.isFinite(a)) {
                    throw new IllegalArgumentException("coefficient of piece " + i + " is " + a);
                }
            }
        }
        this.joints = joints.clone();
        this.coefficients = Arrays.stream(coefficients).map(double[]::clone).toArray(double[][]::new);
        this.after = after;
    }

    /** The same value everywhere. */
    public static PiecewisePolynomial constant(double value) {
        return new PiecewisePolynomial(new double[] {0, 1}, new double[][] {{value}}, value);
    }

    /** Number of pieces. */
    public int pieces() {
        return coefficients.length;
    }

    /** Left end of piece i, or with i = {@link #pieces()} the right end of the last. */
    public double joint(int i) {
        return joints[i];
    }

    /** Coefficients of piece i, lowest power first; a copy. */
    public double[] coefficients(int i) {
        return coefficients[i].clone();
    }

    /** Highest power on any piece. */
    public int degree() {
        return Arrays.stream(coefficients).mapToInt(row -> row.length - 1).max().orElse(0);
    }

    /** Value left of the first joint. */
    public double valueBefore() {
        return coefficients[0][0];
    }

    /** Value right of the last joint. */
    public double valueAfter() {
        return after;
    }

    /** Piece that holds x, right-hand convention: −1 left of the first joint, {@link #pieces()} from the last joint on. */
    public int pieceAt(double x) {
        if (x < joints[0]) {
            return -1;
        }
        if (x >= joints[joints.length - 1]) {
            return coefficients.length;
        }
        int found = Arrays.binarySearch(joints, x);
        return found >= 0 ? found : -found - 2;
    }

    /** Value at x, right-hand limit at a jump. */
    public double value(double x) {
        return derivative(x, 0);
    }

    /** Derivative of the given order at x, right-hand limit at a joint. */
    public double derivative(double x, int order) {
        int piece = pieceAt(x);
        if (piece < 0 || piece == coefficients.length) {
            double constant = piece < 0 ? valueBefore() : after;
            return order == 0 ? constant : 0;
        }
        double[] a = coefficients[piece];
        double d = x - joints[piece];
        double sum = 0;
        for (int k = a.length - 1; k >= order; k--) {
            double factor = a[k];
            for (int j = 0; j < order; j++) {
                factor *= k - j;
            }
            sum = sum * d + factor;
        }
        return sum;
    }

    /**
     * Coefficients about x of the piece that holds x: {@code value(x + d) = Σ_k out[k] d^k} up to the next joint.
     *
     * @param out overwritten; entries past the piece's degree are zero
     * @throws IllegalArgumentException if {@code out} is shorter than the piece's coefficients
     */
    public void expand(int piece, double x, double[] out) {
        int degree = expandLeading(piece, x, out);
        Arrays.fill(out, degree + 1, out.length, 0);
    }

    /**
     * As {@link #expand}, but leaves entries past the piece's degree as they are.
     *
     * @return the piece's highest power
     * @throws IllegalArgumentException if {@code out} is shorter than the piece's coefficients
     */
    public int expandLeading(int piece, double x, double[] out) {
        if (piece < 0 || piece >= coefficients.length) {
            out[0] = piece < 0 ? valueBefore() : after;
            return 0;
        }
        double[] a = coefficients[piece];
        int degree = a.length - 1;
        if (out.length <= degree) {
            throw new IllegalArgumentException("room for " + out.length + " coefficients, need " + a.length);
        }
        for (int k = 0; k <= degree; k++) {
            out[k] = a[k];
        }
        double d = x - joints[piece];
        if (d != 0) {
            for (int i = 0; i < degree; i++) {
                for (int k = degree - 1; k >= i; k--) {
                    out[k] += d * out[k + 1];
                }
            }
        }
        return degree;
    }
}
