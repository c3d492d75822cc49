package org.ridewright.solver;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;

/** Walks along the heights in time; mutable, one per run. */
final class HeightCursor {
    private final PiecewisePolynomial[] heights;
    private final int[] piece;
    private final double[] joint;
    private final double[] work;
    private double nextJoint;

    HeightCursor(List<PiecewisePolynomial> heights, int room) {
        this.heights = heights.toArray(PiecewisePolynomial[]::new);
        piece = new int[heights.size()];
        joint = new double[heights.size()];
        work = new double[room];
        for (int i = 0; i < piece.length; i++) {
            if (this.heights[i].degree() >= room - 1) {
                throw new IllegalArgumentException("heights may have degree " + (room - 2) + " at most");
            }
            piece[i] = this.heights[i].pieceAt(0);
            joint[i] = end(i);
        }
        nextJoint = least();
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

    /** Passes every joint at or before t. */
    void pass(double t) {
        if (t < nextJoint) {
            return;
        }
        for (int i = 0; i < piece.length; i++) {
            while (joint[i] <= t) {
                piece[i]++;
                joint[i] = end(i);
            }
        }
        nextJoint = least();
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
