package org.ridewright.solver;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialBlocks;

/** Walks along the heights in time; mutable, one per run. */
final class HeightCursor {
    /** What a wheel path may be off at a seam of two blocks; more is a jump (m). */
    private static final double LEAST_JUMP = 1e-7;

    private final PolynomialBlocks[] sources;
    private final int[] block;
    /** The present block of each height. */
    private final PiecewisePolynomial[] heights;

    private final int[] piece;
    private final double[] joint;
    private final double[] work;
    private final double[] rise;
    private double nextJoint;

    HeightCursor(List<? extends PolynomialBlocks> heights, int room) {
        sources = heights.toArray(PolynomialBlocks[]::new);
        block = new int[sources.length];
        this.heights = new PiecewisePolynomial[sources.length];
        piece = new int[heights.size()];
        joint = new double[heights.size()];
        work = new double[room];
        rise = new double[heights.size()];
        for (int i = 0; i < piece.length; i++) {
            take(i, 0);
            while (!sources[i].isLast(block[i]) && this.heights[i].pieceAt(0) == this.heights[i].pieces()) {
                take(i, block[i] + 1);
            }
            piece[i] = this.heights[i].pieceAt(0);
            joint[i] = end(i);
        }
        nextJoint = least();
    }

    private void take(int i, int number) {
        block[i] = number;
        heights[i] = sources[i].block(number);
        if (heights[i].degree() >= work.length - 1) {
            throw new IllegalArgumentException("heights may have degree " + (work.length - 2) + " at most");
        }
    }

    /** The next piece, of the next block where this one has no more. */
    private void next(int i) {
        piece[i]++;
        if (piece[i] == heights[i].pieces() && !sources[i].isLast(block[i])) {
            take(i, block[i] + 1);
            piece[i] = 0;
        }
        joint[i] = end(i);
    }

    private double end(int i) {
        return piece[i] < heights[i].pieces() ? heights[i].joint(piece[i] + 1) : Double.POSITIVE_INFINITY;
    }

    private double least() {
        double next = Double.POSITIVE_INFINITY;
        for (double x : joint) {
            next = Math.min(next, x);
        }
        return next;
    }

    /** First joint of any height after the present pieces' beginning (s). */
    double nextJoint() {
        return nextJoint;
    }

    /**
     * Passes every joint at or before t.
     *
     * @return whether a height jumps there, see {@link #rise}
     */
    boolean pass(double t) {
        if (t < nextJoint) {
            return false;
        }
        boolean jumps = false;
        for (int i = 0; i < piece.length; i++) {
            rise[i] = 0;
            if (joint[i] <= t) {
                double before = valueAt(i, t);
                while (joint[i] <= t) {
                    next(i);
                }
                rise[i] = valueAt(i, t) - before;
                jumps |= Math.abs(rise[i]) > LEAST_JUMP;
            }
        }
        nextJoint = least();
        return jumps;
    }

    /** How far height i rose at once at the joint last passed (m). */
    double rise(int i) {
        return rise[i];
    }

    private double valueAt(int i, double t) {
        heights[i].expandLeading(piece[i], t, work);
        return work[0];
    }

    /**
     * Writes {@code u_{k,i} h^k} about time t into rows of u, up to the highest power of any present piece.
     *
     * @return that power
     */
    int expand(double t, double h, double[] u) {
        int inputs = piece.length;
        int greatest = 0;
        for (int i = 0; i < inputs; i++) {
            int degree = heights[i].expandLeading(piece[i], t, work);
            for (int k = greatest + 1; k <= degree; k++) {
                for (int other = 0; other < i; other++) {
                    u[k * inputs + other] = 0;
                }
            }
            greatest = Math.max(greatest, degree);
            double power = 1;
            for (int k = 0; k <= greatest; k++) {
                u[k * inputs + i] = k <= degree ? work[k] * power : 0;
                power *= h;
            }
        }
        return greatest;
    }

    /** Heights at t on the present pieces. */
    void values(double t, double[] u) {
        for (int i = 0; i < piece.length; i++) {
            heights[i].expand(piece[i], t, work);
            u[i] = work[0];
        }
    }
}
