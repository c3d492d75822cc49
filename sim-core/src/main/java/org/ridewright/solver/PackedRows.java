package org.ridewright.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Rows {@code B_i} and columns {@code w_i = −M⁻¹B_iᵀ} of all elements without their zeros, packed by shape so that the inner loops are
 * straight lines of arithmetic: a spring between a body and an axle touches a run of three coordinates and a run of two, a wheel on the
 * ground a run of two; what fits neither keeps a list of its coordinates.
 *
 * <p>Immutable.
 */
final class PackedRows {
    private static final int TRIPLE = 3;
    private static final int PAIR = 2;
    /** Row and column values of an element with both runs. */
    private static final int WIDE = 2 * (TRIPLE + PAIR);
    /** Row and column values of an element with one pair. */
    private static final int NARROW = 2 * PAIR;

    private final int[] wide;
    private final int[] wideTriple;
    private final int[] widePair;
    private final double[] wideValues;
    private final int[] narrow;
    private final int[] narrowPair;
    private final double[] narrowValues;
    private final int[] other;
    private final int[] otherFrom;
    private final int[] otherColumn;
    private final double[] otherRow;
    private final double[] otherW;

    PackedRows(FlatLaws laws) {
        List<int[]> wides = new ArrayList<>();
        List<int[]> narrows = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int e = 0; e < laws.ne; e++) {
            int[] columns = columns(laws, e);
            int pair = pairOver(columns, laws.n);
            int[] runs = runsOver(columns, laws.n);
            if (pair >= 0) {
                narrows.add(new int[] {e, pair});
            } else if (runs.length > 0) {
                wides.add(new int[] {e, runs[0], runs[1]});
            } else {
                others.add(e);
            }
        }
        wides.sort(Comparator.comparingInt(x -> x[1]));
        wide = wides.stream().mapToInt(x -> x[0]).toArray();
        wideTriple = wides.stream().mapToInt(x -> x[1]).toArray();
        widePair = wides.stream().mapToInt(x -> x[2]).toArray();
        wideValues = new double[WIDE * wide.length];
        for (int x = 0; x < wide.length; x++) {
            fillRuns(laws, wide[x], wideTriple[x], widePair[x], x * WIDE);
        }
        narrow = narrows.stream().mapToInt(x -> x[0]).toArray();
        narrowPair = narrows.stream().mapToInt(x -> x[1]).toArray();
        narrowValues = new double[NARROW * narrow.length];
        for (int x = 0; x < narrow.length; x++) {
            for (int i = 0; i < PAIR; i++) {
                int at = narrow[x] * laws.n + narrowPair[x] + i;
                narrowValues[x * NARROW + i] = laws.row[at];
                narrowValues[x * NARROW + PAIR + i] = laws.w[at];
            }
        }
        other = others.stream().mapToInt(x -> x).toArray();
        otherFrom = new int[other.length + 1];
        List<int[]> lists = others.stream().map(e -> columns(laws, e)).toList();
        for (int x = 0; x < other.length; x++) {
            otherFrom[x + 1] = otherFrom[x] + lists.get(x).length;
        }
        otherColumn = lists.stream().flatMapToInt(Arrays::stream).toArray();
        otherRow = new double[otherColumn.length];
        otherW = new double[otherColumn.length];
        for (int x = 0; x < other.length; x++) {
            for (int p = otherFrom[x]; p < otherFrom[x + 1]; p++) {
                otherRow[p] = laws.row[other[x] * laws.n + otherColumn[p]];
                otherW[p] = laws.w[other[x] * laws.n + otherColumn[p]];
            }
        }
    }

    /** Coordinates at which the row or the column of an element differs from zero, in order. */
    private static int[] columns(FlatLaws laws, int e) {
        int[] found = new int[laws.n];
        int count = 0;
        for (int j = 0; j < laws.n; j++) {
            if (laws.row[e * laws.n + j] != 0 || laws.w[e * laws.n + j] != 0) {
                found[count++] = j;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Start of a run of two that holds all columns, or −1. */
    private static int pairOver(int[] columns, int n) {
        if (n < PAIR || (columns.length > 0 && columns[columns.length - 1] - columns[0] >= PAIR)) {
            return -1;
        }
        return columns.length == 0 ? 0 : Math.min(columns[0], n - PAIR);
    }

    /** Starts of a run of three and a later run of two that hold all columns, or nothing. */
    private static int[] runsOver(int[] columns, int n) {
        if (n < TRIPLE + PAIR) {
            return new int[0];
        }
        for (int triple = Math.max(0, columns[0] - TRIPLE + 1);
                triple <= columns[0] && triple + TRIPLE + PAIR <= n;
                triple++) {
            int end = triple + TRIPLE;
            int[] rest = Arrays.stream(columns).filter(j -> j >= end).toArray();
            int pair = rest.length == 0 ? end : Math.max(end, pairOver(rest, n));
            if (rest.length == 0 || (pairOver(rest, n) >= 0 && rest[0] >= pair)) {
                return new int[] {triple, pair};
            }
        }
        return new int[0];
    }

    private void fillRuns(FlatLaws laws, int e, int triple, int pair, int at) {
        for (int i = 0; i < TRIPLE; i++) {
            wideValues[at + i] = laws.row[e * laws.n + triple + i];
            wideValues[at + TRIPLE + PAIR + i] = laws.w[e * laws.n + triple + i];
        }
        for (int i = 0; i < PAIR; i++) {
            wideValues[at + TRIPLE + i] = laws.row[e * laws.n + pair + i];
            wideValues[at + 2 * TRIPLE + PAIR + i] = laws.w[e * laws.n + pair + i];
        }
    }

    /** {@code out[outAt + e] = B_e x} for every element, x from {@code x[xAt]} on. */
    void compress(double[] x, int xAt, double[] out, int outAt) {
        for (int i = 0; i < wide.length; i++) {
            int p = i * WIDE;
            int t = xAt + wideTriple[i];
            int d = xAt + widePair[i];
            out[outAt + wide[i]] = wideValues[p] * x[t]
                    + wideValues[p + 1] * x[t + 1]
                    + wideValues[p + 2] * x[t + 2]
                    + (wideValues[p + 3] * x[d] + wideValues[p + 4] * x[d + 1]);
        }
        for (int i = 0; i < narrow.length; i++) {
            int d = xAt + narrowPair[i];
            out[outAt + narrow[i]] = narrowValues[i * NARROW] * x[d] + narrowValues[i * NARROW + 1] * x[d + 1];
        }
        for (int i = 0; i < other.length; i++) {
            double sum = 0;
            for (int p = otherFrom[i]; p < otherFrom[i + 1]; p++) {
                sum += otherRow[p] * x[xAt + otherColumn[p]];
            }
            out[outAt + other[i]] = sum;
        }
    }

    /** Adds {@code Σ_e w_e f_e} to out, f from {@code f[fAt]} on. */
    void accelerate(double[] f, int fAt, double[] out) {
        for (int i = 0; i < wide.length; i++) {
            pushWide(i, f[fAt + wide[i]], out);
        }
        for (int i = 0; i < narrow.length; i++) {
            pushNarrow(i, f[fAt + narrow[i]], out);
        }
        for (int i = 0; i < other.length; i++) {
            pushOther(i, f[fAt + other[i]], out);
        }
    }

    /**
     * One coefficient of a regime without input: for every element {@code ċ_k = B v_k}, {@code c_k = ċ_{k−1}·step/k},
     * {@code f_k = stiffness·c_k + damping·ċ_k}; adds {@code w f_k} to out.
     *
     * @param share step/k (s)
     * @param vAt beginning of row k of v
     * @param at beginning of row k of speed, c and force, each {@code width} wide
     * @param reach {@code Σ |ċ_k|} of each element, added to
     */
    void term(
            double share,
            double[] v,
            int vAt,
            double[] speed,
            double[] c,
            double[] force,
            int at,
            int width,
            double[] stiffness,
            double[] damping,
            double[] reach,
            double[] out) {
        int before = at - width;
        // Springs of one body follow each other: its three sums stay out of memory meanwhile.
        int body = 0;
        double sum0 = 0;
        double sum1 = 0;
        double sum2 = 0;
        for (int i = 0; i < wide.length; i++) {
            int e = wide[i];
            int p = i * WIDE;
            int triple = wideTriple[i];
            int pair = widePair[i];
            int t = vAt + triple;
            int d = vAt + pair;
            double rate = wideValues[p] * v[t]
                    + wideValues[p + 1] * v[t + 1]
                    + wideValues[p + 2] * v[t + 2]
                    + (wideValues[p + 3] * v[d] + wideValues[p + 4] * v[d + 1]);
            double compression = share * speed[before + e];
            double f = stiffness[e] * compression + damping[e] * rate;
            speed[at + e] = rate;
            c[at + e] = compression;
            force[at + e] = f;
            reach[e] += Math.abs(rate);
            if (triple != body) {
                out[body] += sum0;
                out[body + 1] += sum1;
                out[body + 2] += sum2;
                body = triple;
                sum0 = 0;
                sum1 = 0;
                sum2 = 0;
            }
            sum0 += wideValues[p + 5] * f;
            sum1 += wideValues[p + 6] * f;
            sum2 += wideValues[p + 7] * f;
            out[pair] += wideValues[p + 8] * f;
            out[pair + 1] += wideValues[p + 9] * f;
        }
        if (wide.length > 0) {
            out[body] += sum0;
            out[body + 1] += sum1;
            out[body + 2] += sum2;
        }
        for (int i = 0; i < narrow.length; i++) {
            int e = narrow[i];
            int d = vAt + narrowPair[i];
            double rate = narrowValues[i * NARROW] * v[d] + narrowValues[i * NARROW + 1] * v[d + 1];
            double compression = share * speed[before + e];
            double f = stiffness[e] * compression + damping[e] * rate;
            speed[at + e] = rate;
            c[at + e] = compression;
            force[at + e] = f;
            reach[e] += Math.abs(rate);
            pushNarrow(i, f, out);
        }
        for (int i = 0; i < other.length; i++) {
            int e = other[i];
            double rate = 0;
            for (int p = otherFrom[i]; p < otherFrom[i + 1]; p++) {
                rate += otherRow[p] * v[vAt + otherColumn[p]];
            }
            double compression = share * speed[before + e];
            double f = stiffness[e] * compression + damping[e] * rate;
            speed[at + e] = rate;
            c[at + e] = compression;
            force[at + e] = f;
            reach[e] += Math.abs(rate);
            pushOther(i, f, out);
        }
    }

    private void pushWide(int i, double f, double[] out) {
        int p = i * WIDE + TRIPLE + PAIR;
        int t = wideTriple[i];
        int d = widePair[i];
        out[t] += wideValues[p] * f;
        out[t + 1] += wideValues[p + 1] * f;
        out[t + 2] += wideValues[p + 2] * f;
        out[d] += wideValues[p + 3] * f;
        out[d + 1] += wideValues[p + 4] * f;
    }

    private void pushNarrow(int i, double f, double[] out) {
        int d = narrowPair[i];
        out[d] += narrowValues[i * NARROW + PAIR] * f;
        out[d + 1] += narrowValues[i * NARROW + PAIR + 1] * f;
    }

    private void pushOther(int i, double f, double[] out) {
        for (int p = otherFrom[i]; p < otherFrom[i + 1]; p++) {
            out[otherColumn[p]] += otherW[p] * f;
        }
    }
}
