package org.ridewright.math;

import java.util.Arrays;

/**
 * A function of one variable made of polynomials between joints.
 *
 * <p>On piece i, from {@code joint(i)} to {@code joint(i + 1)}, the value is {@code Σ_k a_{i,k} (x − joint(i))^k}. Left of
 * the first joint the function is constant at the first piece's value there; right of the last joint it is constant at
 * {@link #valueAfter()}. Pieces need not meet: at a jump the right-hand value holds.
 */
public final class PiecewisePolynomial implements PolynomialBlocks {
    private final double[] joints;
    /** Row per piece, {@code width} wide: one array, as long roads have millions of pieces. */
    private final double[] coefficients;

    private final int width;
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
        this.after = after;
        width = Arrays.stream(coefficients).mapToInt(row -> row.length).max().orElse(1);
        this.coefficients = new double[coefficients.length * width];
        for (int i = 0; i < coefficients.length; i++) {
            System.arraycopy(coefficients[i], 0, this.coefficients, i * width, coefficients[i].length);
        }
    }

    /** The same value everywhere. */
    public static PiecewisePolynomial constant(double value) {
        return new PiecewisePolynomial(new double[] {0, 1}, new double[][] {{value}}, value);
    }

    /** This, which is the only block of itself. */
    @Override
    public PiecewisePolynomial block(int i) {
        if (i != 0) {
            throw new IndexOutOfBoundsException("block " + i + " of 1");
        }
        return this;
    }

    @Override
    public boolean isLast(int i) {
        return i == 0;
    }

    /**
     * The part from a to b: the same values between them, constant outside; its first joint is a, its last one b.
     *
     * @param b > a
     * @throws IllegalArgumentException if b is not > a
     */
    public PiecewisePolynomial part(double a, double b) {
        if (!(b > a)) {
            throw new IllegalArgumentException("a part must end after it begins, got " + a + " to " + b);
        }
        int first = pieceAt(a);
        int last = Math.min(pieceAt(b), pieces());
        double[] ends = new double[last - first + 2];
        double[][] rows = new double[last - first + 1][];
        int kept = 0;
        ends[0] = a;
        for (int i = first; i <= last; i++) {
            double to = i == last ? b : joints[i + 1];
            if (to > ends[kept]) {
                rows[kept] = new double[width];
                expand(i, ends[kept], rows[kept]);
                ends[++kept] = to;
            }
        }
        return new PiecewisePolynomial(Arrays.copyOf(ends, kept + 1), Arrays.copyOf(rows, kept), value(b));
    }

    /** Number of pieces. */
    public int pieces() {
        return joints.length - 1;
    }

    /** Left end of piece i, or with i = {@link #pieces()} the right end of the last. */
    public double joint(int i) {
        return joints[i];
    }

    /** Coefficients of piece i, lowest power first, up to the last that is not zero; a copy. */
    public double[] coefficients(int i) {
        return Arrays.copyOfRange(coefficients, i * width, i * width + highestPower(i) + 1);
    }

    /** Highest power on any piece. */
    public int degree() {
        return width - 1;
    }

    /** Value left of the first joint. */
    public double valueBefore() {
        return coefficients[0];
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
            return pieces();
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
        if (piece < 0 || piece == pieces()) {
            double constant = piece < 0 ? valueBefore() : after;
            return order == 0 ? constant : 0;
        }
        double d = x - joints[piece];
        double sum = 0;
        for (int k = width - 1; k >= order; k--) {
            double factor = coefficients[piece * width + k];
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
        int last = expandLeading(piece, x, out);
        Arrays.fill(out, last + 1, out.length, 0);
    }

    /**
     * As {@link #expand}, but leaves entries past the piece's degree as they are.
     *
     * @return the piece's highest power
     * @throws IllegalArgumentException if {@code out} is shorter than the piece's coefficients
     */
    public int expandLeading(int piece, double x, double[] out) {
        if (piece < 0 || piece >= pieces()) {
            out[0] = piece < 0 ? valueBefore() : after;
            return 0;
        }
        if (out.length < width) {
            throw new IllegalArgumentException("room for " + out.length + " coefficients, need " + width);
        }
        int from = piece * width;
        int last = highestPower(piece);
        for (int k = 0; k <= last; k++) {
            out[k] = coefficients[from + k];
        }
        double d = x - joints[piece];
        if (d != 0) {
            for (int i = 0; i < last; i++) {
                for (int k = last - 1; k >= i; k--) {
                    out[k] += d * out[k + 1];
                }
            }
        }
        return last;
    }

    private int highestPower(int piece) {
        int last = width - 1;
        while (last > 0 && coefficients[piece * width + last] == 0) {
            last--;
        }
        return last;
    }
}
