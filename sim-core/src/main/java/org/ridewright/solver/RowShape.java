package org.ridewright.solver;

import java.util.Arrays;
import org.ridewright.dynamics.Equations;

/**
 * Which coordinates an element touches, by its row {@code B_i} or its column {@code M⁻¹B_iᵀ}: a run of three and a later run of two (a
 * spring between a body and an axle), a run of two (a wheel on the ground), or any others.
 *
 * @param kind which
 * @param triple beginning of the run of three, of {@link Kind#WIDE} only
 * @param pair beginning of the run of two, of {@link Kind#WIDE} and {@link Kind#NARROW}
 * @param columns every coordinate touched, in order
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
        int[] columns = columns(equations, e);
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

    private static int[] columns(Equations equations, int e) {
        int n = equations.size();
        double[] row = equations.elements().get(e).row();
        int[] found = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            boolean touched = row[i] != 0;
            double w = 0;
            for (int j = 0; j < n; j++) {
                w += equations.inverseMass(i, j) * row[j];
            }
            if (touched || w != 0) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Beginning of a run of two that holds all columns, or −1. */
    private static int pairOver(int[] columns, int n) {
        if (n < PAIR || (columns.length > 0 && columns[columns.length - 1] - columns[0] >= PAIR)) {
            return -1;
        }
        return columns.length == 0 ? 0 : Math.min(columns[0], n - PAIR);
    }
}
