package org.ridewright.math;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Gathers adjoining polynomial pieces from left to right; two straight pieces in one line become one.
 *
 * <p>Pieces shorter than {@link #SHORTEST} are left out: the next piece begins where the last one ended.
 */
public final class PieceCollector {
    /** Shortest piece kept, for stations up to a metre; grows with the station to stay above round-off. */
    public static final double SHORTEST = 1e-12;

    private static final double SAME_SLOPE = 1e-13;

    private final List<double[]> rows = new ArrayList<>();
    private double[] joints = new double[32];

    /**
     * Adds one piece.
     *
     * @param from where it begins; where the last piece ended
     * @param to where it ends
     * @param coefficients lowest power first, in powers of the distance from {@code from}; not copied
     */
    public void add(double from, double to, double... coefficients) {
        double start = rows.isEmpty() ? from : joints[rows.size()];
        if (to - start <= SHORTEST * Math.max(1, Math.abs(to))) {
            return;
        }
        double[] row = trimmed(coefficients);
        if (continuesLine(start, row)) {
            joints[rows.size()] = to;
            return;
        }
        if (rows.size() + 2 > joints.length) {
            joints = Arrays.copyOf(joints, 2 * joints.length);
        }
        joints[rows.size()] = start;
        joints[rows.size() + 1] = to;
        rows.add(row);
    }

    /**
     * The function gathered. Constant pieces at either end that only repeat the value outside are left out.
     *
     * @param before value left of the first piece
     * @param after value right of the last piece
     */
    public PiecewisePolynomial build(double before, double after) {
        int first = 0;
        int last = rows.size();
        while (first < last && isConstant(rows.get(first), before)) {
            first++;
        }
        while (last > first && isConstant(rows.get(last - 1), after)) {
            last--;
        }
        if (first == last && before == after) {
            return PiecewisePolynomial.constant(before);
        }
        boolean jumps = first == last || rows.get(first)[0] != before;
        int extra = jumps ? 1 : 0;
        double[] kept = new double[last - first + 1 + extra];
        double[][] coefficients = new double[last - first + extra][];
        System.arraycopy(joints, first, kept, extra, last - first + 1);
        if (jumps) {
            // the value before the first joint is the first piece's own: a jump there needs a piece before it
            kept[0] = kept[1] - 1;
            coefficients[0] = new double[] {before};
        }
        for (int i = first; i < last; i++) {
            coefficients[i - first + extra] = rows.get(i);
        }
        return new PiecewisePolynomial(kept, coefficients, after);
    }

    private boolean continuesLine(double at, double[] row) {
        if (rows.isEmpty() || row.length > 2) {
            return false;
        }
        double[] last = rows.get(rows.size() - 1);
        if (last.length > 2 || Math.abs(slope(last) - slope(row)) > SAME_SLOPE) {
            return false;
        }
        double end = last[0] + slope(last) * (at - joints[rows.size() - 1]);
        return Math.abs(end - row[0]) <= 4 * Math.ulp(Math.max(Math.abs(end), Math.abs(row[0])));
    }

    private static double slope(double[] row) {
        return row.length > 1 ? row[1] : 0;
    }

    private static boolean isConstant(double[] row, double value) {
        return row.length == 1 && row[0] == value;
    }

    private static double[] trimmed(double[] row) {
        int n = row.length;
        while (n > 1 && row[n - 1] == 0) {
            n--;
        }
        return n == row.length ? row : Arrays.copyOf(row, n);
    }
}
