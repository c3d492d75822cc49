package org.ridewright.solver;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Equations;

/**
 * Which coordinates an element touches, those where its row {@code B_i} is not zero: within a run of three and a later run of two (a spring
 * between a body and an axle), within a run of two (a wheel on the ground), or any others. What its force moves besides, by a mass
 * matrix that couples coordinates, is no part of the shape.
 *
 * @param kind which
 * @param triple beginning of the run of three, of {@link Kind#WIDE} only
 * @param pair beginning of the run of two, of {@link Kind#WIDE} and {@link Kind#NARROW}
 * @param columns every coordinate touched, in order; none of an element that touches nothing, which counts as narrow
 */
record RowShape(Kind kind, int triple, int pair, int[] columns) {
    static final int TRIPLE = 3;
    static final int PAIR = 2;

    /** In the order in which they are worked through. */
    enum Kind {
        WIDE,
        NARROW,
        OTHER
    }

    static RowShape of(Equations equations, int e) {
        int n = equations.size();
        double[] row = equations.elements().get(e).row();
        int[] columns = IntStream.range(0, n).filter(i -> row[i] != 0).toArray();
        int pair = pairOver(columns, n);
        if (pair >= 0) {
            return new RowShape(Kind.NARROW, 0, pair, columns);
        }
        int first = columns.length == 0 ? -1 : columns[0];
        for (int triple = Math.max(0, first - TRIPLE + 1); triple <= first && triple + TRIPLE + PAIR <= n; triple++) {
            int end = triple + TRIPLE;
            int[] rest = Arrays.stream(columns).filter(j -> j >= end).toArray();
            int second = rest.length == 0 ? end : pairOver(rest, n);
            if (second >= end) {
                return new RowShape(Kind.WIDE, triple, second, columns);
            }
        }
        return new RowShape(Kind.OTHER, 0, 0, columns);
    }

    /** Beginning of a run of two that holds all columns, or −1. */
    private static int pairOver(int[] columns, int n) {
        if (n < PAIR || (columns.length > 0 && columns[columns.length - 1] - columns[0] >= PAIR)) {
            return -1;
        }
        return columns.length == 0 ? 0 : Math.min(columns[0], n - PAIR);
    }
}
