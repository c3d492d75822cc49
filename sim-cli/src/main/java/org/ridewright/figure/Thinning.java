package org.ridewright.figure;

import java.awt.geom.Path2D;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;

/** Leaves out samples that cannot be seen in print. */
final class Thinning {
    private Thinning() {}

    /**
     * Samples to keep of a trace that runs forward: in each narrow column the first, lowest, highest and last, and one per
     * gap. Thus every extreme value of the trace is kept exactly.
     *
     * @param position places across the plot, never decreasing (pt); not modified
     * @param y ordinates, NaN for a gap; not modified
     * @param column width of a column (pt)
     * @return indices to keep, increasing
     */
    static int[] keepExtremes(double[] position, double[] y, double column) {
        int n = y.length;
        int[] kept = new int[n];
        int count = 0;
        int start = 0;
        while (start < n) {
            int end = start + 1;
            if (!Double.isNaN(y[start])) {
                double limit = position[start] + column;
                while (end < n && !Double.isNaN(y[end]) && position[end] < limit) {
                    end++;
                }
                count = keepColumn(y, start, end, kept, count);
            } else {
                while (end < n && Double.isNaN(y[end])) {
                    end++;
                }
                kept[count++] = start;
            }
            start = end;
        }
        return Arrays.copyOf(kept, count);
    }

    private static int keepColumn(double[] y, int start, int end, int[] kept, int count) {
        int low = start;
        int high = start;
        for (int i = start + 1; i < end; i++) {
            low = y[i] < y[low] ? i : low;
            high = y[i] > y[high] ? i : high;
        }
        int[] chosen = {start, Math.min(low, high), Math.max(low, high), end - 1};
        int last = -1;
        int next = count;
        for (int i : chosen) {
            if (i > last) {
                kept[next++] = i;
                last = i;
            }
        }
        return next;
    }

    /**
     * A line through a run of points, without those that lie within a tolerance of the line through the others.
     * Source: Douglas and Peucker 1973, with distances to the piece rather than to its extension.
     *
     * @param xs abscissae (pt), first n used; not modified
     * @param ys ordinates (pt), first n used; not modified
     * @param n number of points, ≥ 1
     * @param tolerance largest distance of a point left out (pt)
     * @return the path from the first point to the last
     */
    static Path2D path(double[] xs, double[] ys, int n, double tolerance) {
        BitSet keep = new BitSet(n);
        keep.set(0);
        keep.set(n - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, n - 1});
        while (!open.isEmpty()) {
            int[] span = open.pop();
            int far = farthest(xs, ys, span[0], span[1], tolerance);
            if (far >= 0) {
                keep.set(far);
                open.push(new int[] {span[0], far});
                open.push(new int[] {far, span[1]});
            }
        }
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, keep.cardinality() + 1);
        path.moveTo(xs[0], ys[0]);
        for (int i = keep.nextSetBit(1); i >= 0; i = keep.nextSetBit(i + 1)) {
            path.lineTo(xs[i], ys[i]);
        }
        return path;
    }

    private static int farthest(double[] xs, double[] ys, int from, int to, double tolerance) {
        double dx = xs[to] - xs[from];
        double dy = ys[to] - ys[from];
        double square = dx * dx + dy * dy;
        double largest = tolerance * tolerance;
        int far = -1;
        for (int i = from + 1; i < to; i++) {
            double px = xs[i] - xs[from];
            double py = ys[i] - ys[from];
            double along = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
            double ex = px - along * dx;
            double ey = py - along * dy;
            double distance = ex * ex + ey * ey;
            if (distance > largest) {
                largest = distance;
                far = i;
            }
        }
        return far;
    }
}
