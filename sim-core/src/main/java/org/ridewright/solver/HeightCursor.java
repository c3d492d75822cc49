package org.ridewright.solver;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;

/** Walks along the heights in time; mutable, one per run. */
final class HeightCursor {
    private final PiecewisePolynomial[] heights;
    private final int[] piece;
    private final double[] work;

    HeightCursor(List<PiecewisePolynomial> heights, int room) {
        this.heights = heights.toArray(PiecewisePolynomial[]::new);
        piece = new int[heights.size()];
        work = new double[room];
        for (int i = 0; i < piece.length; i++) {
            if (this.heights[i].degree() >= room - 1) {
                throw new IllegalArgumentException("heights may have degree " + (room - 2) + " at most");
            }
            piece[i] = this.heights[i].pieceAt(0);
        }
    }

    /** First joint of any height after the present pieces' beginning (s). */
    double nextJoint() {
        double next = Double.POSITIVE_INFINITY;
        for (int i = 0; i < piece.length; i++) {
            if (piece[i] < heights[i].pieces()) {
                next = Math.min(next, heights[i].joint(piece[i] + 1));
            }
        }
        return next;
    }

    /** Passes every joint at or before t. */
    void pass(double t) {
        for (int i = 0; i < piece.length; i++) {
            while (piece[i] < heights[i].pieces() && heights[i].joint(piece[i] + 1) <= t) {
                piece[i]++;
            }
        }
    }

    /** Writes {@code u_{k,i} h^k} about time t into rows of u. */
    void expand(double t, double h, double[] u) {
        int inputs = piece.length;
        int rows = inputs == 0 ? 0 : u.length / inputs;
        for (int i = 0; i < inputs; i++) {
            heights[i].expand(piece[i], t, work);
            double power = 1;
            for (int k = 0; k < rows; k++) {
                u[k * inputs + i] = k < work.length ? work[k] * power : 0;
                power *= h;
            }
        }
    }

    /** Heights at t on the present pieces. */
    void values(double t, double[] u) {
        for (int i = 0; i < piece.length; i++) {
            heights[i].expand(piece[i], t, work);
            u[i] = work[0];
        }
    }
}
